// What a person can set on a gauge: the smallest step the display shows and a reading rounded to it.

import type { PlacedPoint } from '../calibration/run-sheet.ts';
import type { Gauge } from '../equipment/equipment.ts';
import type { Range } from '../regression/within-range.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';

/**
 * Answers the smallest step a person can set: one increment of a digital display, half a graduation of a dial.
 * Source: ISO 7500-1 6.2.1 allows 1/2, 1/5 or 1/10 by mark spacing; half is the coarsest of them (house rule).
 */
export function readableStep(gauge: Gauge): Quantity<PressureUnit> {
  const share = gauge.display === 'digital' ? 1 : 1 / 2;
  return { value: gauge.graduation.value * share, unit: gauge.graduation.unit };
}

/** Half a graduation of 100 on a dial of 10,000, the coarsest that UFGS 02490 takes, as a part of the largest reading. */
const coarsestStep = 0.005;

/**
 * Answers the step the readings of a bare sheet were written to: the largest of 1, 2 or 5 x 10^n all of them are
 * multiples of, and no more than 0.5 % of the largest of them, since readings that were set in round numbers say
 * nothing of the display. House rule, used only where no gauge is known.
 */
export function stepOfReadings(points: readonly Pick<PlacedPoint, 'reading'>[]): number {
  const readings = points.map((point) => point.reading).filter((reading) => reading > 0);
  const largest = Math.max(...readings, 0);
  const coarsest = coarsestStep * (largest || 1) * (1 + 1e-12);
  for (let power = Math.floor(Math.log10(coarsest)); power >= -9; power -= 1) {
    for (const digit of [5, 2, 1]) {
      const step = Number(`${digit}e${power}`);
      if (step <= coarsest && readings.every((reading) => Math.abs(reading / step - Math.round(reading / step)) < 1e-6))
        return step;
    }
  }
  return 1e-9;
}

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 12; decimals += 1) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6 && Math.round(scaled) > 0) return decimals;
  }
  return 12;
}

/**
 * Rounds a reading to the nearest step that can be set within a range: never above what must not be exceeded, never
 * below where the curve begins. Null where no step lies in the range.
 */
export function roundToStep(reading: number, step: number, range: Range): number | null {
  const lowest = Math.ceil(range.low / step - 1e-9);
  const highest = Math.floor(range.high / step + 1e-9);
  if (lowest > highest) return null;
  const steps = Math.min(highest, Math.max(lowest, Math.round(reading / step)));
  return Number((steps * step).toFixed(decimalsOf(step)));
}

/** Rounds a limit down to the last step that does not pass it. */
export function roundDownToStep(reading: number, step: number): number {
  return Number((Math.floor(reading / step + 1e-9) * step).toFixed(decimalsOf(step)));
}
