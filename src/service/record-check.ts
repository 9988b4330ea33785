// Interim checks of a pair: recording one, and how each stands against the curve it was held against.

import type { z } from 'zod';
import { type CheckAnswer, type checkBody, readCheck } from '../contract/check.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { type InterimCheck, judgeInterimCheck } from '../domain/drift/judge-interim-check.ts';
import type { PairCheck } from '../domain/drift/pair-check.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert } from '../domain/units/quantity.ts';
import type { CalibrationRecord, PairCheckRecord, PairRecord } from '../ledger/plant-state.ts';
import { findPair } from './find-record.ts';
import { certificateOn } from './judge-calibration.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Probability that a check of a pair that did not change passes. The custom of the field. */
const level = 0.95;

/** What can be found of a check; the curve's units go with the figures. */
export interface JudgedCheck {
  readonly check: InterimCheck;
  readonly units: { readonly force: string; readonly reading: string };
}

/**
 * Records a check against the calibration in force on its day. Problems: `unknown-pair`, `pair-parted`, `not-calibrated`,
 * `unknown-equipment`, `unknown-certificate` where none of the load cell covers the day, those of quantities,
 * `outside-calibrated-range`.
 */
export function recordCheck(
  plant: Plant,
  tag: string,
  input: z.output<typeof checkBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action: 'record-check',
    decide: (at) => {
      const record = findPair(plant.state, tag);
      if (!record.ok) return record;
      const check = readCheck(input, plant.today());
      if (!check.ok) return check;
      const calibration = calibrationFor(plant, record.value, check.value);
      if (!calibration.ok) return calibration;
      const judged = judgeCheck(plant, calibration.value, check.value);
      if (!judged.ok) return judged;
      const body = { check: check.value, calibration: calibration.value.number };
      return succeed([{ at, actor: by.actor.id, kind: 'check-recorded/1', subject: record.value.pair.tag, body }]);
    },
    answer: (subject) => findPair(plant.state, subject),
  });
}

function calibrationFor(
  plant: Plant,
  { pair, calibrations }: PairRecord,
  check: PairCheck,
): Outcome<CalibrationRecord> {
  const { on, loadCell } = check;
  if (pair.parted !== undefined && pair.parted.on < on) {
    return fail('pair-parted', `The pair ${pair.tag} was parted on ${pair.parted.on}: ${pair.parted.reason}`);
  }
  if (plant.state.equipment.get(loadCell)?.kind !== 'load-cell') {
    return fail('unknown-equipment', `There is no load cell ${loadCell}.`, { where: 'loadCell', given: loadCell });
  }
  if (certificateOn(plant.state, loadCell, on) === null) {
    return fail('unknown-certificate', `No certificate of load cell ${loadCell} covers ${on}.`, {
      where: 'loadCell',
      needed: 'a load cell with a certificate valid on the day',
      given: loadCell,
    });
  }
  const current = calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter(
      ({ status, sheet, calibratedOn }) =>
        status === 'approved' && sheet.condition !== 'as-found' && calibratedOn <= on,
    )
    .reduce<CalibrationRecord | null>(
      (latest, each) => (latest === null || each.calibratedOn >= latest.calibratedOn ? each : latest),
      null,
    );
  if (current !== null) return succeed(current);
  return fail('not-calibrated', `No calibration of the pair ${pair.tag} was in force on ${on}.`, {
    where: 'on',
    needed: 'a day with a calibration in force',
    given: on,
  });
}

