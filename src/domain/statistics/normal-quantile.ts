// Quantile of the normal distribution. Student's is in student-quantile.ts.

import cdf from '@stdlib/stats-base-dists-normal-cdf';
import { studentQuantile } from './student-quantile.ts';

/** Degrees of freedom at which Student's quantile is close enough to start from. */
const startingDegrees = 1e6;

/**
 * Answers the value that a standard normal variable stays below with the given probability: Student's quantile at very many
 * degrees of freedom, then two of Newton's steps on the normal distribution, each of which doubles the digits.
 * `probability` in (0, 1); outside it throws RangeError, a programmer's error.
 * Source: NIST/SEMATECH e-Handbook 1.3.6.7.1 (from memory) for the values; distribution computed by @stdlib.
 * Example: 0.975 is 1.959964.
 */
export function normalQuantile(probability: number): number {
  let value = studentQuantile(probability, startingDegrees);
  for (let step = 0; step < 2; step += 1) {
    const density = Math.exp(-(value * value) / 2) / Math.sqrt(2 * Math.PI);
    value -= (cdf(value, 0, 1) - probability) / density;
  }
  return value;
}

/** Answers the factor z with which -z to +z holds a standard normal variable with probability `level`, in (0, 1). */
export function twoSidedNormalFactor(level: number): number {
  return normalQuantile((1 + level) / 2);
}
