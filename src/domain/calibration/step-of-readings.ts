// The step the readings of a sheet were written to, where no gauge is known. That of a gauge is in equipment/readable-step.ts.

import type { PlacedPoint } from './run-sheet.ts';

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