/** Answers how a check agrees with the curve of a calibration. Problems: those of the fit and the judging. */
function judgeCheck(plant: Plant, calibration: CalibrationRecord, check: PairCheck): Outcome<JudgedCheck> {
  const fit = plant.fitOf(calibration);
  if (!fit.ok) return fit;
  const { curve } = fit.value;
  const levels = check.levels.map((points) =>
    points.map((point) => ({
      force: convert(force, point.force, curve.units.force),
      reading: convert(pressure, point.reading, curve.units.reading),
    })),
  );
  const certificate = certificateOn(plant.state, check.loadCell, check.on);
  // What the calibration was held against itself is shared and cannot part the two.
  const isShared =
    check.loadCell === calibration.loadCell &&
    certificateOn(plant.state, calibration.loadCell, calibration.calibratedOn)?.number === certificate?.number;
  const own = certificate === null ? 0 : certificate.expandedUncertaintyPercent / certificate.coverageFactor;
  const judged = judgeInterimCheck(curve, levels, {
    level,
    referenceStandardUncertaintyPercent: isShared ? 0 : own,
  });
  return judged.ok ? succeed({ check: judged.value, units: curve.units }) : judged;
}

/** Answers a recorded check as it is judged; null where its calibration cannot be fitted any more. */
export function judgeRecordedCheck(plant: Plant, recorded: PairCheckRecord): JudgedCheck | null {
  return plant.untilNextEntry('bases', `check ${recorded.seq}`, () => {
    const calibration = plant.state.calibrations.get(recorded.calibration);
    if (calibration === undefined) return null;
    const judged = judgeCheck(plant, calibration, recorded);
    return judged.ok ? judged.value : null;
  });
}

/** Answers the checks of a pair up to a day, newest first. */
export function listChecks(plant: Plant, { pair }: PairRecord, on: PlantDay): readonly CheckAnswer[] {
  return (plant.state.checks.get(pair.tag) ?? [])
    .filter((check) => check.on <= on)
    .map((recorded): CheckAnswer => {
      const judged = judgeRecordedCheck(plant, recorded);
      const { seq, on: day, loadCell, calibration, levels, note = '', by, at } = recorded;
      return {
        ...{ seq, on: day, loadCell, calibration, note, enteredBy: by, enteredAt: at, typed: levels },
        outcome: outcomeOf(judged),
        levels: judged?.check.kind === 'judged' ? judged.check.levels : [],
        units: judged?.units ?? null,
      };
    })
    .toSorted((a, b) => b.on.localeCompare(a.on) || b.seq - a.seq);
}

function outcomeOf(judged: JudgedCheck | null): CheckAnswer['outcome'] {
  if (judged === null) return 'not-judged';
  if (judged.check.kind === 'no-scatter') return 'no-scatter';
  return judged.check.isOutside ? 'outside' : 'passed';
}

export interface CheckedSince {
  /** The last check that passed since the calibration in force; null where none did. */
  readonly passedOn: PlantDay | null;
  /** What the latest check found, in one sentence, where it lies outside; null where it does not. */
  readonly outside: string | null;
}

/**
 * Answers what the checks of a pair say since a calibration. The latest check of the latest day speaks; an earlier one is
 * answered by it. House rule: the curve in use was held against a reference and stood, or did not.
 */
export function checkedSince(
  plant: Plant,
  record: PairRecord,
  { calibratedOn, on }: { readonly calibratedOn: PlantDay; readonly on: PlantDay },
): CheckedSince {
  const checks = listChecks(plant, record, on).filter((check) => check.on >= calibratedOn);
  const passedOn = checks.find(({ outcome }) => outcome === 'passed')?.on ?? null;
  const latest = checks.find(({ outcome }) => outcome === 'passed' || outcome === 'outside');
  if (latest?.outcome !== 'outside') return { passedOn, outside: null };
  const worst = latest.levels.reduce((most, next) =>
    Math.abs(next.deviationPercent) / next.limitPercent > Math.abs(most.deviationPercent) / most.limitPercent
      ? next
      : most,
  );
  const figure = (value: number, digits: number): string => String(Number(Math.abs(value).toPrecision(digits)));
  const than = worst.deviationPercent > 0 ? 'more' : 'less';
  return {
    passedOn,
    outside: `The check of ${latest.on} found the curve ${figure(worst.deviationPercent, 2)} % ${than} than the load cell at ${figure(worst.reading, 4)} ${latest.units?.reading ?? ''}, beyond ${figure(worst.limitPercent, 2)} %.`,
  };
}
