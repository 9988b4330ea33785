// The value of a fitted polynomial at x, its slope and how far it can be trusted there.
// Intervals are in prediction-interval.ts, x from y in invert.ts.

import type { FittedPolynomial } from './fit-polynomial.ts';
import { derivative, evaluate, powers } from './polynomial.ts';

/** What an interval or standard error is of: one future observation, the mean of so many at one x, or the curve itself. */
export type Predicted = 'observation' | { readonly meanOf: number } | 'mean-response';

/** Answers the variance of the predicted beside that of the curve, in units of s^2: 1, 1/m or 0. */
export function ownVariance(of: Predicted): number {
  if (typeof of === 'object') return 1 / of.meanOf;
  return of === 'observation' ? 1 : 0;
}

const scale = (fit: FittedPolynomial, x: number): number => (x - fit.centre) / fit.halfWidth;

/**
 * Answers the value of the curve at x. Any finite x; calibration/curve.ts refuses what lies outside the calibrated range.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.1 (from memory).
 */
export function predict(fit: FittedPolynomial, x: number): number {
  return evaluate(fit.scaledCoefficients, scale(fit, x));
}

/** Answers the slope dy/dx of the curve at x, the sensitivity that carries a small change of x to y. Any finite x. */
export function slopeAt(fit: FittedPolynomial, x: number): number {
  return evaluate(derivative(fit.scaledCoefficients), scale(fit, x)) / fit.halfWidth;
}

/**
 * Answers the leverage h = u' (X'X)^-1 u at x: the variance of the curve there in units of s^2. Any finite x.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.2 (from memory).
 */
export function leverageAt(fit: FittedPolynomial, x: number): number {
  const u = powers(scale(fit, x), fit.degree);
  let sum = 0;
  for (const [i, row] of fit.inverseInformation.entries()) {
    for (const [j, value] of row.entries()) sum += (u[i] ?? 0) * value * (u[j] ?? 0);
  }
  return sum;
}

/**
 * Answers the standard error at x: of one future observation s sqrt(1 + h), of the mean of m of them s sqrt(1/m + h), of the
 * curve itself s sqrt(h).
 * s = residual standard deviation, h = leverage; in units of y. Any finite x.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.2 (from memory); JCGM 100:2008 H.3.4 for the curve itself.
 * Example: 0.0041 for the correction at 30 degrees in JCGM 100:2008 H.3.
 */
export function standardErrorOfPrediction(fit: FittedPolynomial, x: number, of: Predicted): number {
  return fit.residualStandardDeviation * Math.sqrt(ownVariance(of) + leverageAt(fit, x));
}
