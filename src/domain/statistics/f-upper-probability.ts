// Upper tail of the F distribution, the p-value of an F test. The tests themselves are in regression/.

import cdf from '@stdlib/stats-base-dists-f-cdf';

/**
 * Answers how probable an F statistic this large or larger is when the tested terms are not real.
 * `statistic` 0 or more; both degrees of freedom above 0; outside it throws RangeError, a programmer's error.
 * The upper tail of F(a, b) at x is the lower tail of F(b, a) at 1/x; taken there so that a p-value below 1e-16 is not lost.
 * Source: NIST/SEMATECH e-Handbook 1.3.6.6.5 (from memory) for the distribution; computed by @stdlib.
 * Example: 2.15 at 18 and 20 degrees of freedom is close to 0.05 (NIST/SEMATECH e-Handbook 4.6.1.5).
 */
export function fUpperProbability(statistic: number, numeratorDegrees: number, denominatorDegrees: number): number {
  const probability = statistic === 0 ? 1 : cdf(1 / statistic, denominatorDegrees, numeratorDegrees);
  if (!(statistic >= 0) || !Number.isFinite(probability)) {
    throw new RangeError(
      `No F probability at ${statistic} with ${numeratorDegrees} and ${denominatorDegrees} degrees.`,
    );
  }
  return probability;
}
