// The doubts about a recorded calibration: what the ledger holds of certificates and runs as found, judged by the domain.
// Clearing one is in clear-doubt.ts, the list of all of them in list-doubts.ts.

import { type AsFoundResult, judgeAsFound } from '../domain/calibration/as-found.ts';
import { type Doubt, doubtsOf } from '../domain/calibration/doubt.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { readableStep } from '../domain/equipment/readable-step.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Act, CalibrationRecord, PairRecord } from '../ledger/plant-state.ts';
import { partsOfRecord, standingOfParts } from './judge-calibration.ts';
import { commandLineActor } from './perform-action.ts';
import type { Plant } from './plant.ts';

export interface JudgedDoubt extends Doubt {
  /** Who looked into it and says why the calibration still holds. */
  readonly cleared: Act | null;
}

/** Answers every doubt about an approved calibration of a pair as of a day, those cleared too. */
export function doubtsAbout(
  plant: Plant,
  record: PairRecord,
  calibration: CalibrationRecord,
  on: PlantDay,
): readonly JudgedDoubt[] {
  const { number, calibratedOn, loadCell, clearedDoubts = {}, approvedCertificate } = calibration;
  const others = record.calibrations.flatMap((each) => plant.state.calibrations.get(each) ?? []);
  const after = others.filter((each) => isAfter(each, calibration) && each.calibratedOn <= on);
  const replacing = after.filter(({ status, sheet }) => status === 'approved' && sheet.condition !== 'as-found');
  const replacedOn = replacing.reduce<PlantDay | null>(
    (first, each) => (first === null || each.calibratedOn < first ? each.calibratedOn : first),
    null,
  );
  const foundLater = after
    .filter(
      ({ status, sheet }) => isOfThePairAsFound(sheet.condition) && status !== 'rejected' && status !== 'withdrawn',
    )
    .filter((run) => replacedOn === null || run.calibratedOn <= replacedOn)
    .flatMap((run) => {
      const result = asFoundResult(plant, calibration, run);
      return result === null ? [] : [{ number: run.number, on: run.calibratedOn, result }];
    });
  const { certificates, standards, rules } = plant.state;
  const restsOn = approvedCertificate === undefined ? {} : { restsOn: approvedCertificate?.number ?? null };
  const doubtful = { number, calibratedOn, loadCell, ...restsOn, replacedOn, foundLater };
  const filed = {
    certificates: certificates.get(loadCell) ?? [],
    standards,
    certificateAsked: rules.validCertificates.value === 1,
  };
  return doubtsOf(doubtful, filed).map((doubt) => ({
    ...doubt,
    cleared: Object.hasOwn(clearedDoubts, doubt.name) ? (clearedDoubts[doubt.name] ?? null) : null,
  }));
}

/** Answers the doubts about a calibration that nobody cleared. */
export function openDoubts(
  plant: Plant,
  record: PairRecord,
  calibration: CalibrationRecord,
  on: PlantDay,
): readonly JudgedDoubt[] {
  return doubtsAbout(plant, record, calibration, on).filter(({ cleared }) => cleared === null);
}

/** Answers how a run found the pair by the calibration in use before it; null where there was none or no curve fits. */
export function asFoundOf(plant: Plant, record: PairRecord, run: CalibrationRecord): AsFoundResult | null {
  const before = calibrationFoundBy(plant, record, run);
  return before === null ? null : asFoundResult(plant, before, run);
}

/**
 * Answers whether a run puts a calibration in doubt that a person entered: who did must not do away with the run.
 * Problem: `approver-is-enterer`.
 */
export function checkMayDropRun(
  plant: Plant,
  record: PairRecord,
  run: CalibrationRecord,
  actorId: string,
): Outcome<void> {
  const found = calibrationFoundBy(plant, record, run);
  const isOwn = found !== null && [actorId, commandLineActor(actorId).id].includes(found.enteredBy);
  if (!isOwn || asFoundResult(plant, found, run)?.isOutside !== true) return succeed(undefined);
  return fail(
    'approver-is-enterer',
    `${run.number} puts ${found.number} in doubt, which ${found.enteredBy} entered; somebody else decides on it.`,
    { where: 'actor', needed: `a person other than the one who entered ${found.number}`, given: actorId },
  );
}

/** The calibration that was in use when a run found the pair; null for a run that says nothing of it. */
function calibrationFoundBy(plant: Plant, record: PairRecord, run: CalibrationRecord): CalibrationRecord | null {
  if (!isOfThePairAsFound(run.sheet.condition)) return null;
  return record.calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter((each) => each.status === 'approved' && each.sheet.condition !== 'as-found' && isAfter(run, each))
    .reduce<CalibrationRecord | null>(
      (latest, each) => (latest === null || isAfter(each, latest) ? each : latest),
      null,
    );
}

function asFoundResult(plant: Plant, before: CalibrationRecord, run: CalibrationRecord): AsFoundResult | null {
  const { state } = plant;
  const parts = partsOfRecord(state, run);
  const curve = plant.fitOf(before);
  if (!parts.ok || !curve.ok) return null;
  const key = `as found ${before.runHash} ${run.runHash} ${state.rulesHash} ${standingOfParts(state, parts.value)}`;
  return plant.once(key, () => {
    const { gauge, cell, certificate } = parts.value;
    return judgeAsFound(curve.value.curve, run.sheet, state.rules, {
      certificate,
      resolution: readableStep(gauge),
      ...(cell === null ? {} : { cell }),
    });
  });
}

function isOfThePairAsFound(condition: CalibrationRecord['sheet']['condition']): boolean {
  return condition === 'as-found' || condition === 'unchanged';
}

/** Of runs of one day the one as found comes first, whenever it was entered; else the one entered later comes after. */
function isAfter(a: CalibrationRecord, b: CalibrationRecord): boolean {
  if (a.calibratedOn !== b.calibratedOn) return a.calibratedOn > b.calibratedOn;
  const isFirst = ({ sheet }: CalibrationRecord) => sheet.condition === 'as-found';
  if (isFirst(a) !== isFirst(b)) return isFirst(b);
  return a.enteredIn > b.enteredIn;
}
