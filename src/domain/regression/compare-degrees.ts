// Which degree a curve needs: the extra-sum-of-squares F test of each degree against the one below.

import { fUpperProbability } from '../statistics/f-upper-probability.ts';
import { type Degree, fitPolynomial, type Point, type PolynomialFit } from './fit-polynomial.ts';
import { isStrictlyIncreasing } from './is-strictly-increasing.ts';

export interface DegreeComparison {
  readonly degree: Degree;
  /** Ascending powers of x. */
  readonly coefficients: readonly number[];
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  /** Against the degree below; null for degree 1, and where the degree below already passes through every point. */
  readonly fStatistic: number | null;
  readonly pValue: number | null;
  readonly strictlyIncreasing: boolean;
}

/** Significance below which a further term is taken as real. Source: 5 % is the custom of the field, the house rule of the design. */
const significance = 0.05;

/** Deviation of a point, as a part of the largest |y|, that is rounding and not scatter: a few units in the last place. */
const roundingOfPoint = 8 * Number.EPSILON;

/** The fits of degree 1 to 3 that the points allow, ascending and without gaps. */
export function fitDegrees(points: readonly Point[]): readonly PolynomialFit[] {
  const fits: PolynomialFit[] = [];
  for (const degree of [1, 2, 3] as const) {
    const fit = fitPolynomial(points, degree);
    if (!fit.ok) break;
    fits.push(fit.value);
  }
  return fits;
}

/**
 * Answers, for each degree the points allow, its scatter and whether its highest term is real.
 * F = (SS_lower - SS) / (SS / (n - degree - 1)) with 1 and n - degree - 1 degrees of freedom, SS = residual sum of squares.
 * A residual sum of squares that is rounding alone is taken at the size of that rounding, so that F stays finite.
 * Source: JCGM GUM-6:2020 11.10 for choosing among nested polynomials; NIST/SEMATECH e-Handbook 4.6.1 for the data of the
 * example: the load cell rejects degree 1 (F = 4218.5) and not degree 2 (F = 1.19).
 */
export function compareDegrees(points: readonly Point[]): readonly DegreeComparison[] {
  return compareFits(fitDegrees(points));
}

/** Answers the same for fits that exist already, ascending in degree. */
export function compareFits(fits: readonly PolynomialFit[]): readonly DegreeComparison[] {
  return fits.map((fit, index) => {
    const { degree, coefficients, residualStandardDeviation, degreesOfFreedom } = fit;
    const strictlyIncreasing = isStrictlyIncreasing(fit);
    const known = { degree, coefficients, residualStandardDeviation, degreesOfFreedom, strictlyIncreasing };
    const lower = fits[index - 1];
    const floor = roundingFloor(fit);
    if (lower === undefined || lower.residualSumOfSquares <= floor) {
      return { ...known, fStatistic: null, pValue: null };
    }
    const left = Math.max(fit.residualSumOfSquares, floor);
    const fStatistic = (Math.max(0, lower.residualSumOfSquares - left) / left) * fit.degreesOfFreedom;
    const pValue = fUpperProbability(fStatistic, 1, fit.degreesOfFreedom);
    return { ...known, fStatistic, pValue };
  });
}

/**
 * Answers the degree to take: from 1 upwards while the next term is significant at 5 % and the curve with it still rises
 * strictly. Stops at the first step that is not, even if a later one were.
 * Source: house rule of the design, after JCGM GUM-6:2020 11.10 (the lowest degree that serves).
 */
export function chooseDegree(comparison: readonly DegreeComparison[]): Degree {
  let chosen: Degree = 1;
  for (const { degree, pValue, strictlyIncreasing } of comparison) {
    if (degree === 1) continue;
    if (pValue === null || pValue > significance || !strictlyIncreasing) break;
    chosen = degree;
  }
  return chosen;
}

function roundingFloor(fit: PolynomialFit): number {
  const largest = fit.points.reduce((most, { y }) => Math.max(most, Math.abs(y)), 0);
  return fit.points.length * (roundingOfPoint * largest) ** 2;
}
