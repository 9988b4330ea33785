// The levels of a calibration: accuracy error, repeatability and reversibility as for a testing machine, load efficiency.
// The limits they are judged against are in acceptance.ts.

import { predict, slopeAt } from '../regression/predict.ts';
import { type AreaUnit, area } from '../units/area.ts';
import { force } from '../units/force.ts';
import { pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { type Curve, forceBehindReading } from './curve.ts';
import { fittedPoints, placedPoints, type RunSheet, type RunSheetPoint, type SetQuantity } from './run-sheet.ts';

export interface CalibrationLevel {
  /** The nominal value of the quantity that was set, in the sheet's unit. */
  readonly set: number;
  /** Means over the rising points of the level, in the sheet's units. */
  readonly force: number;
  readonly reading: number;
  /** Rising points at the level. */
  readonly count: number;
  readonly accuracyErrorPercent: number;
  /** Null where the level was met only once. */
  readonly repeatabilityPercent: number | null;
  /** Null where there is no falling point at the level. */
  readonly reversibilityPercent: number | null;
  /** Null where the nominal area is not known or the reading is zero. */
  readonly loadEfficiency: number | null;
}

export interface LevelOptions {
  /** Nominal effective area of the jack's piston. */
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
}

/** Settings closer than this, as a part of the lowest of them, are one level. House rule: a level is met again to about 1 %. */
const sameLevel = 0.01;

/**
 * Answers how the pair did at each level, ascending.
 * With Fi = force the curve gives at a reading, F = force on the cell, e = (Fi - F) / mean F in %:
 * accuracy error q = mean e; repeatability b = largest e - smallest e; reversibility v = mean e falling - mean e rising.
 * At a constant true force these are q = (Fi_mean - F)/F, b = (Fi_max - Fi_min)/F, v = (Fi' - Fi)/F; at a constant
 * reading q = (Fi - F_mean)/F_mean, b = (F_max - F_min)/F_mean, v = (F - F')/F.
 * Load efficiency = mean force / (mean reading x nominal area).
 * Range: rising points above zero force; a falling point counts at the level it lies within 1 % of.
 * Source: ISO 7500-1:2018 6.5 (formulas from memory), with the curve in place of the machine's indication; load
 * efficiency after JJG 621 (second-hand).
 */
export function calibrationLevels(
  sheet: RunSheet,
  curve: Curve,
  options: LevelOptions = {},
): readonly CalibrationLevel[] {
  const set: SetQuantity = curve.response === 'reading' ? 'force' : 'reading';
  const rising = [...fittedPoints(sheet)].sort((a, b) => a[set] - b[set]);
  const falling = placedPoints(sheet).filter((point) => point.direction === 'down' && point.force > 0);
  const groups: RunSheetPoint[][] = [];
  for (const point of rising) {
    const group = groups.at(-1);
    const lowest = group?.[0]?.[set];
    if (group !== undefined && lowest !== undefined && point[set] <= lowest * (1 + sameLevel)) group.push(point);
    else groups.push([point]);
  }
  return groups.map((group) => levelOf(group, falling, curve, set, options));
}

function levelOf(
  rising: readonly RunSheetPoint[],
  falling: readonly RunSheetPoint[],
  curve: Curve,
  set: SetQuantity,
  { pistonArea }: LevelOptions,
): CalibrationLevel {
  const settings = rising.map((point) => point[set]);
  const nominal = settings.every((value) => value === settings[0]) ? (settings[0] ?? 0) : mean(settings);
  const forceMean = mean(rising.map((point) => point.force));
  const readingMean = mean(rising.map((point) => point.reading));
  const errorPercent = (point: RunSheetPoint): number => (100 * (curveForce(curve, point) - point.force)) / forceMean;
  const errors = rising.map(errorPercent);
  const fallingErrors = falling
    .filter((point) => Math.abs(point[set] - nominal) <= sameLevel * nominal)
    .map(errorPercent);
  const accuracyErrorPercent = mean(errors);
  return {
    set: nominal,
    force: forceMean,
    reading: readingMean,
    count: rising.length,
    accuracyErrorPercent,
    repeatabilityPercent: rising.length < 2 ? null : Math.max(...errors) - Math.min(...errors),
    reversibilityPercent: fallingErrors.length === 0 ? null : mean(fallingErrors) - accuracyErrorPercent,
    loadEfficiency: pistonArea === undefined ? null : loadEfficiency(forceMean, readingMean, curve.units, pistonArea),
  };
}

/**
 * Answers which part of pressure times area reaches the load cell. `forceValue` and `reading` in the given units; null
 * at a reading of zero. About 0.93 to 1.00 is expected: below it lies friction or a wrong area, above it nothing real.
 * Source: JJG 621 (second-hand) for the quantity.
 */
export function loadEfficiency(
  forceValue: number,
  reading: number,
  units: Curve['units'],
  pistonArea: Quantity<AreaUnit>,
): number | null {
  const newtons = convert(force, { value: forceValue, unit: units.force }, 'N');
  const megapascals = convert(pressure, { value: reading, unit: units.reading }, 'MPa');
  const pushed = megapascals * convert(area, pistonArea, 'mm2');
  return pushed > 0 ? newtons / pushed : null;
}

/**
 * The curve's force at a reading of the sheet itself. The scatter of the lowest and highest level puts some of its
 * readings just beyond the curve's ends; those are carried along the tangent at the end, for this error alone.
 */
function curveForce(curve: Curve, { reading }: RunSheetPoint): number {
  const inside = forceBehindReading(curve, reading);
  if (inside.ok) return inside.value;
  const end = reading < curve.readingRange.low ? 'low' : 'high';
  const beyond = reading - curve.readingRange[end];
  return curve.response === 'reading'
    ? curve.forceRange[end] + beyond / slopeAt(curve.fit, curve.forceRange[end])
    : predict(curve.fit, curve.readingRange[end]) + beyond * slopeAt(curve.fit, curve.readingRange[end]);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
