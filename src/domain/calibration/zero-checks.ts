// The zero checks of a calibration: what the gauge showed at no force, before or after a series, and what force that means.
// Whether a reading at zero looks like a slip is in entry-checks.ts.

import { slopeAt } from '../regression/predict.ts';
import type { Curve } from './curve.ts';
import { placedPoints, type RunSheet } from './run-sheet.ts';

/** One point at zero force with its place in the sheet, counted from zero, in the sheet's units. */
export interface ZeroCheck {
  readonly cycle: number;
  readonly row: number;
  readonly reading: number;
  /** Force the reading would stand for by the slope at the low end of the curve. */
  readonly force: number;
  /** `force` in % of the largest force of the calibrated range. */
  readonly percent: number;
}

/**
 * Answers every zero check of a sheet: Fi0 = reading at zero force x dF/dp at the low end of the curve, f0 = Fi0 / FN in %,
 * FN = largest force of the calibrated range. The curve itself does not reach zero, so its slope there is taken, for
 * this figure alone. Points at zero force, rising or falling; none gives none.
 * Source: ISO 7500-1:2018 7.4 (from memory) for f0; the slope at the low end is a house rule.
 */
export function zeroChecks(sheet: RunSheet, curve: Curve): readonly ZeroCheck[] {
  const { low } = curve.fit.xRange;
  const slope = slopeAt(curve.fit, low);
  const forcePerReading = curve.response === 'force' ? slope : 1 / slope;
  return placedPoints(sheet)
    .filter((point) => point.force === 0)
    .map(({ cycle, row, reading }) => {
      const force = reading * forcePerReading;
      return { cycle, row, reading, force, percent: (100 * force) / curve.forceRange.high };
    });
}

/** Answers the largest zero error in magnitude, in %; null where zero was not checked. Source as for `zeroChecks`. */
export function zeroErrorPercent(checks: readonly ZeroCheck[]): number | null {
  return checks.length === 0 ? null : Math.max(...checks.map(({ percent }) => Math.abs(percent)));
}
