// The x at which a fitted curve has a given y. Its interval is in inversion-interval.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { FittedPolynomial } from './fit-polynomial.ts';
import { isStrictlyIncreasing } from './is-strictly-increasing.ts';
import { crossingBetween, evaluate } from './polynomial.ts';
import { predict } from './predict.ts';
import { type Range, withinRange } from './within-range.ts';

/**
 * Answers the x at which the curve has the value y, to the precision of doubles.
 * Range: y between the curve's values at the ends of the fitted points, never beyond.
 * Problems: `curve-not-increasing`, `outside-calibrated-range`.
 * Source: NIST/SEMATECH e-Handbook 4.5.2.1 (from memory) for using a calibration curve backwards.
 * Example: deflection 1.239722 of the load cell of 4.6.1 means a load of 1,705,106 lb.
 */
export function invert(fit: FittedPolynomial, y: number): Outcome<number> {
  if (!isStrictlyIncreasing(fit)) {
    return fail(
      'curve-not-increasing',
      'The curve does not rise strictly over its range, so a value has no single origin.',
    );
  }
  const ends: Range = { low: predict(fit, fit.xRange.low), high: predict(fit, fit.xRange.high) };
  const inside = withinRange(y, ends);
  if (inside === null) {
    return fail(
      'outside-calibrated-range',
      `${y} lies outside the curve, which runs from ${ends.low} to ${ends.high}.`,
      {
        needed: `${ends.low} to ${ends.high}`,
        given: String(y),
      },
    );
  }
  const [constant = 0, ...rest] = fit.scaledCoefficients;
  const distance = [constant - inside, ...rest];
  // Within one rounding of an end the distance has no sign change left to find; the end is then the answer.
  if (evaluate(distance, -1) >= 0) return succeed(fit.xRange.low);
  if (evaluate(distance, 1) <= 0) return succeed(fit.xRange.high);
  return succeed(fit.centre + fit.halfWidth * crossingBetween(distance, -1, 1));
}
