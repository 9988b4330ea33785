// How probable it is that a measured quantity lies within its limits. Which verdict follows is in calibration/acceptance.ts.

import cdf from '@stdlib/stats-base-dists-normal-cdf';

/**
 * Answers the probability that the true value lies from `low` to `high`, given its estimate y and standard uncertainty u:
 * Phi((high - y)/u) - Phi((low - y)/u), Phi = normal distribution. A limit that is not there is infinite.
 * Range: u of zero or more; at zero it is 1 inside, limits included, and 0 outside.
 * Source: JCGM 106:2012 7.2 to 7.4 (from memory). Example: -5.47 V with u = 0.05 V against at most -5.40 V: 0.92.
 */
export function conformanceProbability(
  { estimate, standardUncertainty }: { readonly estimate: number; readonly standardUncertainty: number },
  { low, high }: { readonly low: number; readonly high: number },
): number {
  if (standardUncertainty === 0) return estimate >= low && estimate <= high ? 1 : 0;
  const below = (limit: number): number => {
    if (limit === Number.POSITIVE_INFINITY) return 1;
    return limit === Number.NEGATIVE_INFINITY ? 0 : cdf(limit, estimate, standardUncertainty);
  };
  return Math.max(0, below(high) - below(low));
}
