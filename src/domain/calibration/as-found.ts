// How a pair was found before anything was adjusted: the curve in use until then, held against the load cell.
// Levels are made by levels.ts, their error judged by judge-accuracy.ts; what a bad result puts in doubt is in doubt.ts.

import { withinRange } from '../regression/within-range.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import { force } from '../units/force.ts';
import { pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { Verdict } from './acceptance-result.ts';
import type { Curve } from './curve.ts';
import { judgeAccuracy } from './judge-accuracy.ts';
import { type CalibrationLevel, calibrationLevels, type LevelOptions } from './levels.ts';
import { fittedPoints, type RunSheet, type RunSheetPoint } from './run-sheet.ts';

export interface AsFoundResult {
  /** As the accuracy rule judges a calibration; `not-judged` where no level lies on the curve. */
  readonly verdict: Verdict;
  /** The error of the level judged worst exceeds the limit, surely or by less than its uncertainty; or none could be judged. */
  readonly isOutside: boolean;
  /** The level with the largest error, in the curve's units; null where none could be judged. */
  readonly worst: {
    readonly errorPercent: number;
    readonly expandedUncertaintyPercent: number;
    readonly reading: number;
    readonly force: number;
  } | null;
  readonly limitPercent: number;
  /** Rising points that lie off the curve's range, so that nothing is said about them. */
  readonly pointsOffCurve: number;
  /** One sentence. */
  readonly message: string;
}

/**
 * Answers how far a pair was off as it was found: at each level the error q = (Fi - F)/F of the force Fi which the curve in
 * use until then gives at the readings, against the force F on the load cell; positive where the curve promised more than
 * there was. Judged by the profile's `accuracyPercent` with its guard band, as a calibration is.
 * `sheet` in its own units, converted to those of the curve. Range: rising points on the curve; others are counted, never
 * extrapolated to.
 * Source: error as in ISO 7500-1:2018 6.5 (formula from memory); as found, as left: ISO/IEC 17025:2017 7.8.4.1 d, results
 * before and after any adjustment (from memory).
 */
export function judgeAsFound(
  before: Curve,
  sheet: RunSheet,
  rules: RuleProfile,
  options: LevelOptions = {},
): AsFoundResult {
  const converted = inUnitsOf(before, sheet);
  const set = before.response === 'reading' ? 'force' : 'reading';
  const isOnCurve = (point: RunSheetPoint) => liesOn(before, point);
  const onCurve: RunSheet = {
    ...converted,
    cycles: converted.cycles.map((cycle) => ({ ...cycle, points: cycle.points.filter(isOnCurve) })),
  };
  const rising = fittedPoints(converted, set);
  const pointsOffCurve = rising.filter((point) => !isOnCurve(point)).length;
  const levels = fittedPoints(onCurve, set).length === 0 ? [] : calibrationLevels(onCurve, before, options);
  const { verdict } = judgeAccuracy(levels, rules, () => '');
  const worst = levels.reduce<CalibrationLevel | null>(
    (most, next) =>
      most === null || Math.abs(next.accuracyErrorPercent) > Math.abs(most.accuracyErrorPercent) ? next : most,
    null,
  );
  const limitPercent = rules.accuracyPercent.value;
  // Where every point lies off the curve nobody knows how far the pair was off, which is no better.
  const isOutside = worst === null ? pointsOffCurve > 0 : Math.abs(worst.accuracyErrorPercent) > limitPercent;
  return {
    verdict,
    isOutside,
    worst:
      worst === null
        ? null
        : {
            errorPercent: worst.accuracyErrorPercent,
            expandedUncertaintyPercent: worst.errorUncertaintyPercent,
            reading: worst.reading,
            force: worst.force,
          },
    limitPercent,
    pointsOffCurve,
    message:
      worst === null
        ? 'No rising point lies on the curve in use before, so how far it was off is not known.'
        : write(worst, before, limitPercent),
  };
}

function inUnitsOf({ units }: Curve, sheet: RunSheet): RunSheet {
  const point = ({ direction, ...values }: RunSheetPoint): RunSheetPoint => ({
    direction,
    force: convert(force, { value: values.force, unit: sheet.units.force }, units.force),
    reading: convert(pressure, { value: values.reading, unit: sheet.units.reading }, units.reading),
  });
  return {
    ...sheet,
    units,
    cycles: sheet.cycles.map((cycle) => ({ ...cycle, points: cycle.points.map(point) })),
  };
}

/** Points at no force stay, since they show the zero. */
function liesOn({ readingRange }: Curve, point: RunSheetPoint): boolean {
  return point.force === 0 || withinRange(point.reading, readingRange) !== null;
}

function write(worst: CalibrationLevel, { units }: Curve, limit: number): string {
  const error = Number(Math.abs(worst.accuracyErrorPercent).toPrecision(3));
  const than = worst.accuracyErrorPercent > 0 ? 'more' : 'less';
  const at = writeQuantity({ value: Number(worst.reading.toPrecision(4)), unit: units.reading });
  const side = Math.abs(worst.accuracyErrorPercent) > limit ? 'outside' : 'within';
  const uncertainty = Number(worst.errorUncertaintyPercent.toPrecision(2));
  return `As found, the curve in use gave ${error} % ${than} force than the load cell at ${at} (U ${uncertainty} %), ${side} the limit of ${limit} %.`;
}
