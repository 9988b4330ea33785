// The lack-of-fit F test: does the curve miss the means of the repeated levels by more than the repeats scatter?

import { fUpperProbability } from '../statistics/f-upper-probability.ts';

export interface LackOfFit {
  /** Sum of squares of the level means about the curve, and of the observations about their level means: together the residual one. */
  readonly lackOfFitSumOfSquares: number;
  readonly pureErrorSumOfSquares: number;
  readonly fStatistic: number;
  readonly pValue: number;
  readonly numeratorDegrees: number;
  readonly denominatorDegrees: number;
}

/**
 * Answers the lack-of-fit test of a curve with `coefficientCount` coefficients.
 * F = [sum n_j (mean_j - fitted_j)^2 / (m - p)] / [sum (y_ij - mean_j)^2 / (n - m)], m levels of exactly equal x, n points,
 * p coefficients; written with residuals, which are the same differences and lose no digits.
 * Null where no level repeats, m is not above p, or the repeats agree exactly (F would be infinite).
 * Source: NIST/SEMATECH e-Handbook 4.4.4.6 (from memory). Example: 214.7464 for the straight line through the load cell
 * of 4.6.1.5.
 */
export function lackOfFit(
  points: readonly { readonly x: number; readonly residual: number }[],
  coefficientCount: number,
): LackOfFit | null {
  const levels = new Map<number, { sum: number; count: number }>();
  for (const { x, residual } of points) {
    const level = levels.get(x);
    if (level === undefined) levels.set(x, { sum: residual, count: 1 });
    else {
      level.sum += residual;
      level.count += 1;
    }
  }
  const numeratorDegrees = levels.size - coefficientCount;
  const denominatorDegrees = points.length - levels.size;
  if (numeratorDegrees < 1 || denominatorDegrees < 1) return null;
  let missed = 0;
  for (const { sum, count } of levels.values()) missed += (sum * sum) / count;
  let scattered = 0;
  for (const { x, residual } of points) {
    const level = levels.get(x);
    if (level !== undefined) scattered += (residual - level.sum / level.count) ** 2;
  }
  if (scattered === 0) return null;
  const fStatistic = missed / numeratorDegrees / (scattered / denominatorDegrees);
  const pValue = fUpperProbability(fStatistic, numeratorDegrees, denominatorDegrees);
  return {
    lackOfFitSumOfSquares: missed,
    pureErrorSumOfSquares: scattered,
    fStatistic,
    pValue,
    numeratorDegrees,
    denominatorDegrees,
  };
}
