// The doubts about a recorded calibration: what the ledger holds of certificates and runs as found, judged by the domain.
// Clearing one is in clear-doubt.ts, the list of all of them in list-doubts.ts.

import { type AsFoundResult, judgeAsFound } from '../domain/calibration/as-found.ts';
import { type Doubt, doubtsOf } from '../domain/calibration/doubt.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { readableStep } from '../domain/equipment/readable-step.ts';
import type { Act, CalibrationRecord, PairRecord } from '../ledger/plant-state.ts';
import { partsOfRecord, standingOfParts } from './judge-calibration.ts';
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
  const { number, calibratedOn, loadCell, clearedDoubts = {} } = calibration;
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
  const certificates = plant.state.certificates.get(loadCell) ?? [];
  return doubtsOf({ number, calibratedOn, loadCell, replacedOn, foundLater }, certificates).map((doubt) => ({
    ...doubt,
    cleared: clearedDoubts[doubt.name] ?? null,
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
  if (!isOfThePairAsFound(run.sheet.condition)) return null;
  const before = record.calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter((each) => each.status === 'approved' && each.sheet.condition !== 'as-found' && isAfter(run, each))
    .reduce<CalibrationRecord | null>(
      (latest, each) => (latest === null || isAfter(each, latest) ? each : latest),
      null,
    );
  return before === null ? null : asFoundResult(plant, before, run);
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

/** Of runs of one day the one entered later comes after. Numbers are given in the order of entry. */
function isAfter(a: CalibrationRecord, b: CalibrationRecord): boolean {
  return a.calibratedOn === b.calibratedOn ? a.enteredAt > b.enteredAt : a.calibratedOn > b.calibratedOn;
}
