// Quantile of Student's t distribution. Its tail probability for F is in f-upper-probability.ts.

import quantile from '@stdlib/stats-base-dists-t-quantile';

/**
 * Answers the value that a variable of Student's t distribution stays below with the given probability.
 * `probability` in (0, 1), `degreesOfFreedom` above 0; outside it throws RangeError, a programmer's error.
 * Source: JCGM 100:2008 Table G.2 for the values; computed by @stdlib.
 * Example: 0.975 at 10 degrees of freedom is 2.228 (NIST/SEMATECH e-Handbook 1.3.6.7.2).
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  const value = quantile(probability, degreesOfFreedom);
  if (!Number.isFinite(value)) {
    throw new RangeError(`No t quantile at probability ${probability} with ${degreesOfFreedom} degrees of freedom.`);
  }
  return value;
}

/**
 * Answers the factor t with which -t to +t holds a variable of Student's t distribution with probability `level`.
 * `level` in (0, 1). Source: JCGM 100:2008 G.3.2.
 */
export function twoSidedStudentFactor(level: number, degreesOfFreedom: number): number {
  return studentQuantile((1 + level) / 2, degreesOfFreedom);
}
