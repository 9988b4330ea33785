// Whether a curve fitted now is the curve somebody approved. How a curve is fitted is in fit-calibration.ts.

import { evaluate } from '../regression/polynomial.ts';
import type { Curve } from './curve.ts';

/** A curve as an approval holds it: coefficients in the units of the sheet, ascending powers. */
export interface ApprovedCurve {
  readonly response: Curve['response'];
  readonly degree: number;
  readonly coefficients: readonly number[];
}

/**
 * Largest difference between the two, as a share of the curve's largest value, that counts as rounding. House rule: the
 * same limit at which two solutions of one fit are said to disagree; a dial is read to a thousandth of its span at best.
 */
const rounding = 1e-9;

/** Two polynomials of degree 3 at most that agree at this many places across a range agree all over it. */
const places = 9;

/**
 * Answers whether a curve, fitted again from its run sheet, is the one that was approved: the same quantity observed, the
 * same degree, and values that differ over the calibrated range by rounding alone.
 * Range: the calibrated range of the set quantity. A number that is none makes the curves different.
 * Source: house rule; see `rounding` above.
 */
export function isSameCurve({ response, fit }: Curve, approved: ApprovedCurve): boolean {
  if (response !== approved.response || fit.degree !== approved.degree) return false;
  if (fit.coefficients.length !== approved.coefficients.length) return false;
  const { low, high } = fit.xRange;
  let [difference, scale] = [0, 0];
  for (let place = 0; place < places; place += 1) {
    const x = low + ((high - low) * place) / (places - 1);
    const value = evaluate(fit.coefficients, x);
    difference = Math.max(difference, Math.abs(value - evaluate(approved.coefficients, x)));
    scale = Math.max(scale, Math.abs(value));
  }
  return difference <= rounding * scale;
}
