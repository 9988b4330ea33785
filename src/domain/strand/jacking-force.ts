// The force one jack pulls: a fraction of the breaking load for each strand it pulls together.
// Its ceiling is in stress-ceiling.ts; corrections such as live-end seating are in force-correction.ts.

import { type ForceUnit, force } from '../units/force.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { figuresOf, type StrandColumn, type StrandRow } from './strand-row.ts';

/** Answers a part of a load of one strand, in kip or kN by the column, times the strands pulled together. */
export function partOfLoad(
  load: Quantity<ForceUnit>,
  column: StrandColumn,
  { fraction, strands }: { readonly fraction: number; readonly strands: number },
): Quantity<ForceUnit> {
  const value = fraction * load.value * strands;
  if (column === 'si') return { value: convert(force, { value, unit: load.unit }, 'kN'), unit: 'kN' };
  // Through newtons a thousand pounds would be a kip only to the last digit but one.
  if (load.unit === 'lbf') return { value: value / 1000, unit: 'kip' };
  return { value: convert(force, { value, unit: load.unit }, 'kip'), unit: 'kip' };
}

/**
 * Answers the force to jack: fraction of the breaking load per strand, times the strands one jack pulls together.
 * Range: fraction above 0, at most 1; the stress ceiling is judged by the look-up. 0.75 of 0.6 in 270 is 43.95 kip.
 * Source: ASTM A416 breaking loads; the fraction is the drawing's.
 */
export function jackingForce(
  strand: StrandRow,
  column: StrandColumn,
  options: { readonly fraction: number; readonly strands: number },
): Quantity<ForceUnit> {
  return partOfLoad(figuresOf(strand, column).breakingLoad, column, options);
}
