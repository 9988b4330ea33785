// A check between two calibrations: a few readings against a master gauge or a load cell, judged by the curve in use.
// How a pair was found before an adjustment, judged by the rules, is calibration/as-found.ts.

import { type Curve, forcePerReading } from '../calibration/curve.ts';
import { effectiveDegrees } from '../calibration/uncertainty-budget.ts';
import { fail, type Outcome, succeed } from '../problem.ts';
import { predict, standardErrorOfPrediction } from '../regression/predict.ts';
import { withinRange } from '../regression/within-range.ts';
import { twoSidedNormalFactor } from '../statistics/normal-quantile.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import { writeQuantity } from '../units/write-quantity.ts';

/** One reading of the gauge and the force there was, in the curve's units. */
export interface CheckReading {
  readonly force: number;
  readonly reading: number;
}

export interface CheckedLevel {
  /** Means over the readings of the level, in the curve's units. */
  readonly force: number;
  readonly reading: number;
  readonly count: number;
  /** In % of force; positive where the curve promises more force than there was. */
  readonly deviationPercent: number;
  /** Half the prediction interval, in % of force. */
  readonly limitPercent: number;
  readonly isOutside: boolean;
}

export type InterimCheck =
  | {
      readonly kind: 'judged';
      readonly levels: readonly CheckedLevel[];
      /** The level furthest out, as a part of its own limit. */
      readonly worst: CheckedLevel;
      readonly isOutside: boolean;
    }
  /** Neither the calibration nor the reference has a scatter, so that there is no interval to judge by. */
  | { readonly kind: 'no-scatter' };

/** In % of force; a scatter below it is rounding. House rule: some thousand units in the last place. */
const leastScatterPercent = 1e-10;

export interface InterimCheckOptions {
  /** Probability in (0, 1) that a check of a pair that did not change passes, all its levels together. */
  readonly level: number;
  /**
   * Standard uncertainty of what the check is held against, in % of force, as far as the calibration does not share it: 0
   * for the load cell of the calibration itself.
   */
  readonly referenceStandardUncertaintyPercent: number;
}

/**
 * Answers whether a check agrees with the curve in use. At each level the mean of m readings must lie in the prediction
 * interval of such a mean: |mean of (y - curve)| <= t sqrt(s^2 (1/m + h) + u^2).
 * y = the quantity observed in the calibration, s = residual standard deviation, h = leverage at the mean x, u = standard
 * uncertainty of the reference; t two-sided, at the effective degrees of freedom. With c levels each is judged at
 * 1 - (1 - `level`)/c, so that the whole check passes with probability `level` or more.
 * `levels` in the curve's units; the readings of one level are set alike, apart by no more than their scatter.
 * Range: at least one level with a reading, the set quantity within the calibrated range; `no-scatter` where s and u are 0.
 * Problems: `too-few-points`, `outside-calibrated-range`.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.2 for one observation (from memory), 1/m for 1 with the mean of m: N. R. Draper and
 * H. Smith, Applied Regression Analysis, 1.4 (from memory); Bonferroni's inequality for the levels; JCGM 100:2008 G.4.1.
 */
export function judgeInterimCheck(
  curve: Curve,
  levels: readonly (readonly CheckReading[])[],
  options: InterimCheckOptions,
): Outcome<InterimCheck> {
  const level = 1 - (1 - options.level) / levels.length;
  const checked: CheckedLevel[] = [];
  for (const readings of levels) {
    const judged = judgeLevel(curve, readings, { ...options, level });
    if (!judged.ok) return judged;
    checked.push(judged.value);
  }
  if (checked.some(({ limitPercent }) => limitPercent < leastScatterPercent)) return succeed({ kind: 'no-scatter' });
  const [first, ...rest] = checked;
  if (first === undefined) return fail('too-few-points', 'A check needs at least one reading.', { given: '0' });
  const partOfLimit = ({ deviationPercent, limitPercent }: CheckedLevel): number =>
    Math.abs(deviationPercent) / limitPercent;
  const worst = rest.reduce((most, next) => (partOfLimit(next) > partOfLimit(most) ? next : most), first);
  return succeed({ kind: 'judged', levels: checked, worst, isOutside: checked.some((each) => each.isOutside) });
}

function judgeLevel(
  curve: Curve,
  readings: readonly CheckReading[],
  { level, referenceStandardUncertaintyPercent }: InterimCheckOptions,
): Outcome<CheckedLevel> {
  const count = readings.length;
  if (count === 0) return fail('too-few-points', 'A level of a check needs at least one reading.', { given: '0' });
  const { fit, response, units } = curve;
  const set = response === 'reading' ? 'force' : 'reading';
  const outside = readings.find((reading) => withinRange(reading[set], fit.xRange) === null);
  if (outside !== undefined) {
    const unit = units[set];
    const given = writeQuantity({ value: outside[set], unit });
    return fail('outside-calibrated-range', `${given} lies outside the calibrated range and cannot be checked there.`, {
      needed: `${writeQuantity({ value: fit.xRange.low, unit })} to ${writeQuantity({ value: fit.xRange.high, unit })}`,
      given,
    });
  }
  const meanOf = (of: (reading: CheckReading) => number): number =>
    readings.reduce((sum, reading) => sum + of(reading), 0) / count;
  const x = meanOf((each) => each[set]);
  const deviation = meanOf((each) => each[response] - predict(fit, each[set]));
  const carried = percentPerResponse(curve, x);
  if (!carried.ok) return carried;
  const scatter = Math.abs(carried.value) * standardErrorOfPrediction(fit, x, { meanOf: count });
  const combined = Math.hypot(scatter, referenceStandardUncertaintyPercent);
  const degrees = effectiveDegrees(combined, [
    { standardUncertainty: scatter, degreesOfFreedom: fit.degreesOfFreedom },
    { standardUncertainty: referenceStandardUncertaintyPercent, degreesOfFreedom: null },
  ]);
  const factor =
    degrees === null ? twoSidedNormalFactor(level) : twoSidedStudentFactor(level, Math.max(1, Math.floor(degrees)));
  const [deviationPercent, limitPercent] = [carried.value * deviation, factor * combined];
  return succeed({
    force: meanOf((each) => each.force),
    reading: meanOf((each) => each.reading),
    count,
    deviationPercent,
    limitPercent,
    isOutside: Math.abs(deviationPercent) > limitPercent,
  });
}

/** What a deviation of the observed quantity from the curve is in % of force, with the sign of `deviationPercent`. */
function percentPerResponse(curve: Curve, x: number): Outcome<number> {
  if (curve.response === 'force') return succeed(-100 / predict(curve.fit, x));
  const slope = forcePerReading(curve, predict(curve.fit, x));
  return slope.ok ? succeed((100 * slope.value) / x) : slope;
}
