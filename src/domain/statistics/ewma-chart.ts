// The exponentially weighted moving average of a series and its control limits: sees a slow drift.
// What it measures against is in chart-baseline.ts, the other chart in cusum-chart.ts.

import type { ChartBaseline } from './chart-baseline.ts';
import type { ChartSignal } from './chart-signal.ts';

export interface EwmaOptions {
  /** Weight of the newest value, above 0 and at most 1. */
  readonly lambda: number;
  /** Half the width of the limits, in standard deviations of the average. */
  readonly width: number;
  /** `exact`: as wide as the average can be after so many values. `asymptotic`: as after very many. */
  readonly limits: 'exact' | 'asymptotic';
}

export interface EwmaPoint {
  readonly value: number;
  readonly average: number;
  readonly low: number;
  readonly high: number;
  readonly signal: ChartSignal;
}

/** lambda 0.2 and L 2.962: one false signal in 500 values. Source: Lucas and Saccucci, Technometrics 32 (1990) 1, Table 3 (from memory). */
export const ewmaOfPractice = { lambda: 0.2, width: 2.962 } as const;

/**
 * Answers the EWMA chart of a series: z_i = lambda x_i + (1 - lambda) z_(i-1) from z_0 = the baseline's mean, with limits
 * mean -+ L s sqrt(lambda/(2 - lambda) (1 - (1 - lambda)^(2i))), or without the last factor where they are asymptotic.
 * s = standard deviation of the baseline, L = `width`. A point signals where z lies beyond a limit, not on it. In the unit of
 * the values.
 * Range: lambda in (0, 1], a width and a standard deviation above 0; outside it throws RangeError, a programmer's error.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.4; the exact limits: Lucas and Saccucci, Technometrics 32 (1990) 1 (from memory).
 * Example: the handbook's series at lambda 0.3 and L 3 ends at 51.99, within 47.4115 to 52.5884.
 */
export function ewmaChart(
  values: readonly number[],
  { mean, standardDeviation }: ChartBaseline,
  { lambda, width, limits }: EwmaOptions,
): readonly EwmaPoint[] {
  if (!(lambda > 0 && lambda <= 1 && width > 0 && standardDeviation > 0)) {
    throw new RangeError(`No EWMA with lambda ${lambda}, width ${width} and standard deviation ${standardDeviation}.`);
  }
  const asymptotic = width * standardDeviation * Math.sqrt(lambda / (2 - lambda));
  let average = mean;
  return values.map((value, index) => {
    average = lambda * value + (1 - lambda) * average;
    const grown = limits === 'exact' ? Math.sqrt(1 - (1 - lambda) ** (2 * (index + 1))) : 1;
    const low = mean - asymptotic * grown;
    const high = mean + asymptotic * grown;
    const signal = average > high ? 'high' : average < low ? 'low' : null;
    return { value, average, low, high, signal };
  });
}
