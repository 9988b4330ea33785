// How well the force of the gauge and the force behind the elongation agree.

import { type Outcome, succeed } from '../problem.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { checkFigures } from './check-figures.ts';

/**
 * Answers gauge force minus elongation force, in % of the theoretical force; above zero the gauge shows more.
 * Range: theoretical force above zero, the others zero or more. Problem: `number-out-of-range`.
 * Source: ACI 318 26.10.2 compares the two (from memory); the base of the percentage is the theoretical force, house rule.
 */
export function forceAgreement(forces: {
  readonly gauge: Quantity<ForceUnit>;
  readonly elongation: Quantity<ForceUnit>;
  readonly theoretical: Quantity<ForceUnit>;
}): Outcome<number> {
  const checked = checkFigures([
    ['gaugeForce', forces.gauge, 'zero-or-more'],
    ['elongationForce', forces.elongation, 'zero-or-more'],
    ['theoreticalForce', forces.theoretical, 'above-zero'],
  ]);
  if (!checked.ok) return checked;
  const difference = convert(force, forces.gauge, 'N') - convert(force, forces.elongation, 'N');
  return succeed((100 * difference) / convert(force, forces.theoretical, 'N'));
}
