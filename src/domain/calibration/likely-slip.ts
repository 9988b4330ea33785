// What a person probably meant to write where a point does not fit: other digits or another unit, the likeliest first.
// Which points do not fit is in suspect-points.ts and swapped-points.ts, the digits themselves in digit-slips.ts.

import type { PolynomialFit } from '../regression/fit-polynomial.ts';
import { predict } from '../regression/predict.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import type { Curve } from './curve.ts';
import {
  type DigitSlipKind,
  swappedDigits,
  withDroppedDigit,
  withMovedPoint,
  withoutDoubledDigit,
} from './digit-slips.ts';
import { asXy, deviationAt, isWithinReach } from './misfit.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import { isWrittenLike, nominalValues, type WrittenColumn, writtenColumn } from './written-column.ts';

export interface LikelySlip {
  readonly kind: DigitSlipKind | 'unit-slip';
  readonly field: SetQuantity;
  /** What was meant, in the sheet's unit. */
  readonly fits: number;
  /** The unit the typed value would fit in; of a unit slip alone. */
  readonly unit?: ForceUnit | PressureUnit;
  /** Other values of the same quantity that would fit nearly as well, the likelier first; two at most. */
  readonly alternatives: readonly number[];
}

/** What a slip is judged by: the points that fit, the curve through them, and how they are written. */
export interface SlipContext {
  readonly clean: PolynomialFit;
  readonly set: SetQuantity;
  readonly units: Curve['units'];
  readonly columns: Readonly<Record<SetQuantity, WrittenColumn>>;
  readonly nominalOf: (point: PlacedPoint) => number | null;
  readonly isInOrder: (point: PlacedPoint) => boolean;
  /** How many standard deviations from the curve what was meant may lie. */
  readonly largestMiss: number;
}

interface Candidate {
  readonly kind: LikelySlip['kind'];
  readonly field: SetQuantity;
  readonly fits: number;
  readonly unit?: ForceUnit | PressureUnit;
  /** How much likelier than an evenly chosen one the slip is, before the curve is asked. */
  readonly weight: number;
}

/** How often each kind of slip happens among all. House rule: our own guess; the curve nearly always decides. */
const shareOfKind: Readonly<Record<LikelySlip['kind'], number>> = {
  'digits-transposed': 0.4,
  'digit-dropped': 0.2,
  'digit-doubled': 0.1,
  'decimal-point': 0.1,
  'unit-slip': 0.2,
};

/** Share of what is meant that lies near enough to the curve to count, by Student's t of one observation. House rule. */
const nearShare = 0.995;

/** Another value is named beside the likeliest where it is at least this likely against it. House rule. */
const nearlyAsGood = 1 / 3;
const mostAlternatives = 2;

/** A value in another unit lies this near, as a part, when the unit is what went wrong. House rule: nearer than any two factors. */
const nearUnit = 0.02;
/** How many standard deviations that nearness is. House rule: a scale of another unit is read about that roughly. */
const nearUnitDeviations = 3;

/** Factors nearer to 1 than this are never called a unit slip: kgf/cm2 for bar, a long ton for a metric one. House rule. */
const leastFactor = 1.7;

/** Fewest other points whose common step says how a value is written. House rule: by chance six share twice the step once in 64 times. */
const fewestForStep = 6;

/** How much likelier a slip is where the typed value is no multiple of the step all others have. House rule. */
const unlikeOthers = 20;

/** How likely a slip is that leaves the series out of order, against one that does not. House rule. */
const outOfOrder = 0.001;

/** How likely the set quantity is wrong where it is what every cycle has there, or right where it is not. House rule. */
const againstNominal = 0.001;

