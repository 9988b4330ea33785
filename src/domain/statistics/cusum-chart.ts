// The two-sided tabular cumulative sum of a series: sees a step of about one standard deviation.
// What it measures against is in chart-baseline.ts, the other chart in ewma-chart.ts.

import type { ChartBaseline } from './chart-baseline.ts';
import type { ChartSignal } from './chart-signal.ts';

export interface CusumOptions {
  /** Part of each deviation that is let pass, in standard deviations: half the step to be found. */
  readonly k: number;
  /** Sum from which it signals, in standard deviations. */
  readonly h: number;
}

export interface CusumPoint {
  readonly value: number;
  /** Both sums in standard deviations of the baseline, 0 or more. */
  readonly high: number;
  readonly low: number;
  readonly signal: ChartSignal;
}

/** k 0.5 and h 5: one false signal in 465 values. Source: D. C. Montgomery, Introduction to Statistical Quality Control (from memory). */
export const cusumOfPractice = { k: 0.5, h: 5 } as const;

/**
 * Answers the CUSUM chart of a series: with d_i = (x_i - mean)/s the upper sum S_i = max(0, S_(i-1) + d_i - k) and the lower
 * sum max(0, S_(i-1) - d_i - k), both from 0. A point signals where a sum is above h, the larger sum naming the side; the
 * sums go on after a signal.
 * Range: k of 0 or more, h and the standard deviation s of the baseline above 0; outside it throws RangeError, a programmer's
 * error.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.3. Example: of its 20 group means the 14th is the first to signal, on the upper side.
 */
export function cusumChart(
  values: readonly number[],
  { mean, standardDeviation }: ChartBaseline,
  { k, h }: CusumOptions,
): readonly CusumPoint[] {
  if (!(k >= 0 && h > 0 && standardDeviation > 0)) {
    throw new RangeError(`No CUSUM with k ${k}, h ${h} and standard deviation ${standardDeviation}.`);
  }
  let [high, low] = [0, 0];
  return values.map((value) => {
    const deviation = (value - mean) / standardDeviation;
    high = Math.max(0, high + deviation - k);
    low = Math.max(0, low - deviation - k);
    const signal = Math.max(high, low) > h ? (high >= low ? 'high' : 'low') : null;
    return { value, high, low, signal };
  });
}
