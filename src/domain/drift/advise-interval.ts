// Whether the interval of a pair may be lengthened or should be shortened, from how it was found at its calibrations.
// What share was found in tolerance, over many pairs, is in interval-reliability.ts.

import { addPlantMonths, type PlantDay } from '../dates/plant-day.ts';
import type { DriftForecast } from './forecast-drift.ts';

/** How a pair was found at a calibration, before any adjustment. */
export interface AsFoundError {
  readonly day: PlantDay;
  readonly errorPercent: number;
  readonly limitPercent: number;
}

export interface IntervalOptions {
  /** Months in force now. */
  readonly currentMonths: number;
  /** What the rule profile allows; nothing longer is ever advised. */
  readonly profileMonths: number;
}

export interface IntervalAdvice {
  readonly method: 'staircase' | 'control-chart';
  readonly advice: 'lengthen' | 'keep' | 'shorten';
  readonly months: number;
  readonly because:
    | 'never-found'
    /** The latest result lies beyond its limit. */
    | 'found-outside'
    /** Within the limit, but not within the part that allows more. */
    | 'near-the-limit'
    | 'well-within'
    /** It would be longer, but for the profile. */
    | 'profile-allows-no-longer'
    /** There is no step below. */
    | 'shortest-already'
    /** The drift, at its bound, reaches the limit when these months are over. */
    | 'drift-reaches-limit';
}

/** Part of the limit a result must lie within before the interval is lengthened. Source: ILAC-G24:2007, OIML D 10:2007, method 1. */
const lengthenWithin = 0.8;

/** Months an interval goes up or down by steps of. House rule: what plants write on a label. */
const ladder = [1, 2, 3, 4, 6, 9, 12, 15, 18, 24, 30, 36, 48, 60] as const;

/**
 * Answers the interval that the latest as-found result speaks for, by the staircase: a step longer where it lies within 80 % of
 * its limit, a step shorter where it lies outside, else as it is. Never longer than the profile allows, and cut to that where
 * it is longer now. A step is the next of 1, 2, 3, 4, 6, 9, 12, 15, 18, 24, 30, 36, 48, 60 months.
 * `results` ascending by day. Range: whole months of 1 or more; without a result it is kept, `never-found`.
 * Source: ILAC-G24:2007 / OIML D 10:2007, method 1, automatic adjustment or "staircase"; the steps are a house rule.
 */
export function adviseByStaircase(results: readonly AsFoundError[], options: IntervalOptions): IntervalAdvice {
  const { profileMonths } = options;
  const currentMonths = Math.min(options.currentMonths, profileMonths);
  const advise = (
    advice: IntervalAdvice['advice'],
    months: number,
    because: IntervalAdvice['because'],
  ): IntervalAdvice => ({ method: 'staircase', advice, months, because });
  const latest = results.at(-1);
  if (latest === undefined) return advise('keep', currentMonths, 'never-found');
  const part = Math.abs(latest.errorPercent) / latest.limitPercent;
  if (part > 1) {
    const shorter = ladder.findLast((months) => months < currentMonths);
    if (shorter === undefined) return advise('keep', currentMonths, 'shortest-already');
    return advise('shorten', shorter, 'found-outside');
  }
  if (part > lengthenWithin) return advise('keep', currentMonths, 'near-the-limit');
  const longer = ladder.find((months) => months > currentMonths);
  if (longer === undefined || longer > profileMonths) return advise('keep', currentMonths, 'profile-allows-no-longer');
  return advise('lengthen', longer, 'well-within');
}

/**
 * Answers the interval that the trend of a pair's calibrations speaks for: the whole months from the latest calibration to the
 * day on which the drift may reach its limit at the earliest, by the bound of its forecast. Never longer than the profile
 * allows. Null where the trend gives no such day: too few calibrations, no line, outside already; the staircase then advises.
 * `safeUntil` null in the forecast means that nothing is reached before the horizon, and the horizon's months count.
 * Source: ILAC-G24:2007 / OIML D 10:2007, method 2, control chart: the interval follows from the drift and its dispersion.
 */
export function adviseByDrift(
  forecast: DriftForecast,
  latestOn: PlantDay,
  horizon: PlantDay,
  { currentMonths, profileMonths }: IntervalOptions,
): IntervalAdvice | null {
  if (forecast.kind !== 'forecast' && forecast.kind !== 'no-forecast-before-horizon') return null;
  const earliest = forecast.kind === 'forecast' ? forecast.earliest : (forecast.safeUntil ?? horizon);
  let reached = 0;
  while (reached < profileMonths && addPlantMonths(latestOn, reached + 1) <= earliest) reached += 1;
  const isBound = reached >= profileMonths;
  const months = Math.max(1, reached);
  const advice = months > currentMonths ? 'lengthen' : months < currentMonths ? 'shorten' : 'keep';
  return {
    method: 'control-chart',
    advice,
    months,
    because: isBound ? 'profile-allows-no-longer' : 'drift-reaches-limit',
  };
}

/**
 * Answers the advice for a pair: by its drift where the trend gives one and the latest result did not lie outside its limit,
 * else by the staircase. House rule: a trend that did not see the last failure coming is not asked about the next.
 */
export function adviseInterval(
  results: readonly AsFoundError[],
  trend: { readonly forecast: DriftForecast; readonly latestOn: PlantDay; readonly horizon: PlantDay },
  options: IntervalOptions,
): IntervalAdvice {
  const latest = results.at(-1);
  const foundOutside = latest !== undefined && Math.abs(latest.errorPercent) > latest.limitPercent;
  const byDrift = foundOutside ? null : adviseByDrift(trend.forecast, trend.latestOn, trend.horizon, options);
  return byDrift ?? adviseByStaircase(results, options);
}
