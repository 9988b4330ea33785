// What share of calibrations found the pair still within its limit, by the interval it had gone: whether intervals hold.
// What it advises for one pair is in advise-interval.ts.

import { twoSidedNormalFactor } from '../statistics/normal-quantile.ts';

/** One as-found result, with the months in force until then. */
export interface IntervalOutcome {
  readonly months: number;
  readonly isWithin: boolean;
}

export interface IntervalReliability {
  readonly months: number;
  readonly found: number;
  readonly within: number;
  readonly share: number;
  /** Bounds of the share at the level asked for. */
  readonly low: number;
  readonly high: number;
}

/**
 * Answers for each interval the share of as-found results within their limit, with Wilson's interval of it:
 * (p + z^2/2n -+ z sqrt(p(1 - p)/n + z^2/4n^2)) / (1 + z^2/n), z = two-sided normal factor. Ascending by months.
 * Range: `level` in (0, 1); no results give no rows.
 * Source: share found in tolerance: ILAC-G24:2007; E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209 (from memory).
 * Example: 81 of 263 at 95 % is 0.2553 to 0.3662 (R. G. Newcombe, Statistics in Medicine 17 (1998) 857, from memory).
 */
export function intervalReliability(
  outcomes: readonly IntervalOutcome[],
  level: number,
): readonly IntervalReliability[] {
  const z = twoSidedNormalFactor(level);
  const months = [...new Set(outcomes.map((each) => each.months))].sort((a, b) => a - b);
  return months.map((interval) => {
    const results = outcomes.filter((each) => each.months === interval);
    const [found, within] = [results.length, results.filter(({ isWithin }) => isWithin).length];
    const share = within / found;
    const centre = share + (z * z) / (2 * found);
    const half = z * Math.sqrt((share * (1 - share)) / found + (z * z) / (4 * found * found));
    const scale = 1 + (z * z) / found;
    return {
      months: interval,
      found,
      within,
      share,
      // At none and at all the bound is 0 and 1 itself, which the last digits of the formula miss.
      low: within === 0 ? 0 : (centre - half) / scale,
      high: within === found ? 1 : (centre + half) / scale,
    };
  });
}
