// The straight line through points whose y are known with stated standard uncertainties. Unit-free: x and y.
// Where the uncertainty is not stated but taken from the scatter, it is fit-polynomial.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { chiSquareUpperProbability } from '../statistics/chi-square-upper-probability.ts';
import { checkPoints } from './check-points.ts';
import type { Point } from './fit-polynomial.ts';

export interface WeightedPoint extends Point {
  readonly standardUncertainty: number;
}

export interface WeightedLine {
  /** At x = 0. */
  readonly intercept: number;
  readonly slope: number;
  readonly interceptUncertainty: number;
  readonly slopeUncertainty: number;
  readonly covariance: number;
  /** Weighted mean of x: the value of the line there and its slope are not correlated. */
  readonly centre: number;
  readonly valueAtCentre: number;
  readonly uncertaintyAtCentre: number;
  /** Sum of ((y - line)/u)^2, and how probable so large a sum is where a line and the uncertainties are right. */
  readonly chiSquared: number;
  readonly degreesOfFreedom: number;
  readonly probability: number;
}

/**
 * Answers the straight line nearest to points, each weighted by 1/u^2, u = its standard uncertainty.
 * x0 = sum(w x)/sum(w), b = sum(w (x - x0) y)/sum(w (x - x0)^2), u(b)^2 = 1/sum(w (x - x0)^2); value at x0 sum(w y)/sum(w) with
 * u^2 = 1/sum(w), not correlated with b. Uncertainties are as stated: the scatter judges them, by chi squared, and does not
 * replace them.
 * Range: finite points, 3 or more, on 2 or more different x; u above 0.
 * Problems: `number-out-of-range`, `too-few-points`, `equal-levels`.
 * Source: ISO/TS 28037:2010 clause 6. Example: its unequal weights, a = 0.885, b = 2.057, chi squared 4.131.
 */
export function fitWeightedLine(points: readonly WeightedPoint[]): Outcome<WeightedLine> {
  const checked = checkPoints(points, 1);
  if (!checked.ok) return checked;
  for (const [index, { standardUncertainty }] of points.entries()) {
    if (!(standardUncertainty > 0 && Number.isFinite(standardUncertainty))) {
      return fail('number-out-of-range', `Point ${index + 1} needs a standard uncertainty above 0.`, {
        where: `points[${index}].standardUncertainty`,
        needed: 'a finite number above 0',
        given: String(standardUncertainty),
      });
    }
  }
  const sumOf = (of: (point: WeightedPoint) => number): number =>
    points.reduce((sum, point) => sum + of(point) / point.standardUncertainty ** 2, 0);
  const weight = sumOf(() => 1);
  const centre = sumOf(({ x }) => x) / weight;
  const valueAtCentre = sumOf(({ y }) => y) / weight;
  const spread = sumOf(({ x }) => (x - centre) ** 2);
  const slope = sumOf(({ x, y }) => (x - centre) * (y - valueAtCentre)) / spread;
  const chiSquared = sumOf(({ x, y }) => (y - valueAtCentre - slope * (x - centre)) ** 2);
  const degreesOfFreedom = points.length - 2;
  return succeed({
    intercept: valueAtCentre - slope * centre,
    slope,
    interceptUncertainty: Math.sqrt(1 / weight + centre ** 2 / spread),
    slopeUncertainty: 1 / Math.sqrt(spread),
    covariance: -centre / spread,
    centre,
    valueAtCentre,
    uncertaintyAtCentre: 1 / Math.sqrt(weight),
    chiSquared,
    degreesOfFreedom,
    probability: chiSquareUpperProbability(chiSquared, degreesOfFreedom),
  });
}

/** Answers the value of the line at x. Any finite x. */
export function valueOnLine({ centre, valueAtCentre, slope }: WeightedLine, x: number): number {
  return valueAtCentre + slope * (x - centre);
}

/** Answers the standard uncertainty of the line at x, sqrt(u(x0)^2 + (x - x0)^2 u(b)^2). Any finite x. */
export function lineUncertaintyAt(line: WeightedLine, x: number): number {
  return Math.hypot(line.uncertaintyAtCentre, (x - line.centre) * line.slopeUncertainty);
}
