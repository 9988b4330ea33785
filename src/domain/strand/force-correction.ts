// What an engineer may add to the force of the jack: the overpull that seating takes back, and a difference of temperature.
// None is applied unless somebody decides it; the force they add up to is in plan-force.ts.

import { type Outcome, succeed } from '../problem.ts';
import { area } from '../units/area.ts';
import { type ExpansionUnit, expansion } from '../units/expansion.ts';
import { type ForceUnit, force } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import { modulus } from '../units/modulus.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { type TemperatureDifferenceUnit, temperatureDifference } from '../units/temperature-difference.ts';
import { checkFigures } from './check-figures.ts';
import { figuresOfStretched, forceOfStretch, numbersOfStretched, type StretchedStrand } from './elongation.ts';
import type { Worked } from './worked-step.ts';

export const forceCorrectionKinds = ['live-end-seating', 'temperature'] as const;
export type ForceCorrectionKind = (typeof forceCorrectionKinds)[number];

export interface ForceCorrection extends Worked<ForceUnit> {
  readonly kind: ForceCorrectionKind;
}

/**
 * Answers the overpull that makes up for the live end seating after release. P_over = s n A E / L: seating s, n strands of
 * area A and modulus E, L chuck to chuck. The overpull too stays under the stress ceiling.
 * Range: figures above zero, the seating zero or more. Problem: `number-out-of-range`.
 * Source: Hooke's law, as in `forceOfStretch`.
 */
export function seatingOverpull(
  strand: StretchedStrand,
  seating: Quantity<LengthUnit>,
  unit: ForceUnit,
): Outcome<ForceCorrection> {
  const checked = checkFigures([...figuresOfStretched(strand), ['seating', seating, 'zero-or-more']]);
  if (!checked.ok) return checked;
  const value = { value: forceOfStretch(strand, seating, unit), unit };
  return succeed({
    kind: 'live-end-seating',
    value,
    step: {
      code: 'live-end-seating',
      formula: 'P_over = s n A E / L',
      numbers: [{ symbol: 's', quantity: seating }, ...numbersOfStretched(strand)],
      result: { symbol: 'P_over', quantity: value },
    },
  });
}

/**
 * Answers what to add for strand that warms by dT once the concrete is around it; a fall in temperature takes away.
 * dP = n A E alpha dT, for the whole length between fixed chucks. alpha is the engineer's; some are offered in strand-expansion.ts.
 * Range: figures above zero, dT of either sign. Problem: `number-out-of-range`.
 * Source: strain alpha dT held back over a fixed length, with Hooke's law.
 */
export function temperatureCorrection(
  strand: Omit<StretchedStrand, 'length'>,
  warming: {
    readonly coefficient: Quantity<ExpansionUnit>;
    readonly difference: Quantity<TemperatureDifferenceUnit>;
  },
  unit: ForceUnit,
): Outcome<ForceCorrection> {
  const { coefficient, difference } = warming;
  const checked = checkFigures([
    ['strands', strand.strands, 'count'],
    ['area', strand.area, 'above-zero'],
    ['modulus', strand.modulus, 'above-zero'],
    ['coefficient', coefficient, 'above-zero'],
    ['difference', difference, 'any'],
  ]);
  if (!checked.ok) return checked;
  const strain = convert(expansion, coefficient, '1/C') * convert(temperatureDifference, difference, 'C');
  const stiffness = strand.strands * convert(area, strand.area, 'mm2') * convert(modulus, strand.modulus, 'MPa');
  const value = { value: convert(force, { value: stiffness * strain, unit: 'N' }, unit), unit };
  return succeed({
    kind: 'temperature',
    value,
    step: {
      code: 'temperature',
      formula: 'dP = n A E alpha dT',
      numbers: [
        { symbol: 'n', quantity: { value: strand.strands, unit: '' } },
        { symbol: 'A', quantity: strand.area },
        { symbol: 'E', quantity: strand.modulus },
        { symbol: 'alpha', quantity: coefficient },
        { symbol: 'dT', quantity: difference },
      ],
      result: { symbol: 'dP', quantity: value },
    },
  });
}
