// A pair watched between calibrations by the beds it pulled: both control charts, from a baseline after each calibration.
// The charts are in statistics/, whether the pair or the strand is the cause is in gauge-or-strand.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import { type Outcome, succeed } from '../problem.ts';
import { baselineOf, type ChartBaseline } from '../statistics/chart-baseline.ts';
import { type ChartSignal, firstSignal } from '../statistics/chart-signal.ts';
import { type CusumPoint, cusumChart, cusumOfPractice } from '../statistics/cusum-chart.ts';
import { type EwmaPoint, ewmaChart, ewmaOfPractice } from '../statistics/ewma-chart.ts';
import { type BedRatio, bedRatios, type Pull } from './bed-ratios.ts';

export interface InServiceSignal {
  readonly chart: 'ewma' | 'cusum';
  /** `high`: the gauge promises more against the elongation than it did after the calibration. */
  readonly side: 'high' | 'low';
  readonly day: PlantDay;
  readonly bed: string;
  /** What signalled and its limit: EWMA as a ratio, CUSUM in standard deviations of the baseline. */
  readonly value: number;
  readonly limit: number;
}

export type InServiceState =
  | { readonly kind: 'too-little-data'; readonly needed: number; readonly given: number }
  | { readonly kind: 'no-scatter'; readonly mean: number }
  | {
      readonly kind: 'charted';
      readonly baseline: ChartBaseline;
      /** One point of each chart for every bed after the baseline. */
      readonly charted: readonly BedRatio[];
      readonly ewma: readonly EwmaPoint[];
      readonly cusum: readonly CusumPoint[];
      /** The first signal of each chart, the earlier one first. */
      readonly signals: readonly InServiceSignal[];
    };

/** The beds from one calibration to the next. */
export interface InServicePeriod {
  readonly calibratedOn: PlantDay;
  readonly beds: readonly BedRatio[];
  readonly state: InServiceState;
}

/**
 * Beds that make a baseline, unless asked otherwise. House rule: 20 to 25 values are the custom of control charts (Montgomery,
 * from memory). Fewer give a chart sooner and more false signals: tests/benchmark/run-lengths.ts prints how many.
 */
export const bedsOfBaseline = 25;

/**
 * Answers how the mean ratio of gauge force to elongation force of a pair's beds went since each calibration: baseline from
 * the first `bedsInBaseline` beds after it, then EWMA (0.2, L 2.962, exact limits) and CUSUM (0.5, 5) of the beds that follow.
 * A bed on the day of a calibration is counted after it; beds before the first calibration rest on no curve and are left out.
 * A signal says that the ratio moved, not why: gauge, strand or elongation.
 * Range: `bedsInBaseline` of 2 or more; fewer beds are `too-little-data`, beds without scatter `no-scatter`.
 * Problem: `number-out-of-range` for a force not above 0.
 * Source: design of the program, "Calculations" 13 (c); the charts as in statistics/ewma-chart.ts and cusum-chart.ts.
 */
export function watchInService(
  pulls: readonly Pull[],
  pair: string,
  calibratedOn: readonly PlantDay[],
  bedsInBaseline: number,
): Outcome<readonly InServicePeriod[]> {
  const beds = bedRatios(pulls.filter((pull) => pull.pair === pair));
  if (!beds.ok) return beds;
  const days = [...new Set(calibratedOn)].sort();
  return succeed(
    days.map((day, index) => {
      const next = days[index + 1];
      const between = beds.value.filter((bed) => bed.day >= day && (next === undefined || bed.day < next));
      return { calibratedOn: day, beds: between, state: chartBeds(between, bedsInBaseline) };
    }),
  );
}

function chartBeds(beds: readonly BedRatio[], bedsInBaseline: number): InServiceState {
  const settled = baselineOf(
    beds.map(({ ratio }) => ratio),
    bedsInBaseline,
  );
  if (settled.kind !== 'settled') return settled;
  const { baseline } = settled;
  const charted = beds.slice(bedsInBaseline);
  const ratios = charted.map(({ ratio }) => ratio);
  const ewma = ewmaChart(ratios, baseline, { ...ewmaOfPractice, limits: 'exact' });
  const cusum = cusumChart(ratios, baseline, cusumOfPractice);
  const found = [
    firstOf('ewma', ewma, charted, (point, side) => [point.average, point[side]]),
    firstOf('cusum', cusum, charted, (point, side) => [point[side], cusumOfPractice.h]),
  ]
    .flatMap((each) => each ?? [])
    .sort((a, b) => a.index - b.index);
  return { kind: 'charted', baseline, charted, ewma, cusum, signals: found.map(({ signal }) => signal) };
}

/** The first signal of one chart, with the place of its bed; null where it gives none. */
function firstOf<P extends { readonly signal: ChartSignal }>(
  chart: InServiceSignal['chart'],
  points: readonly P[],
  beds: readonly BedRatio[],
  valueAndLimit: (point: P, side: 'high' | 'low') => readonly [value: number, limit: number],
): { readonly index: number; readonly signal: InServiceSignal } | null {
  const index = firstSignal(points);
  if (index === null) return null;
  const [point, bed] = [points[index], beds[index]];
  if (point === undefined || point.signal === null || bed === undefined) return null;
  const [value, limit] = valueAndLimit(point, point.signal);
  return { index, signal: { chart, side: point.signal, day: bed.day, bed: bed.bed, value, limit } };
}
