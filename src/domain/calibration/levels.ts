// The levels of a calibration: the averages of the cycles, the errors and the class as for a testing machine, the load
// efficiency. Zero checks are in zero-checks.ts, the limits the levels are judged against in acceptance.ts.

import type { Certificate, LoadCell } from '../equipment/equipment.ts';
import { predict, slopeAt } from '../regression/predict.ts';
import { type AreaUnit, area } from '../units/area.ts';
import { force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { type Curve, forceBehindReading, forcePerReading } from './curve.ts';
import { judgeMachineClass, type MachineClassJudgement } from './machine-class.ts';
import {
  fittedPoints,
  type PlacedPoint,
  placedPoints,
  type RunSheet,
  type RunSheetPoint,
  type SetQuantity,
} from './run-sheet.ts';
import { type BudgetOptions, type UncertaintyBudget, uncertaintyAt } from './uncertainty-budget.ts';
import { zeroChecks, zeroErrorPercent } from './zero-checks.ts';

/** What one cycle gave at a level: the mean of its rising points there, in the sheet's units; cycles counted from zero. */
export interface LevelOfCycle {
  readonly cycle: number;
  readonly force: number;
  readonly reading: number;
}

export interface CalibrationLevel {
  /** The nominal value of the quantity that was set, in the sheet's unit. */
  readonly set: number;
  /** Means over the rising points of the level, in the sheet's units. */
  readonly force: number;
  readonly reading: number;
  /** The curve's value of the observed quantity at `set`, in the sheet's unit. */
  readonly fitted: number;
  /** Rising points at the level. */
  readonly count: number;
  readonly cycles: readonly LevelOfCycle[];
  readonly accuracyErrorPercent: number;
  /** Null where the level was met only once. */
  readonly repeatabilityPercent: number | null;
  /** Null where there is no falling point at the level. */
  readonly reversibilityPercent: number | null;
  /** Relative resolution: the smallest step of the gauge as force, in % of the level; null where the step is not known. */
  readonly resolutionPercent: number | null;
  /** Null where the nominal area is not known or the reading is zero. */
  readonly loadEfficiency: number | null;
  readonly machineClass: MachineClassJudgement;
  /** Expanded uncertainty of the accuracy error, in % of force: of the mean of the level's points, by its own budget. */
  readonly errorUncertaintyPercent: number;
  /** The coverage factor of that uncertainty. */
  readonly errorCoverageFactor: number;
  /** Where that uncertainty comes from; absolute, in the unit of force. */
  readonly errorBudget: UncertaintyBudget;
  /** How well the force is known when the gauge is set once to this level, on the calibration day. */
  readonly budget: UncertaintyBudget;
}

export interface LevelOptions {
  /** Nominal effective area of the jack's piston. */
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
  /** The smallest step of the gauge that can be read, full width. */
  readonly resolution?: Quantity<PressureUnit> | undefined;
  /** Of the load cell, valid on the calibration day; null where there was none. */
  readonly certificate?: Certificate | null | undefined;
  readonly cell?: LoadCell | undefined;
  /** Readings are also worked to on falling pressure, so that a level's reversibility belongs to its uncertainty. */
  readonly fallingUse?: boolean | undefined;
}

/** Settings closer than this, as a part of the lowest of them, are one level. House rule: a level is met again to about 1 %. */
const sameLevel = 0.01;

/**
 * Where every cycle has the same number of rising points, those that come at the same place are one level while they lie
 * within this part of their mean: a force set by hand on a pump is met again to about 3 % either way. House rule.
 */
const sameLevelByPlace = 0.07;

/**
 * Answers how the pair did at each level, ascending.
 * With Fi = force the curve gives at a reading, F = force on the cell, e = (Fi - F) / mean F in %:
 * accuracy error q = mean e; repeatability b = largest e - smallest e; reversibility v = mean e falling - mean e rising.
 * At a constant true force these are q = (Fi_mean - F)/F, b = (Fi_max - Fi_min)/F, v = (Fi' - Fi)/F; at a constant
 * reading q = (Fi - F_mean)/F_mean, b = (F_max - F_min)/F_mean, v = (F - F')/F.
 * Resolution a = step of the gauge x dF/dp at the mean reading / mean F. Load efficiency = mean force / (mean reading x
 * nominal area). The class is judged with the zero error f0 of the whole sheet.
 * Range: rising points above zero force. Levels are the points at the same place of each cycle, within 7 % of each other,
 * else those within 1 %; a falling point counts at the level it lies within 1 % of, or within its own settings.
 * Source: ISO 7500-1:2018 6.5 (formulas from memory), with the curve in place of the machine's indication; load
 * efficiency after JJG 621 (second-hand).
 */
export function calibrationLevels(
  sheet: RunSheet,
  curve: Curve,
  options: LevelOptions = {},
): readonly CalibrationLevel[] {
  const set: SetQuantity = curve.response === 'reading' ? 'force' : 'reading';
  const rising = [...fittedPoints(sheet, set)].sort((a, b) => a[set] - b[set]);
  const falling = placedPoints(sheet).filter((point) => point.direction === 'down' && point.force > 0);
  const zeroPercent = zeroErrorPercent(zeroChecks(sheet, curve));
  const groups = groupsByPlace(rising, set) ?? groupsByNearness(rising, set);
  return groups.map((group) => levelOf(group, falling, curve, set, { ...options, zeroPercent }));
}

/** Points of the same place among the rising points of their cycle; null where those do not make levels of their own. */
function groupsByPlace(rising: readonly PlacedPoint[], set: SetQuantity): readonly PlacedPoint[][] | null {
  const cycles = [...new Set(rising.map(({ cycle }) => cycle))].map((cycle) =>
    rising.filter((point) => point.cycle === cycle),
  );
  const [first = []] = cycles;
  if (cycles.some((points) => points.length !== first.length)) return null;
  const groups = first.map((_, place) => cycles.flatMap((points) => points[place] ?? []));
  const ends = groups.map((group) => {
    const settings = group.map((point) => point[set]);
    return { low: Math.min(...settings), high: Math.max(...settings), middle: mean(settings) };
  });
  const apart = ends.every(
    ({ low, high, middle }, place) =>
      high - low <= sameLevelByPlace * middle && low > (ends[place - 1]?.high ?? 0) * (1 + sameLevel),
  );
  return apart ? groups : null;
}

/** Points whose settings lie within 1 % of the lowest of them. `rising` ascending. */
function groupsByNearness(rising: readonly PlacedPoint[], set: SetQuantity): readonly PlacedPoint[][] {
  const groups: PlacedPoint[][] = [];
  for (const point of rising) {
    const group = groups.at(-1);
    const lowest = group?.[0]?.[set];
    if (group !== undefined && lowest !== undefined && point[set] <= lowest * (1 + sameLevel)) group.push(point);
    else groups.push([point]);
  }
  return groups;
}

function levelOf(
  rising: readonly PlacedPoint[],
  falling: readonly PlacedPoint[],
  curve: Curve,
  set: SetQuantity,
  options: LevelOptions & { readonly zeroPercent: number | null },
): CalibrationLevel {
  const { pistonArea, resolution, zeroPercent } = options;
  const settings = rising.map((point) => point[set]);
  const nominal = settings.every((value) => value === settings[0]) ? (settings[0] ?? 0) : mean(settings);
  const [lowest, highest] = settings.length > 1 ? [Math.min(...settings), Math.max(...settings)] : [nominal, nominal];
  const forceMean = mean(rising.map((point) => point.force));
  const readingMean = mean(rising.map((point) => point.reading));
  const errorPercent = (point: RunSheetPoint): number => (100 * (curveForce(curve, point) - point.force)) / forceMean;
  const errors = rising.map(errorPercent);
  const fallingErrors = falling
    .filter((point) => point[set] >= lowest - sameLevel * nominal && point[set] <= highest + sameLevel * nominal)
    .map(errorPercent);
  const accuracyErrorPercent = mean(errors);
  const resolutionPercent =
    resolution === undefined ? null : (100 * stepAsForce(curve, readingMean, resolution)) / forceMean;
  const repeatabilityPercent = rising.length < 2 ? null : Math.max(...errors) - Math.min(...errors);
  const reversibilityPercent = fallingErrors.length === 0 ? null : mean(fallingErrors) - accuracyErrorPercent;
  const ofError = budgetOfLevel(curve, readingMean, options, { of: { meanOf: rising.length } });
  const worked = options.fallingUse === true ? (reversibilityPercent ?? undefined) : undefined;
  return {
    set: nominal,
    force: forceMean,
    reading: readingMean,
    fitted: predict(curve.fit, nominal),
    count: rising.length,
    cycles: cyclesOf(rising),
    accuracyErrorPercent,
    repeatabilityPercent,
    reversibilityPercent,
    resolutionPercent,
    loadEfficiency: pistonArea === undefined ? null : loadEfficiency(forceMean, readingMean, curve.units, pistonArea),
    machineClass: judgeMachineClass({
      accuracy: accuracyErrorPercent,
      repeatability: repeatabilityPercent,
      reversibility: reversibilityPercent,
      zero: zeroPercent,
      resolution: resolutionPercent,
    }),
    errorUncertaintyPercent: (100 * ofError.expanded) / forceMean,
    errorCoverageFactor: ofError.k,
    errorBudget: ofError,
    budget: budgetOfLevel(curve, readingMean, options, { of: 'one-setting', reversibilityPercent: worked }),
  };
}

/** The budget at the level's mean reading, or at the end of the curve it scatters beyond. */
function budgetOfLevel(
  curve: Curve,
  reading: number,
  { certificate, cell, resolution }: LevelOptions,
  of: Pick<BudgetOptions, 'of' | 'reversibilityPercent'>,
): UncertaintyBudget {
  const budget = uncertaintyAt(curve, nearestOnCurve(curve, reading), {
    ...of,
    certificate: certificate ?? undefined,
    cellResolution: cell?.resolution,
    resolution,
  });
  if (!budget.ok) throw new RangeError(`No budget at ${reading}: ${budget.problem.message}`);
  return budget.value;
}

/** The step of the gauge carried to force by dF/dp at the level. */
function stepAsForce(curve: Curve, reading: number, step: Quantity<PressureUnit>): number {
  const slope = forcePerReading(curve, nearestOnCurve(curve, reading));
  if (!slope.ok) throw new RangeError(`No slope at ${reading}: ${slope.problem.message}`);
  return convert(pressure, step, curve.units.reading) * slope.value;
}

function nearestOnCurve({ readingRange }: Curve, reading: number): number {
  return Math.min(readingRange.high, Math.max(readingRange.low, reading));
}

function cyclesOf(rising: readonly PlacedPoint[]): readonly LevelOfCycle[] {
  const numbers = [...new Set(rising.map(({ cycle }) => cycle))].sort((a, b) => a - b);
  return numbers.map((cycle) => {
    const own = rising.filter((point) => point.cycle === cycle);
    return {
      cycle,
      force: mean(own.map(({ force: value }) => value)),
      reading: mean(own.map(({ reading }) => reading)),
    };
  });
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
