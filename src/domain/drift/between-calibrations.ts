// How far a pair moved from one calibration to the next: the newer curve against the older at common readings.

import { type Curve, forceBehindReading } from '../calibration/curve.ts';
import { daysBetween } from '../dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../problem.ts';
import { largestAgreeing, normalizedError } from '../statistics/normalized-error.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import { curveWithUncertainty, type DatedCurve } from './dated-curve.ts';

export interface ChangeAtReading {
  readonly reading: number;
  readonly olderForce: number;
  readonly newerForce: number;
  /** Newer minus older, in % of the older force. */
  readonly changePercent: number;
}

export interface CalibrationChange {
  /** The largest change in magnitude, with its sign, and the reading it stands at. */
  readonly changePercent: number;
  readonly atReading: number;
  /** Units of the newer curve: `unit` of every reading, `forceUnit` of every force. */
  readonly unit: PressureUnit;
  readonly forceUnit: ForceUnit;
  readonly table: readonly ChangeAtReading[];
}

/** House rule: the lowest fifth is left out, since a small fixed offset is a large percentage of a small force. */
const comparedFrom = 0.2;

/** House rule: two curves of degree 3 or less cannot part unseen between readings this close. */
const comparedReadings = 11;

/**
 * Answers how much more or less the newer curve gives than the older one at the same reading, over 11 equally spaced
 * readings of the upper 80 % of the range both cover. Readings and forces in the newer curve's units.
 * Problem: `outside-calibrated-range` where the two ranges share nothing.
 * Source: design of the program, "Calculations" 13 (a); number and range of readings are house rules.
 */
export function changeBetweenCalibrations(older: Curve, newer: Curve): Outcome<CalibrationChange> {
  const { reading: unit, force: forceUnit } = newer.units;
  const toNewer = (value: number): number => convert(pressure, { value, unit: older.units.reading }, unit);
  const toOlder = (value: number): number => convert(pressure, { value, unit }, older.units.reading);
  const low = Math.max(newer.readingRange.low, toNewer(older.readingRange.low));
  const high = Math.min(newer.readingRange.high, toNewer(older.readingRange.high));
  if (!(low < high)) {
    const write = (from: number, to: number): string =>
      `${writeQuantity({ value: from, unit })} to ${writeQuantity({ value: to, unit })}`;
    return fail(
      'outside-calibrated-range',
      'The two calibrations share no range of readings, so they cannot be compared.',
      {
        needed: write(newer.readingRange.low, newer.readingRange.high),
        given: write(toNewer(older.readingRange.low), toNewer(older.readingRange.high)),
      },
    );
  }
  const start = low + comparedFrom * (high - low);
  const table: ChangeAtReading[] = [];
  for (let index = 0; index < comparedReadings; index += 1) {
    const reading = start + ((high - start) * index) / (comparedReadings - 1);
    const before = forceBehindReading(older, toOlder(reading));
    if (!before.ok) return before;
    const after = forceBehindReading(newer, reading);
    if (!after.ok) return after;
    const olderForce = convert(force, { value: before.value, unit: older.units.force }, forceUnit);
    table.push({
      reading,
      olderForce,
      newerForce: after.value,
      changePercent: (100 * (after.value - olderForce)) / olderForce,
    });
  }
  const largest = table.reduce((worst, row) =>
    Math.abs(row.changePercent) > Math.abs(worst.changePercent) ? row : worst,
  );
  return succeed({ changePercent: largest.changePercent, atReading: largest.reading, unit, forceUnit, table });
}

export interface ComparedAtReading extends ChangeAtReading {
  /** Expanded uncertainties at 95 % of the two forces, in the newer curve's force unit. */
  readonly olderExpanded: number;
  readonly newerExpanded: number;
  /** E_n of the two forces; null where both are taken as known exactly. */
  readonly normalizedError: number | null;
}

export interface CalibrationComparison extends CalibrationChange {
  readonly table: readonly ComparedAtReading[];
  readonly days: number;
  /** `changePercent` as a rate; null where the calibrations lie too close for one. */
  readonly percentPerYear: number | null;
  /** The largest E_n of the table; null where no row has one. */
  readonly normalizedError: number | null;
  /** `differ`: somewhere the curves lie further apart than their uncertainties explain. `not-judged` without an E_n. */
  readonly verdict: 'agree' | 'differ' | 'not-judged';
}

/** Mean Gregorian year. Source: computed, 146,097 days in 400 years. */
export const daysPerYear = 365.2425;

/** House rule: a rate from a shorter span is the scatter of two calibrations, multiplied by more than twelve. */
const leastDaysOfRate = 30;

/**
 * Answers how much more or less the newer calibration gives than the older one, as `changeBetweenCalibrations`, with the
 * uncertainty of both curves, E_n at each reading, and the change per year. The force of the older curve at a reading is the
 * force wanted of those who set it, so that the common readings are common forces as well.
 * E_n = |F2 - F1| / sqrt(U1^2 + U2^2), U of each curve after its own budget; the verdict takes the largest.
 * Range: `newer` is the later; a rate is given from 30 days on. Problem: `outside-calibrated-range`.
 * Source: design of the program, "Calculations" 13 (a); E_n as in statistics/normalized-error.ts.
 */
export function compareCalibrations(older: DatedCurve, newer: DatedCurve): Outcome<CalibrationComparison> {
  const change = changeBetweenCalibrations(older.curve, newer.curve);
  if (!change.ok) return change;
  const { unit, forceUnit, changePercent } = change.value;
  const table: ComparedAtReading[] = [];
  for (const row of change.value.table) {
    const olderReading = convert(pressure, { value: row.reading, unit }, older.curve.units.reading);
    const before = curveWithUncertainty(older, olderReading);
    if (!before.ok) return before;
    const after = curveWithUncertainty(newer, row.reading);
    if (!after.ok) return after;
    const olderExpanded = convert(force, { value: before.value.expanded, unit: before.value.unit }, forceUnit);
    const newerExpanded = after.value.expanded;
    const agreement = normalizedError(
      { value: row.olderForce, expanded: olderExpanded },
      { value: row.newerForce, expanded: newerExpanded },
    );
    table.push({ ...row, olderExpanded, newerExpanded, normalizedError: agreement });
  }
  const numbers = table.flatMap(({ normalizedError: each }) => (each === null ? [] : [each]));
  const largest = numbers.length === 0 ? null : Math.max(...numbers);
  const days = daysBetween(older.calibratedOn, newer.calibratedOn);
  return succeed({
    ...change.value,
    table,
    days,
    percentPerYear: days >= leastDaysOfRate ? (changePercent * daysPerYear) / days : null,
    normalizedError: largest,
    verdict: largest === null ? 'not-judged' : largest > largestAgreeing ? 'differ' : 'agree',
  });
}
