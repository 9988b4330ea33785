// When a pair that drifts steadily leaves its limit, from three calibrations or more. What they are is in drift-history.ts.

import { addPlantDays, daysBetween, type PlantDay } from '../dates/plant-day.ts';
import { type Outcome, succeed } from '../problem.ts';
import { fitWeightedLine, valueOnLine, type WeightedLine } from '../regression/fit-weighted-line.ts';
import { bandReaches, lineReaches } from '../regression/line-reaches.ts';
import { twoSidedNormalFactor } from '../statistics/normal-quantile.ts';
import { daysPerYear } from './between-calibrations.ts';
import type { DriftPoint } from './drift-history.ts';

export interface DriftTrend {
  readonly percentPerYear: number;
  /** Bounds of the rate at the level asked for. */
  readonly low: number;
  readonly high: number;
  /** Of the trend on the latest day, against the curve in use. */
  readonly latestPercent: number;
}

export type DriftForecast =
  /** Two calibrations give a change and no trend. */
  | { readonly kind: 'too-few-calibrations'; readonly needed: number; readonly given: number }
  /** The calibrations lie further from any line than their uncertainties explain: something happened between two of them. */
  | {
      readonly kind: 'not-a-line';
      readonly chiSquared: number;
      readonly degreesOfFreedom: number;
      readonly probability: number;
    }
  | { readonly kind: 'outside-already'; readonly side: 'high' | 'low'; readonly trend: DriftTrend }
  | {
      readonly kind: 'no-forecast-before-horizon';
      readonly reason: 'trend-not-distinguishable' | 'beyond-horizon';
      readonly trend: DriftTrend;
      /** Up to this day not even the edge of the trend's band reaches a limit; null where it does not before the horizon. */
      readonly safeUntil: PlantDay | null;
    }
  | {
      readonly kind: 'forecast';
      readonly side: 'high' | 'low';
      readonly trend: DriftTrend;
      /** First day beyond the limit by the trend, and the bounds of it at the level asked for. */
      readonly day: PlantDay;
      readonly earliest: PlantDay;
      /** Null where it lies beyond the horizon. */
      readonly latest: PlantDay | null;
    };

export interface ForecastOptions {
  /** Largest change of force either way, in %, from the curve in use. */
  readonly limitPercent: number;
  /** Two-sided probability of the bounds, in (0, 1). */
  readonly level: number;
  /** Last day that is looked at. */
  readonly horizon: PlantDay;
}

/** A line through fewer has no scatter that could speak against it. Source: design of the program, two give no forecast. */
const leastCalibrations = 3;

/** A line is given up where chi squared is this improbable or more. Source: ISO/TS 28037:2010 6.3, its 95 % quantile. */
const leastProbability = 0.05;

/**
 * Answers on which day the drift of a pair leaves -limit to +limit, by the weighted straight line through its calibrations,
 * and between which days with probability `level`. Drift in % against the curve in use; weights 1/u^2.
 * The day is the inverse prediction of the line at the limit, its bounds Fieller's: the days whose band of the line holds the
 * limit. They say how well the calibrations settle the line, not whether the pair keeps to it.
 * Range: points ascending by day, at least 3 on different days; every other outcome is named in `DriftForecast`. The
 * uncertainties count as independent: a load cell behind all of them widens the bounds more than is due.
 * Problem: `number-out-of-range` for an uncertainty that is not above 0.
 * Source: ISO/TS 28037:2010 clause 6 (line, chi squared) and 11.1 (inverse); Fieller as in regression/line-reaches.ts;
 * design of the program, "Calculations" 13 (a).
 */
export function forecastDrift(points: readonly DriftPoint[], options: ForecastOptions): Outcome<DriftForecast> {
  const { limitPercent, level } = options;
  const given = new Set(points.map(({ day }) => day)).size;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || given < leastCalibrations) {
    return succeed({ kind: 'too-few-calibrations', needed: leastCalibrations, given });
  }
  // Years since the latest calibration, so that every number is of the size of the drift.
  const years = (day: PlantDay): number => daysBetween(last.day, day) / daysPerYear;
  const line = fitWeightedLine(
    points.map(({ day, driftPercent, standardUncertaintyPercent }) => ({
      x: years(day),
      y: driftPercent,
      standardUncertainty: standardUncertaintyPercent,
    })),
  );
  if (!line.ok) return line;
  const { chiSquared, degreesOfFreedom, probability } = line.value;
  if (probability <= leastProbability) {
    return succeed({ kind: 'not-a-line', chiSquared, degreesOfFreedom, probability });
  }
  const trend = trendOf(line.value, level);
  if (Math.abs(trend.latestPercent) > limitPercent) {
    return succeed({ kind: 'outside-already', side: trend.latestPercent > 0 ? 'high' : 'low', trend });
  }
  return succeed(forecastFrom(line.value, trend, years(options.horizon), { ...options, latestDay: last.day }));
}

function forecastFrom(
  line: WeightedLine,
  trend: DriftTrend,
  horizon: number,
  { limitPercent, level, latestDay }: ForecastOptions & { readonly latestDay: PlantDay },
): DriftForecast {
  const dayAt = (year: number, round: (value: number) => number): PlantDay =>
    addPlantDays(latestDay, round(year * daysPerYear));
  const side = line.slope > 0 ? 'high' : 'low';
  const limit = side === 'high' ? limitPercent : -limitPercent;
  const reached = lineReaches(line, limit, level);
  if (reached === null || reached.x > horizon) {
    const edges = [limitPercent, -limitPercent].flatMap(
      (y) => bandReaches(line, y, { from: 0, to: Math.max(0, horizon), level }) ?? [],
    );
    return {
      kind: 'no-forecast-before-horizon',
      reason: reached === null ? 'trend-not-distinguishable' : 'beyond-horizon',
      trend,
      safeUntil: edges.length === 0 ? null : dayAt(Math.min(...edges), Math.floor),
    };
  }
  return {
    kind: 'forecast',
    side,
    trend,
    day: dayAt(reached.x, Math.ceil),
    earliest: dayAt(Math.max(0, reached.low), Math.floor),
    latest: reached.high > horizon ? null : dayAt(reached.high, Math.ceil),
  };
}

function trendOf(line: WeightedLine, level: number): DriftTrend {
  const half = twoSidedNormalFactor(level) * line.slopeUncertainty;
  return {
    percentPerYear: line.slope,
    low: line.slope - half,
    high: line.slope + half,
    latestPercent: valueOnLine(line, 0),
  };
}
