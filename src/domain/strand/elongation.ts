// How far strand stretches between two forces, and the force behind a measured stretch.
// What the jack travels besides is in jack-travel.ts.

import { type Outcome, succeed } from '../problem.ts';
import { type AreaUnit, area } from '../units/area.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type LengthUnit, length } from '../units/length.ts';
import { type ModulusUnit, modulus } from '../units/modulus.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { checkFigures } from './check-figures.ts';
import type { StepNumber, Worked } from './worked-step.ts';

/** The strand that is stretched: all strands one jack pulls together, chuck to chuck. */
export interface StretchedStrand {
  readonly strands: number;
  /** Chuck to chuck. */
  readonly length: Quantity<LengthUnit>;
  /** Of one strand, from the mill certificate of its reel or the table. */
  readonly area: Quantity<AreaUnit>;
  readonly modulus: Quantity<ModulusUnit>;
}

/** Answers the force that stretches it by one millimetre, n A E / L in N/mm. */
function newtonsPerMillimetre(strand: StretchedStrand): number {
  const stiffness = strand.strands * convert(area, strand.area, 'mm2') * convert(modulus, strand.modulus, 'MPa');
  return stiffness / convert(length, strand.length, 'mm');
}

/** The names and bounds of its figures, for `checkFigures`. */
export const figuresOfStretched = (strand: StretchedStrand) =>
  [
    ['strands', strand.strands, 'count'],
    ['length', strand.length, 'above-zero'],
    ['area', strand.area, 'above-zero'],
    ['modulus', strand.modulus, 'above-zero'],
  ] as const;

/** Its figures under the symbols of the formulas. */
export const numbersOfStretched = (strand: StretchedStrand): readonly StepNumber[] => [
  { symbol: 'L', quantity: strand.length },
  { symbol: 'n', quantity: { value: strand.strands, unit: '' } },
  { symbol: 'A', quantity: strand.area },
  { symbol: 'E', quantity: strand.modulus },
];

/**
 * Answers how far the strand stretches from the mark set at the preload to the final force.
 * dL = (P - P0) L / (n A E): P the force of the jack, P0 its preload, n strands of area A and modulus E, L chuck to chuck.
 * Range: figures above zero, the preload from zero to the final force. Problem: `number-out-of-range`.
 * Source: Hooke's law. Example: 2042.4 kN on 15 strands of 98.71 mm2, 198.8 kN/mm2, 619 mm long: 4.29 mm (a published stressing sheet).
 */
export function theoreticalElongation(
  strand: StretchedStrand,
  pulled: { readonly force: Quantity<ForceUnit>; readonly preload: Quantity<ForceUnit> },
  unit: LengthUnit,
): Outcome<Worked<LengthUnit>> {
  const checked = checkFigures([
    ...figuresOfStretched(strand),
    ['preload', pulled.preload, 'zero-or-more'],
    ['force', pulled.force, 'above-zero'],
  ]);
  if (!checked.ok) return checked;
  const added = convert(force, pulled.force, 'N') - convert(force, pulled.preload, 'N');
  const isBelow = checkFigures([['force above the preload', { value: added, unit: 'N' }, 'zero-or-more']]);
  if (!isBelow.ok) return isBelow;
  const stretch = { value: added / newtonsPerMillimetre(strand), unit: 'mm' } as const;
  const value = { value: convert(length, stretch, unit), unit };
  return succeed({
    value,
    step: {
      code: 'elongation',
      formula: 'dL = (P - P0) L / (n A E)',
      numbers: [
        { symbol: 'P', quantity: pulled.force },
        { symbol: 'P0', quantity: pulled.preload },
        ...numbersOfStretched(strand),
      ],
      result: { symbol: 'dL', quantity: value },
    },
  });
}

/**
 * Answers the force that stretches the strand by a length, with no preload: the overpull for a seating, and the force a
 * measured elongation adds to the preload. dP = dL n A E / L, in the unit asked for.
 */
export function forceOfStretch(strand: StretchedStrand, stretch: Quantity<LengthUnit>, unit: ForceUnit): number {
  const newtons = convert(length, stretch, 'mm') * newtonsPerMillimetre(strand);
  return convert(force, { value: newtons, unit: 'N' }, unit);
}

/**
 * Answers the force behind a measured elongation, in the unit of the preload.
 * P = P0 + dL n A E / L; dL from the mark set at the preload P0, without what the jack travelled besides.
 * Range: figures above zero; preload and elongation of zero or more. Problem: `number-out-of-range`.
 * Source: Hooke's law, the inverse of `theoreticalElongation`.
 */
export function forceBehindElongation(
  strand: StretchedStrand,
  { elongation, preload }: { readonly elongation: Quantity<LengthUnit>; readonly preload: Quantity<ForceUnit> },
): Outcome<Quantity<ForceUnit>> {
  const checked = checkFigures([
    ...figuresOfStretched(strand),
    ['preload', preload, 'zero-or-more'],
    ['elongation', elongation, 'zero-or-more'],
  ]);
  if (!checked.ok) return checked;
  return succeed({ value: preload.value + forceOfStretch(strand, elongation, preload.unit), unit: preload.unit });
}