/** Answers what slips of points outside `points` are judged by; `points` fit and `clean` is the curve through them. */
export function slipContext(
  points: readonly PlacedPoint[],
  { clean, set, units, all }: Pick<SlipContext, 'clean' | 'set' | 'units'> & { readonly all: readonly PlacedPoint[] },
): SlipContext {
  const columns = { force: writtenColumn(points, 'force'), reading: writtenColumn(points, 'reading') };
  const unknown = { force: { ...columns.force, step: 0 }, reading: { ...columns.reading, step: 0 } };
  return {
    clean,
    set,
    units,
    columns: points.length < fewestForStep ? unknown : columns,
    nominalOf: nominalValues(all, set),
    largestMiss: twoSidedStudentFactor(nearShare, clean.degreesOfFreedom),
    isInOrder: (point) =>
      points
        .filter((other) => other.cycle === point.cycle)
        .every((other) => {
          const sign = Math.sign(point.row - other.row) * (point.direction === 'up' ? 1 : -1);
          return sign * (point.force - other.force) >= 0 && sign * (point.reading - other.reading) >= 0;
        }),
  };
}

/**
 * Answers the slip that explains a point best, given the curve through the others; null where none does.
 * Tried in either quantity: two adjacent digits swapped, a digit doubled or dropped, the decimal point moved, another
 * unit. A slip counts where the point then lies where 99.5 % of observations do, in another unit within 2 %.
 * Of those that count the likeliest is taken: the density of Student's t at its distance, times how common such a slip
 * is among all that would have been possible, how well the value agrees with the step the others are written to, with
 * the order of its series, and with the nominal value the other cycles have in its row.
 * Source: house rules of the design, "Calculations" 7; Bayes' theorem for the comparison.
 */
export function likelySlip(point: PlacedPoint, context: SlipContext): LikelySlip | null {
  const judged = candidatesFor(point, context)
    .map((candidate) => ({ candidate, likelihood: likelihoodOf(point, candidate, context) }))
    .filter(({ likelihood }) => likelihood > 0)
    .sort((a, b) => b.likelihood - a.likelihood);
  const [best] = judged;
  if (best === undefined) return null;
  const { weight: _, ...slip } = best.candidate;
  const others = judged
    .filter(
      ({ candidate, likelihood }) => candidate.field === slip.field && likelihood >= nearlyAsGood * best.likelihood,
    )
    .map(({ candidate }) => candidate.fits);
  const alternatives = [...new Set(others)].filter((value) => value !== slip.fits).slice(0, mostAlternatives);
  return { ...slip, alternatives };
}

/**
 * Answers the unit in which every one of some points would fit the curve through the others within 2 %, and the quantity
 * it is of; null where there is none. Of several the first of the unit table.
 */
export function commonUnit(
  points: readonly PlacedPoint[],
  context: SlipContext,
): { readonly field: SetQuantity; readonly unit: ForceUnit | PressureUnit } | null {
  const fitting = points.map((point) =>
    (['reading', 'force'] as const)
      .flatMap((field) => unitCandidates(point, field, context.units))
      .filter((candidate) => counts(point, candidate, context)),
  );
  const shared = fitting[0]?.find(({ field, unit }) =>
    fitting.every((each) => each.some((other) => other.field === field && other.unit === unit)),
  );
  return shared?.unit === undefined ? null : { field: shared.field, unit: shared.unit };
}

/**
 * Answers how much likelier a point is as a slip of two swapped digits than as scatter, before anything is said of how
 * often such a slip happens: the mean over the possible swaps of the density of Student's t, over the density where the
 * point lies. Source: Bayes' theorem, the Bayes factor.
 */
export function evidenceOfSwap(point: PlacedPoint, context: SlipContext): number {
  const { clean, set } = context;
  const asTyped = densityAt(point, context, deviationAt(clean, asXy(point, set).x));
  return (
    candidatesFor(point, context)
      .filter(({ kind }) => kind === 'digits-transposed')
      .reduce((sum, each) => sum + likelihoodOf(point, each, context), 0) /
    (shareOfKind['digits-transposed'] * asTyped)
  );
}

function candidatesFor(point: PlacedPoint, context: SlipContext): readonly Candidate[] {
  return (['reading', 'force'] as const).flatMap((field) => [
    ...digitCandidates(point, field, context),
    ...unitCandidates(point, field, context.units),
  ]);
}

