// Whether a fitted curve rises everywhere between its first and last point, so that each y belongs to one x.

import type { FittedPolynomial } from './fit-polynomial.ts';
import { derivative, evaluate } from './polynomial.ts';

/**
 * Answers whether the slope is above zero on the whole closed range of the fitted points.
 * Exact for degrees 1 to 3: the slope is at most quadratic, so it is least at an end or at its vertex. A slope of exactly
 * zero counts as not increasing, since no change of y would show a change of x there.
 */
export function isStrictlyIncreasing(fit: FittedPolynomial): boolean {
  const slope = derivative(fit.scaledCoefficients);
  const [, linear = 0, quadratic = 0] = slope;
  const vertex = quadratic === 0 ? 0 : -linear / (2 * quadratic);
  const places = vertex > -1 && vertex < 1 ? [-1, vertex, 1] : [-1, 1];
  return places.every((u) => evaluate(slope, u) > 0);
}
