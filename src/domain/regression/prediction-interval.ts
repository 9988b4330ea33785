// The interval that holds y at a given x. The interval for x at a given y is in inversion-interval.ts.

import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import type { FittedPolynomial } from './fit-polynomial.ts';
import { type Predicted, predict, standardErrorOfPrediction } from './predict.ts';

export interface Interval {
  readonly level: number;
  readonly low: number;
  readonly high: number;
}

export interface IntervalOptions {
  /** Probability in (0, 1), two-sided. */
  readonly level: number;
  /** One future observation, the mean of so many at one x, or the curve itself. */
  readonly of: Predicted;
}

/**
 * Answers between which values y lies at x with probability `level`: fitted -+ t s sqrt(1 + h), t s sqrt(1/m + h) for the mean
 * of m observations, or t s sqrt(h) for the curve.
 * t = two-sided Student factor at the fit's degrees of freedom. Any finite x; always finite.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.2 (from memory).
 */
export function predictionInterval(fit: FittedPolynomial, x: number, options: IntervalOptions): Interval {
  const fitted = predict(fit, x);
  const half =
    twoSidedStudentFactor(options.level, fit.degreesOfFreedom) * standardErrorOfPrediction(fit, x, options.of);
  return { level: options.level, low: fitted - half, high: fitted + half };
}
