// How many values a control chart takes to signal, by simulation. Used by the script in tests/benchmark/ and by the
// smaller test beside the published run lengths.

import { baselineOf, type ChartBaseline } from '../src/domain/statistics/chart-baseline.ts';
import { firstSignal } from '../src/domain/statistics/chart-signal.ts';
import { cusumChart, cusumOfPractice } from '../src/domain/statistics/cusum-chart.ts';
import { ewmaChart, ewmaOfPractice } from '../src/domain/statistics/ewma-chart.ts';
import { seededScatter } from './unit/domain/calibration/seeded-scatter.ts';

export type Chart = (values: readonly number[], baseline: ChartBaseline) => number | null;

export const charts = {
  'EWMA 0.2, L 2.962, asymptotic limits': (values, baseline) =>
    firstSignal(ewmaChart(values, baseline, { ...ewmaOfPractice, limits: 'asymptotic' })),
  'EWMA 0.2, L 2.962, exact limits': (values, baseline) =>
    firstSignal(ewmaChart(values, baseline, { ...ewmaOfPractice, limits: 'exact' })),
  'CUSUM 0.5, 5': (values, baseline) => firstSignal(cusumChart(values, baseline, cusumOfPractice)),
  'CUSUM 0.5, 4': (values, baseline) => firstSignal(cusumChart(values, baseline, { k: 0.5, h: 4 })),
} as const satisfies Readonly<Record<string, Chart>>;

/** One series is charted so far, and further if it has not signalled; a series is never cut off. */
const firstStretch = 64;

export interface RunLength {
  readonly mean: number;
  /** Standard error of the mean, as a part of it. */
  readonly relativeError: number;
  /** Share of series that signalled within `within` values. */
  readonly shareWithin: (within: number) => number;
}

/**
 * Answers the run lengths of a chart over so many series of normal values of mean `shift` and standard deviation 1, against
 * the true baseline, or one from the first `baselineCount` values of each series before the shift.
 */
export function runLength(
  chart: Chart,
  { shift, trials, seed, baselineCount }: { shift: number; trials: number; seed: number; baselineCount?: number },
): RunLength {
  const normal = seededScatter(seed);
  const lengths = Array.from({ length: trials }, () => {
    const baseline = baselineCount === undefined ? { mean: 0, standardDeviation: 1 } : estimated(baselineCount, normal);
    const values: number[] = [];
    for (let stretch = firstStretch; ; stretch *= 2) {
      while (values.length < stretch) values.push(shift + normal());
      const signal = chart(values, baseline);
      if (signal !== null) return signal + 1;
      // An estimated baseline can lie so wide that a signal may take for ever; no figure looks that far.
      if (baselineCount !== undefined && stretch > 4096) return Number.POSITIVE_INFINITY;
    }
  });
  const mean = lengths.reduce((sum, length) => sum + length, 0) / trials;
  const variance = lengths.reduce((sum, length) => sum + (length - mean) ** 2, 0) / (trials - 1);
  return {
    mean,
    relativeError: Math.sqrt(variance / trials) / mean,
    shareWithin: (within) => lengths.filter((length) => length <= within).length / trials,
  };
}

function estimated(count: number, normal: () => number): ChartBaseline {
  const state = baselineOf(
    Array.from({ length: count }, () => normal()),
    count,
  );
  if (state.kind !== 'settled') throw new Error(`No baseline: ${state.kind}.`);
  return state.baseline;
}
