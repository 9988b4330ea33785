// What a control chart measures against: mean and standard deviation of the first values of a series.
// The charts themselves are in ewma-chart.ts and cusum-chart.ts.

export interface ChartBaseline {
  readonly mean: number;
  readonly standardDeviation: number;
}

/** A baseline, or why there is none. */
export type BaselineState =
  | { readonly kind: 'settled'; readonly baseline: ChartBaseline; readonly count: number }
  | { readonly kind: 'too-little-data'; readonly needed: number; readonly given: number }
  /** All values of the baseline are equal, so that nothing can be told from chance. */
  | { readonly kind: 'no-scatter'; readonly mean: number };

/** Deviation, as a part of the mean, below which values count as equal. House rule: some hundred units in the last place. */
const leastScatter = 1e-14;

/**
 * Answers the baseline that the first `count` values of a series give: their mean and standard deviation
 * s = sqrt(sum (x - mean)^2 / (count - 1)). In the unit of the values.
 * Range: `count` a whole number of 2 or more; below it throws RangeError, a programmer's error. Fewer values than `count` are
 * `too-little-data`, equal ones `no-scatter`.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.6 (from memory) for s; the first values after a calibration: design of the program,
 * "Calculations" 13 (c).
 */
export function baselineOf(values: readonly number[], count: number): BaselineState {
  if (!Number.isInteger(count) || count < 2) throw new RangeError(`No baseline of ${count} values.`);
  if (values.length < count) return { kind: 'too-little-data', needed: count, given: values.length };
  const first = values.slice(0, count);
  const mean = first.reduce((sum, value) => sum + value, 0) / count;
  const standardDeviation = Math.sqrt(first.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  if (!(standardDeviation > leastScatter * Math.abs(mean))) return { kind: 'no-scatter', mean };
  return { kind: 'settled', baseline: { mean, standardDeviation }, count };
}
