// How a pair moved over its calibrations, when it may leave its limit, and what that says of the interval.

import type { DriftAnswer } from '../contract/drift.ts';
import { readPositiveQuantity } from '../contract/quantity.ts';
import { addPlantMonths, type PlantDay } from '../domain/dates/plant-day.ts';
import { type AsFoundError, adviseInterval } from '../domain/drift/advise-interval.ts';
import { compareCalibrations } from '../domain/drift/between-calibrations.ts';
import type { DatedCurve } from '../domain/drift/dated-curve.ts';
import { driftHistory } from '../domain/drift/drift-history.ts';
import { forecastDrift } from '../domain/drift/forecast-drift.ts';
import { readableStep } from '../domain/equipment/readable-step.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { type ForceUnit, force } from '../domain/units/force.ts';
import type { Quantity } from '../domain/units/quantity.ts';
import type { CalibrationRecord, PairRecord } from '../ledger/plant-state.ts';
import { asFoundOf } from './doubts-of.ts';
import { findPair } from './find-record.ts';
import { judgeCurve } from './judge-calibration.ts';
import { approvedCalibrations, usedFallingPercent } from './pair-basis.ts';
import type { Plant } from './plant.ts';

/** House rule: further ahead nobody plans a calibration. */
const horizonMonths = 60;

/** House rule: where most strands are pulled to, in the upper part of the calibrated range. */
const partOfRange = 0.75;

/** Of the bounds of a forecast. */
const level = 0.95;

interface DatedCalibration {
  readonly record: CalibrationRecord;
  readonly dated: DatedCurve;
}

/**
 * Answers how a pair drifts as of the plant's day. `typedForce` is where its history is told; left out, 3/4 of the way up
 * the range of the curve in force. Problems: `unknown-pair`, `not-calibrated`, those of a quantity,
 * `outside-calibrated-range`.
 */
export function showDrift(plant: Plant, tag: string, typedForce: string | undefined): Outcome<DriftAnswer> {
  const found = findPair(plant.state, tag);
  if (!found.ok) return found;
  const on = plant.today();
  const calibrations: DatedCalibration[] = [];
  for (const record of approvedCalibrations(plant, found.value, on).toReversed()) {
    const dated = datedCurve(plant, record);
    if (!dated.ok) return dated;
    calibrations.push({ record, dated: dated.value });
  }
  const latest = calibrations.at(-1);
  if (latest === undefined) {
    return fail('not-calibrated', `${found.value.pair.tag} has no approved calibration as of ${on}.`, { given: tag });
  }
  const wanted = wantedForce(latest.dated, typedForce);
  if (!wanted.ok) return wanted;
  const history = driftHistory(curvesOf(calibrations, latest), wanted.value);
  if (!history.ok) return history;
  const { rules } = plant.state;
  const limitPercent = rules.driftPercent.value;
  const horizon = addPlantMonths(on, horizonMonths);
  const forecast = forecastDrift(history.value, { limitPercent, level, horizon });
  if (!forecast.ok) return forecast;
  const results = asFoundResults(plant, found.value, on);
  const currentMonths = rules.intervalMonths.value;
  const advice = adviseInterval(
    results,
    { forecast: forecast.value, latestOn: latest.record.calibratedOn, horizon },
    { currentMonths, profileMonths: currentMonths },
  );
  return succeed({
    pair: found.value.pair.tag,
    asOf: on,
    calibration: latest.record.number,
    limitPercent,
    changes: changesOf(calibrations).reverse(),
    force: wanted.value,
    history: history.value.map(({ day, driftPercent, standardUncertaintyPercent: u }, index) => ({
      calibration: calibrations[index]?.record.number ?? '',
      day,
      driftPercent,
      expandedUncertaintyPercent: 2 * u,
    })),
    forecast: forecast.value,
    asFound: [...results],
    interval: { ...advice, currentMonths },
  });
}

/** A list that says that there is one. */
function curvesOf(
  calibrations: readonly DatedCalibration[],
  latest: DatedCalibration,
): readonly [DatedCurve, ...DatedCurve[]] {
  const [first = latest.dated, ...others] = calibrations.map(({ dated }) => dated);
  return [first, ...others];
}

function datedCurve(plant: Plant, record: CalibrationRecord): Outcome<DatedCurve> {
  const judged = judgeCurve(plant, record);
  if (!judged.ok) return judged;
  const { fit, parts, judged: figures } = judged.value;
  const reversibilityPercent = usedFallingPercent(figures.levels, plant.state.rules);
  return succeed({
    curve: fit.curve,
    calibratedOn: record.calibratedOn,
    budget: {
      ...(parts.certificate === null ? {} : { certificate: parts.certificate }),
      ...(parts.cell?.resolution === undefined ? {} : { cellResolution: parts.cell.resolution }),
      resolution: readableStep(parts.gauge),
      ...(reversibilityPercent === null ? {} : { reversibilityPercent }),
    },
  });
}

function wantedForce({ curve }: DatedCurve, typed: string | undefined): Outcome<Quantity<ForceUnit>> {
  if (typed !== undefined) return readPositiveQuantity(force, typed, 'force');
  const { low, high } = curve.forceRange;
  const value = Number((low + partOfRange * (high - low)).toPrecision(3));
  return succeed({ value, unit: curve.units.force });
}

/** Calibrations that share no range, or cannot be compared, have no change between them. */
function changesOf(calibrations: readonly DatedCalibration[]): DriftAnswer['changes'] {
  return calibrations.slice(1).flatMap((newer, index) => {
    const older = calibrations[index];
    const compared = older === undefined ? null : compareCalibrations(older.dated, newer.dated);
    if (older === undefined || compared === null || !compared.ok) return [];
    const { days, changePercent, atReading, unit, percentPerYear, normalizedError, verdict } = compared.value;
    return [
      {
        from: older.record.number,
        to: newer.record.number,
        on: newer.record.calibratedOn,
        days,
        changePercent,
        at: { value: atReading, unit },
        percentPerYear,
        normalizedError,
        verdict,
      },
    ];
  });
}

/** How the pair was found, by runs nobody rejected or withdrew, the earliest first. */
function asFoundResults(
  plant: Plant,
  record: PairRecord,
  on: PlantDay,
): readonly (AsFoundError & { readonly run: string })[] {
  return record.calibrations
    .flatMap((number) => plant.state.calibrations.get(number) ?? [])
    .filter(({ status, calibratedOn }) => status !== 'rejected' && status !== 'withdrawn' && calibratedOn <= on)
    .toSorted((a, b) => a.calibratedOn.localeCompare(b.calibratedOn))
    .flatMap((run) => {
      const result = asFoundOf(plant, record, run);
      if (result === null || result.worst === null) return [];
      const { worst, limitPercent } = result;
      return [{ run: run.number, day: run.calibratedOn, errorPercent: worst.errorPercent, limitPercent }];
    });
}
