// How far a pair moved from one calibration to the next: the newer curve against the older at common readings.

import { type Curve, forceBehindReading } from '../calibration/curve.ts';
import { fail, type Outcome, succeed } from '../problem.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';

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
