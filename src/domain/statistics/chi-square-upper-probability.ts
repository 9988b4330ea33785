// Upper tail of the chi-square distribution, the p-value of a sum of squares whose uncertainties are known.

import cdf from '@stdlib/stats-base-dists-normal-cdf';

/**
 * Answers how probable a chi-square statistic this large or larger is: Q(1) = 2 Phi(-sqrt x), Q(2) = exp(-x/2), and from
 * two degrees of freedom to the next Q(n + 2) = Q(n) + (x/2)^(n/2) exp(-x/2) / Gamma(n/2 + 1).
 * Range: `statistic` of 0 or more, `degrees` a whole number of 1 or more; outside it throws RangeError, a programmer's error.
 * Source: M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 26.4.4 and 26.4.5 (from memory).
 * Example: 9.488 at 4 degrees of freedom is 0.05 (ISO/TS 28037:2010 6.3).
 */
export function chiSquareUpperProbability(statistic: number, degrees: number): number {
  if (!(statistic >= 0) || !Number.isInteger(degrees) || degrees < 1) {
    throw new RangeError(`No chi-square probability at ${statistic} with ${degrees} degrees of freedom.`);
  }
  const half = statistic / 2;
  const isOdd = degrees % 2 === 1;
  let probability = isOdd ? 2 * cdf(-Math.sqrt(statistic), 0, 1) : Math.exp(-half);
  // The term of the first step: for n = 1 Gamma(3/2) = sqrt(pi)/2, for n = 2 Gamma(2) = 1.
  let term = isOdd ? (2 * Math.sqrt(half) * Math.exp(-half)) / Math.sqrt(Math.PI) : half * Math.exp(-half);
  for (let n = isOdd ? 1 : 2; n < degrees; n += 2) {
    probability += term;
    term *= half / (n / 2 + 1);
  }
  return Math.min(1, probability);
}
