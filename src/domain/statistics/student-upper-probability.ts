// Upper tail of Student's t distribution, the p-value of a one-sided test. Its quantile is in student-quantile.ts.

import { fUpperProbability } from './f-upper-probability.ts';

/**
 * Answers how probable a value of Student's t this large or larger is: half the upper tail of F(1, degrees) at t^2, or one
 * minus it for a negative t. Any finite t, `degreesOfFreedom` above 0; outside it throws RangeError, a programmer's error.
 * Source: NIST/SEMATECH e-Handbook 1.3.6.6.4 (from memory). Example: 2.228 at 10 degrees of freedom is 0.025.
 */
export function studentUpperProbability(t: number, degreesOfFreedom: number): number {
  const beyond = fUpperProbability(t * t, 1, degreesOfFreedom) / 2;
  return t >= 0 ? beyond : 1 - beyond;
}
