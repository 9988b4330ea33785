// How far the jack travels from the preload mark: the stretch of the strand and what gives way besides.
// The stretch itself is in elongation.ts.

import { type Outcome, succeed } from '../problem.ts';
import { type AreaUnit, area } from '../units/area.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type LengthUnit, length } from '../units/length.ts';
import { type ModulusUnit, modulus } from '../units/modulus.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { checkFigures } from './check-figures.ts';
import type { Worked, WorkedStep } from './worked-step.ts';

/** A self-stressing form, which the strands shorten as they are pulled. */
export interface StressedForm {
  /** Of all strands anchored on it. */
  readonly totalForce: Quantity<ForceUnit>;
  readonly length: Quantity<LengthUnit>;
  readonly area: Quantity<AreaUnit>;
  readonly modulus: Quantity<ModulusUnit>;
}

/** What gives way between the preload mark and the final force. What is left out is nothing. */
export interface TravelAllowances {
  readonly deadEndSeating?: Quantity<LengthUnit> | undefined;
  readonly splices?: { readonly count: number; readonly seating: Quantity<LengthUnit> } | undefined;
  readonly abutmentMovement?: Quantity<LengthUnit> | undefined;
  readonly form?: StressedForm | undefined;
}

/**
 * Answers how much a self-stressing form shortens. dL_form = P_total L_form / (A_form E_form).
 * Range: figures above zero. Problem: `number-out-of-range`. Source: Hooke's law.
 */
export function formShortening(form: StressedForm, unit: LengthUnit): Outcome<Worked<LengthUnit>> {
  const checked = checkFigures([
    ['form.totalForce', form.totalForce, 'above-zero'],
    ['form.length', form.length, 'above-zero'],
    ['form.area', form.area, 'above-zero'],
    ['form.modulus', form.modulus, 'above-zero'],
  ]);
  if (!checked.ok) return checked;
  const stiffness = convert(area, form.area, 'mm2') * convert(modulus, form.modulus, 'MPa');
  const shortening = (convert(force, form.totalForce, 'N') * convert(length, form.length, 'mm')) / stiffness;
  const value = { value: convert(length, { value: shortening, unit: 'mm' }, unit), unit };
  return succeed({
    value,
    step: {
      code: 'form-shortening',
      formula: 'dL_form = P_total L_form / (A_form E_form)',
      numbers: [
        { symbol: 'P_total', quantity: form.totalForce },
        { symbol: 'L_form', quantity: form.length },
        { symbol: 'A_form', quantity: form.area },
        { symbol: 'E_form', quantity: form.modulus },
      ],
      result: { symbol: 'dL_form', quantity: value },
    },
  });
}

interface Travelled {
  readonly value: Quantity<LengthUnit>;
  /** What is not the stretch of the strand: what a measured travel is to be reduced by. */
  readonly allowance: Quantity<LengthUnit>;
  readonly steps: readonly WorkedStep[];
}

/**
 * Answers the travel of the jack, in the unit of the elongation: dL + dead-end seating + splices + abutment + form.
 * Range: each of zero or more, splices a whole number. Problem: `number-out-of-range`.
 * Source: common practice, no source; each part is counted once, since the preload mark lies before all of them.
 */
export function jackTravel(elongation: Quantity<LengthUnit>, allowances: TravelAllowances): Outcome<Travelled> {
  const { unit } = elongation;
  const { deadEndSeating, splices, abutmentMovement, form } = allowances;
  const checked = checkFigures([
    ['elongation', elongation, 'zero-or-more'],
    ['deadEndSeating', deadEndSeating ?? 0, 'zero-or-more'],
    ['splices.count', splices?.count ?? 1, 'count'],
    ['splices.seating', splices?.seating ?? 0, 'zero-or-more'],
    ['abutmentMovement', abutmentMovement ?? 0, 'zero-or-more'],
  ]);
  if (!checked.ok) return checked;
  const steps: WorkedStep[] = [];
  const parts: { readonly symbol: string; readonly quantity: Quantity<LengthUnit> }[] = [];
  if (deadEndSeating !== undefined) parts.push({ symbol: 's_dead', quantity: deadEndSeating });
  if (splices !== undefined) {
    const { value, step } = spliceSeating(splices);
    steps.push(step);
    parts.push({ symbol: 's_splices', quantity: value });
  }
  if (abutmentMovement !== undefined) parts.push({ symbol: 's_abutment', quantity: abutmentMovement });
  if (form !== undefined) {
    const shortened = formShortening(form, unit);
    if (!shortened.ok) return shortened;
    steps.push(shortened.value.step);
    parts.push({ symbol: 'dL_form', quantity: shortened.value.value });
  }
  const allowance = { value: parts.reduce((sum, part) => sum + convert(length, part.quantity, unit), 0), unit };
  const value = { value: elongation.value + allowance.value, unit };
  steps.push({
    code: 'jack-travel',
    formula: `travel = ${['dL', ...parts.map(({ symbol }) => symbol)].join(' + ')}`,
    numbers: [{ symbol: 'dL', quantity: elongation }, ...parts],
    result: { symbol: 'travel', quantity: value },
  });
  return succeed({ value, allowance, steps });
}

function spliceSeating({ count, seating }: NonNullable<TravelAllowances['splices']>): Worked<LengthUnit> {
  const value = { value: count * seating.value, unit: seating.unit };
  return {
    value,
    step: {
      code: 'splice-seating',
      formula: 's_splices = m s_splice',
      numbers: [
        { symbol: 'm', quantity: { value: count, unit: '' } },
        { symbol: 's_splice', quantity: seating },
      ],
      result: { symbol: 's_splices', quantity: value },
    },
  };
}
