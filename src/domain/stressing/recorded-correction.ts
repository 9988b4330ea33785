// A correction an engineer was asked about for a bed: what it would do, who decided, and how. Its formula is in strand/.

import { fail, type Outcome, succeed } from '../problem.ts';
import { type ForceCorrectionKind, forceCorrectionKinds } from '../strand/force-correction.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type LengthUnit, length } from '../units/length.ts';
import { convert, type Quantity } from '../units/quantity.ts';

/** What a measured travel holds besides the stretch of the strand. */
export const travelCorrectionKinds = [
  'dead-end-seating',
  'splice-seating',
  'abutment-movement',
  'form-shortening',
] as const;
export type TravelCorrectionKind = (typeof travelCorrectionKinds)[number];

export const correctionKinds = [...forceCorrectionKinds, ...travelCorrectionKinds] as const;
export type CorrectionKind = (typeof correctionKinds)[number];

export const correctionDecisions = ['applied', 'not-applied'] as const;

interface Decided {
  /** Name of the engineer who decided. */
  readonly engineer: string;
  readonly decision: (typeof correctionDecisions)[number];
  readonly note?: string | undefined;
}

export interface RecordedForceCorrection extends Decided {
  readonly kind: ForceCorrectionKind;
  /** Added to the force of the jack. */
  readonly effect: Quantity<ForceUnit>;
}

export interface RecordedTravelCorrection extends Decided {
  readonly kind: TravelCorrectionKind;
  /** Part of the measured travel. */
  readonly effect: Quantity<LengthUnit>;
}

export type RecordedCorrection = RecordedForceCorrection | RecordedTravelCorrection;

const isOfForce = (correction: RecordedCorrection): correction is RecordedForceCorrection =>
  forceCorrectionKinds.some((kind) => kind === correction.kind);

/** Answers the corrections where each kind is decided once. Problem: `field-invalid`. */
export function checkCorrections(corrections: readonly RecordedCorrection[]): Outcome<readonly RecordedCorrection[]> {
  for (const [index, { kind }] of corrections.entries()) {
    if (corrections.findIndex((other) => other.kind === kind) === index) continue;
    return fail('field-invalid', `"${kind}" is decided twice.`, {
      where: `corrections[${index}].kind`,
      needed: 'each kind of correction once',
      given: kind,
    });
  }
  return succeed(corrections);
}

/** Answers the force of the jack with the corrections that were applied, in its own unit. */
export function correctedForce(
  uncorrected: Quantity<ForceUnit>,
  corrections: readonly RecordedCorrection[],
): Quantity<ForceUnit> {
  const { unit } = uncorrected;
  const applied = corrections.filter(isOfForce).filter(({ decision }) => decision === 'applied');
  return { value: applied.reduce((sum, { effect }) => sum + convert(force, effect, unit), uncorrected.value), unit };
}

/** Answers what of a measured travel is not the stretch of the strand, by the corrections that were applied. */
export function travelAllowance(corrections: readonly RecordedCorrection[], unit: LengthUnit): Quantity<LengthUnit> {
  const applied = corrections.flatMap((correction) =>
    isOfForce(correction) || correction.decision !== 'applied' ? [] : [correction],
  );
  return { value: applied.reduce((sum, { effect }) => sum + convert(length, effect, unit), 0), unit };
}
