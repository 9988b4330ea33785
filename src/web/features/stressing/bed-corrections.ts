// The corrections an engineer decided on for a bed, from the texts of the form: what is added to the force of the jack, and what of
// a measured travel is no stretch of the strand. None is a default.

import { fail, type Outcome, succeed } from '../../../domain/problem.ts';
import type { StretchedStrand } from '../../../domain/strand/elongation.ts';
import {
  type ForceCorrection,
  seatingOverpull,
  temperatureCorrection,
} from '../../../domain/strand/force-correction.ts';
import { strandExpansions } from '../../../domain/strand/strand-expansion.ts';
import type { RecordedCorrection, TravelCorrectionKind } from '../../../domain/stressing/recorded-correction.ts';
import type { ForceUnit } from '../../../domain/units/force.ts';
import type { LengthUnit } from '../../../domain/units/length.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import type { Quantity } from '../../../domain/units/quantity.ts';
import type { BedSetup, SetupField } from './bed-draft.ts';

export interface BedCorrections {
  /** Each with its formula. */
  readonly ofForce: readonly ForceCorrection[];
  /** As they go into the record. */
  readonly recorded: readonly RecordedCorrection[];
}

const travelFields = {
  'dead-end-seating': 'deadEndSeating',
  'splice-seating': 'spliceSeating',
  'abutment-movement': 'abutmentMovement',
  'form-shortening': 'formShortening',
} as const satisfies Readonly<Record<TravelCorrectionKind, SetupField>>;
const travelKinds = Object.keys(travelFields) as readonly TravelCorrectionKind[];

export const correctionFields: readonly SetupField[] = [
  'liveEndSeating',
  'colder',
  ...travelKinds.map((kind) => travelFields[kind]),
];

/** Answers the corrections. Problems: those of numbers and formulas, `field-missing` for the engineer or the coefficient; `where` names the field. */
export function bedCorrections(setup: BedSetup, stretched: StretchedStrand): Outcome<BedCorrections> {
  const given = correctionFields.filter((field) => setup[field].trim() !== '');
  const engineer = setup.engineer.trim();
  if (given.length > 0 && engineer === '') {
    return fail('field-missing', 'A correction is an engineer’s decision; it needs the name.', {
      where: 'engineer',
      needed: 'the name of the engineer',
      given: 'nothing',
    });
  }
  const ofForce: ForceCorrection[] = [];
  for (const read of [overpull(setup, stretched), warming(setup, stretched)]) {
    if (!read.ok) return read;
    if (read.value !== null) ofForce.push(read.value);
  }
  const decided = { engineer, decision: 'applied' } as const;
  const recorded: RecordedCorrection[] = ofForce.map(({ kind, value }) => ({ kind, effect: value, ...decided }));
  for (const kind of travelKinds) {
    const effect = lengthOf(setup, travelFields[kind]);
    if (!effect.ok) return effect;
    if (effect.value !== null && effect.value.value > 0) recorded.push({ kind, effect: effect.value, ...decided });
  }
  return succeed({ ofForce, recorded });
}

function overpull(setup: BedSetup, stretched: StretchedStrand): Outcome<ForceCorrection | null> {
  const seating = lengthOf(setup, 'liveEndSeating');
  if (!seating.ok || seating.value === null || seating.value.value === 0) return seating.ok ? succeed(null) : seating;
  return seatingOverpull(stretched, seating.value, forceUnitOf(setup));
}

function warming(setup: BedSetup, stretched: StretchedStrand): Outcome<ForceCorrection | null> {
  const typed = setup.colder.trim();
  if (typed === '') return succeed(null);
  const degrees = parseNumber(typed);
  if (!degrees.ok) return { ok: false, problem: { ...degrees.problem, where: 'colder' } };
  const expansion = strandExpansions[Number(setup.expansion)];
  if (setup.expansion === '' || expansion === undefined) {
    return fail('field-missing', 'The coefficient of expansion is the engineer’s to name.', {
      where: 'expansion',
      needed: 'a coefficient of the list',
      given: 'nothing',
    });
  }
  const unit = setup.forceUnit === 'kip' ? 'F' : 'C';
  const difference = { value: degrees.value, unit } as const;
  return temperatureCorrection(stretched, { coefficient: expansion.coefficient, difference }, forceUnitOf(setup));
}

function lengthOf(setup: BedSetup, field: SetupField): Outcome<Quantity<LengthUnit> | null> {
  const typed = setup[field].trim();
  if (typed === '') return succeed(null);
  const read = parseNumber(typed);
  if (!read.ok) return { ok: false, problem: { ...read.problem, where: field } };
  if (read.value >= 0) return succeed({ value: read.value, unit: setup.elongationUnit });
  return fail('number-out-of-range', `A length of ${typed} cannot be.`, {
    where: field,
    needed: 'zero or more',
    given: typed,
  });
}

const forceUnitOf = ({ forceUnit }: BedSetup): ForceUnit => forceUnit;
