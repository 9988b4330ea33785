// The force one jack pulls: a fraction of the breaking load for each strand it pulls together, and the stress ceiling.
// Corrections such as live-end seating are not here; elongation is not here.

import type { RuleProfile } from '../rules/rule-profile.ts';
import type { ForceUnit } from '../units/force.ts';
import type { Quantity } from '../units/quantity.ts';
import type { StrandRow } from './strand-table.ts';

/** Which column of the standard to take; they are not conversions of each other. */
export type StrandColumn = 'in-pound' | 'si';

/** The column that goes with a unit: in-pound for lbf, kip and the tons of 2000 and 2240 lb, SI for all others. */
export function columnFor(unit: ForceUnit): StrandColumn {
  return unit === 'lbf' || unit === 'kip' || unit === 'short-tonf' || unit === 'long-tonf' ? 'in-pound' : 'si';
}

/** Answers a fraction of the breaking load, in kip or kN by the column, times the strands pulled together. */
function fractionOfBreaking(
  strand: StrandRow,
  column: StrandColumn,
  fraction: number,
  strands: number,
): Quantity<ForceUnit> {
  return column === 'in-pound'
    ? { value: (fraction * strand.breakingLbf * strands) / 1000, unit: 'kip' }
    : { value: fraction * strand.breakingKn * strands, unit: 'kN' };
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
  return fractionOfBreaking(strand, column, options.fraction, options.strands);
}

/**
 * Answers the largest force at the jack for this strand: the lesser of the profile's fractions of breaking and of
 * yield load. 0.80 of 1/2 in 270 is 33.04 kip. Source: the rule profile's limits `ceilingOfBreaking`, `ceilingOfYield`.
 */
export function stressCeiling(
  strand: StrandRow,
  column: StrandColumn,
  options: { readonly strands: number; readonly rules: RuleProfile },
): Quantity<ForceUnit> {
  const fraction = Math.min(
    options.rules.ceilingOfBreaking.value,
    options.rules.ceilingOfYield.value * strand.yieldOfBreaking,
  );
  return fractionOfBreaking(strand, column, fraction, options.strands);
}
