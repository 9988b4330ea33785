// What a person probably meant to write where a point does not fit: the same digits in another order or another unit.
// Which points do not fit is in suspect-points.ts.

import type { PolynomialFit } from '../regression/fit-polynomial.ts';
import { predict } from '../regression/predict.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import type { Curve } from './curve.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import { asXy, fittingDeviation } from './suspect-points.ts';

export type LikelySlip =
  | { readonly kind: 'digits-transposed'; readonly field: SetQuantity; readonly fits: number }
  /** `fits` is the value in the sheet's unit if what was typed was meant in `unit`. */
  | {
      readonly kind: 'unit-slip';
      readonly field: SetQuantity;
      readonly fits: number;
      readonly unit: ForceUnit | PressureUnit;
    };

/** A value in another unit lies this near, as a part, when the unit is what went wrong. House rule: nearer than any two factors. */
const nearUnit = 0.02;

/** Factors nearer to 1 than this are never called a unit slip: kgf/cm2 for bar, a long ton for a metric one. House rule. */
const leastFactor = 1.7;

/**
 * Answers the slip that explains a point best, given the curve through the others; null where none does.
 * Two adjacent digits swapped, in either quantity, count when the point then lies within 2 s of the curve; a unit when it
 * then lies within 2 % of it. Swapped digits come first, being the nearer of the two demands.
 * Source: house rules of the design, "Calculations" 7.
 */
export function likelySlip(
  point: PlacedPoint,
  clean: PolynomialFit,
  set: SetQuantity,
  units: Curve['units'],
): LikelySlip | null {
  const missBy = (field: SetQuantity, value: number): number => {
    const { x, y } = asXy({ ...point, [field]: value }, set);
    const inside = x >= clean.xRange.low && x <= clean.xRange.high;
    return inside ? Math.abs(y - predict(clean, x)) / fittingDeviation(clean, x) : Number.POSITIVE_INFINITY;
  };
  const relativeMiss = (field: SetQuantity, value: number): number => {
    const { x, y } = asXy({ ...point, [field]: value }, set);
    const inside = x >= clean.xRange.low * (1 - nearUnit) && x <= clean.xRange.high * (1 + nearUnit);
    return inside ? Math.abs(y / predict(clean, x) - 1) : Number.POSITIVE_INFINITY;
  };
  const fields = ['reading', 'force'] as const;
  const swapped = fields.flatMap((field) =>
    swappedDigits(point[field]).map((fits) => ({
      kind: 'digits-transposed' as const,
      field,
      fits,
      miss: missBy(field, fits),
    })),
  );
  const transposed = smallestMiss(swapped, 1);
  if (transposed !== null) return { kind: transposed.kind, field: transposed.field, fits: transposed.fits };
  const inUnits = fields.flatMap((field) =>
    inOtherUnits(field, point[field], units).map(({ fits, unit }) => ({
      field,
      fits,
      unit,
      miss: relativeMiss(field, fits),
    })),
  );
  const unitSlip = smallestMiss(inUnits, nearUnit);
  if (unitSlip === null) return null;
  return { kind: 'unit-slip', field: unitSlip.field, fits: unitSlip.fits, unit: unitSlip.unit };
}

/** Every value that arises from swapping two adjacent, different digits of a number as it is written. */
export function swappedDigits(value: number): readonly number[] {
  const text = String(value);
  if (!/^[\d.]+$/.test(text)) return [];
  const places = [...text].flatMap((character, index) => (character === '.' ? [] : [index]));
  const found = new Set<number>();
  for (const [order, left] of places.entries()) {
    const right = places[order + 1];
    if (right === undefined || text[left] === text[right]) continue;
    const characters = [...text];
    [characters[left], characters[right]] = [characters[right] ?? '', characters[left] ?? ''];
    found.add(Number(characters.join('')));
  }
  return [...found];
}

function inOtherUnits(
  field: SetQuantity,
  value: number,
  units: Curve['units'],
): readonly { readonly fits: number; readonly unit: ForceUnit | PressureUnit }[] {
  const converted =
    field === 'force'
      ? unitsOf(force.factors).map((unit) => ({ fits: convert(force, { value, unit }, units.force), unit }))
      : unitsOf(pressure.factors).map((unit) => ({ fits: convert(pressure, { value, unit }, units.reading), unit }));
  return converted.filter(({ fits }) => fits > leastFactor * value || fits < value / leastFactor);
}

function unitsOf<U extends string>(factors: Readonly<Record<U, number>>): readonly U[] {
  return Object.keys(factors) as U[];
}

function smallestMiss<T extends { readonly miss: number }>(candidates: readonly T[], most: number): T | null {
  const best = candidates.reduce<T | null>(
    (least, next) => (least === null || next.miss < least.miss ? next : least),
    null,
  );
  return best !== null && best.miss <= most ? best : null;
}
