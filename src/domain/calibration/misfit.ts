// How far a point lies from the curve through other points, in units of that curve's own scatter.
// Which points are too far is in suspect-points.ts and swapped-points.ts.

import { fitPolynomial, type Point, type PolynomialFit } from '../regression/fit-polynomial.ts';
import { leverageAt, predict } from '../regression/predict.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';

/** Deviations below this part of the value are never called outliers. House rule: no reference cell tells them from its own error. */
export const neverAnOutlier = 0.001;

/** How far beyond its points a curve is trusted to say what a slipped value was, as a part of their range. House rule: about two levels of ten. */
const reach = 0.25;

/**
 * Answers the deviation that is never called an outlier where the observed value is `value`: 0.1 % of it, and one step of
 * the display, `step`, since a value between two marks may be read as either.
 */
export function negligibleDeviation(value: number, step: number): number {
  return Math.max(neverAnOutlier * Math.abs(value), step * (1 + 1e-9));
}

/** Answers a point with the set quantity as x and the observed one as y. */
export function asXy({ force, reading }: Pick<PlacedPoint, 'force' | 'reading'>, set: SetQuantity): Point {
  return set === 'force' ? { x: force, y: reading } : { x: reading, y: force };
}

/** Answers the curve that entry checks judge by: quadratic where there are 6 points or more, which follows any jack and no single point. */
export function fitLean(points: readonly PlacedPoint[], set: SetQuantity): PolynomialFit | null {
  const xy = points.map((point) => asXy(point, set));
  const quadratic = xy.length >= 6 ? fitPolynomial(xy, 2) : null;
  const fit = quadratic?.ok ? quadratic : fitPolynomial(xy, 1);
  return fit.ok ? fit.value : null;
}

/**
 * Answers the standard deviation of one observation at x against a curve it took no part in: s sqrt(1 + h), h the
 * leverage there, and never less than half of 0.1 % of the value.
 */
export function deviationAt(fit: PolynomialFit, x: number): number {
  const scatter = fit.residualStandardDeviation * Math.sqrt(1 + leverageAt(fit, x));
  return Math.max(scatter, (neverAnOutlier / 2) * Math.abs(predict(fit, x)));
}

/** Answers whether a curve says anything at x: within its points and a quarter of their range beyond. */
export function isWithinReach({ xRange }: PolynomialFit, x: number): boolean {
  const beyond = reach * (xRange.high - xRange.low);
  return x >= xRange.low - beyond && x <= xRange.high + beyond;
}