function digitCandidates(point: PlacedPoint, field: SetQuantity, { columns }: SlipContext): readonly Candidate[] {
  const typed = point[field];
  const column = columns[field];
  const decimals = Math.max(column.decimals, writtenColumn([point], field).decimals);
  const isUnlikeOthers = !isWrittenLike(typed, column);
  const ofKind = (kind: DigitSlipKind, values: readonly number[]): readonly Candidate[] =>
    values
      .filter((fits) => isWrittenLike(fits, column))
      .map((fits) => ({
        kind,
        field,
        fits,
        weight: (shareOfKind[kind] / values.length) * (isUnlikeOthers ? unlikeOthers : 1),
      }));
  return [
    ...ofKind('digits-transposed', swappedDigits(typed, decimals)),
    ...ofKind('digit-doubled', withoutDoubledDigit(typed, decimals)),
    ...ofKind('digit-dropped', withDroppedDigit(typed, decimals)),
    ...ofKind('decimal-point', withMovedPoint(typed, decimals)),
  ];
}

function unitCandidates(point: PlacedPoint, field: SetQuantity, units: Curve['units']): readonly Candidate[] {
  const value = point[field];
  const converted =
    field === 'force'
      ? unitsOf(force.factors).map((unit) => ({ fits: convert(force, { value, unit }, units.force), unit }))
      : unitsOf(pressure.factors).map((unit) => ({ fits: convert(pressure, { value, unit }, units.reading), unit }));
  const weight = shareOfKind['unit-slip'] / (converted.length - 1);
  return converted
    .filter(({ fits }) => fits > leastFactor * value || fits < value / leastFactor)
    .map(({ fits, unit }) => ({ kind: 'unit-slip', field, fits, unit, weight }));
}

/** How likely a candidate is, up to a factor all candidates of the point share; 0 where it does not count. */
function likelihoodOf(point: PlacedPoint, candidate: Candidate, context: SlipContext): number {
  const { clean, set, nominalOf, isInOrder } = context;
  if (!counts(point, candidate, context)) return 0;
  const meant = { ...point, [candidate.field]: candidate.fits };
  const deviation = deviationOf(candidate, asXy(meant, set).x, clean);
  const nominal = nominalOf(point);
  const isNominal = nominal === null || (candidate.field === set ? candidate.fits : point[set]) === nominal;
  return (
    candidate.weight *
    densityAt(meant, context, deviation) *
    (deviationAt(clean, asXy(meant, set).x) / deviation) *
    (isNominal ? 1 : againstNominal) *
    (isInOrder(meant) ? 1 : outOfOrder)
  );
}

/** Whether a point lies near enough to the curve with a candidate in place of what was typed. */
function counts(point: PlacedPoint, candidate: Candidate, { clean, set, largestMiss }: SlipContext): boolean {
  const { x, y } = asXy({ ...point, [candidate.field]: candidate.fits }, set);
  if (!isWithinReach(clean, x)) return false;
  const most = candidate.kind === 'unit-slip' ? nearUnitDeviations : largestMiss;
  return Math.abs(y - predict(clean, x)) <= most * deviationOf(candidate, x, clean);
}

/** A value read in another unit is as rough as the scale it was read on: its 2 % are 3 standard deviations. */
function deviationOf({ kind }: Candidate, x: number, clean: PolynomialFit): number {
  const own = deviationAt(clean, x);
  return kind === 'unit-slip' ? Math.max(own, (nearUnit / nearUnitDeviations) * Math.abs(predict(clean, x))) : own;
}

/** Density of Student's t at the point's distance from the curve, as a part of its largest value. */
function densityAt(point: PlacedPoint, { clean, set }: SlipContext, deviation: number): number {
  const { x, y } = asXy(point, set);
  const t = (y - predict(clean, x)) / deviation;
  const { degreesOfFreedom } = clean;
  return (1 + (t * t) / degreesOfFreedom) ** (-(degreesOfFreedom + 1) / 2);
}

function unitsOf<U extends string>(factors: Readonly<Record<U, number>>): readonly U[] {
  return Object.keys(factors) as U[];
}
