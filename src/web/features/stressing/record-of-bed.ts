// From a bed as it was typed to its record: the body that is sent, and the pulls with their findings for the page.

import type { StressingBody } from '../../../contract/stressing.ts';
import { type Outcome, succeed } from '../../../domain/problem.ts';
import { type DisagreementReason, disagreementReasonCodes } from '../../../domain/stressing/disagreement-reason.ts';
import { judgePulls } from '../../../domain/stressing/judge-pull.ts';
import type { Pull, PullEntry } from '../../../domain/stressing/pull.ts';
import { type ForceUnit, force } from '../../../domain/units/force.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import { parseUnit, type Quantity } from '../../../domain/units/quantity.ts';
import type { BedDraft, KeptPull } from './bed-draft.ts';
import { readingUnitOf } from './judge-open-pull.ts';
import type { BedPlan } from './plan-bed.ts';

const isReason = (text: string): text is DisagreementReason => disagreementReasonCodes.some((code) => code === text);

function entryOf(pull: KeptPull, plan: BedPlan): PullEntry {
  const unit = readingUnitOf(plan);
  const number = (typed: string): number => {
    const read = parseNumber(typed);
    // Nothing is kept that was not judged, and nothing is judged that is no number.
    if (!read.ok) throw new Error(`A pull that was kept holds "${typed}".`);
    return read.value;
  };
  const forceUnit = parseUnit(force, pull.gaugeForce.unit);
  if (!forceUnit.ok) throw new Error(`A pull that was kept has a force in "${pull.gaugeForce.unit}".`);
  const gaugeForce: Quantity<ForceUnit> = { value: pull.gaugeForce.value, unit: forceUnit.value };
  const note = pull.note.trim();
  return {
    positions: pull.positions,
    preloadReading: { value: number(pull.preload), unit },
    finalReading: { value: number(pull.final), unit },
    elongation: { value: number(pull.elongation), unit: plan.elongation.unit },
    gaugeForce,
    ...(isReason(pull.reason) ? { reason: pull.reason } : {}),
    ...(note === '' ? {} : { note }),
    ...(pull.repullOf === null ? {} : { repullOf: pull.repullOf }),
  };
}

/** Answers the pulls kept so far with their findings. Problems: those of the judging. */
export function pullsOfBed({ pulls }: BedDraft, plan: BedPlan): Outcome<readonly Pull[]> {
  if (pulls.length === 0) return succeed([]);
  return judgePulls(
    plan.pattern,
    pulls.map((pull) => entryOf(pull, plan)),
    plan.basis,
  );
}

/** Answers the body of the record. Numbers go as they were typed, with their units. */
export function bodyOfBed(draft: BedDraft, plan: BedPlan, begun: NonNullable<BedDraft['begun']>): StressingBody {
  const { reel, designation } = plan.strand;
  const write = ({ value, unit }: Quantity): { value: number; unit: string } => ({ value, unit });
  return {
    bed: plan.bed,
    on: begun.on,
    pair: plan.pair,
    method: plan.method,
    calibrationEntry: begun.calibrationEntry,
    strand: designation,
    ...(reel === null
      ? {}
      : {
          reel: {
            id: reel.id,
            ...(reel.heat === undefined ? {} : { heat: reel.heat }),
            area: write(reel.area),
            modulus: write(reel.modulus),
            breakingLoad: write(reel.breakingLoad),
            certificate: reel.certificate,
          },
        }),
    strandsPulled: plan.strandsPulled,
    length: write(plan.length),
    force: write(plan.force),
    preload: write(plan.basis.preload),
    pattern: { name: plan.pattern.name, positions: plan.pattern.positions.map((position) => ({ ...position })) },
    corrections: plan.corrections.map((correction) => ({ ...correction, effect: write(correction.effect) })),
    pulls: draft.pulls.map((pull) => {
      const { positions, preloadReading, finalReading, elongation, gaugeForce, ...rest } = entryOf(pull, plan);
      return {
        positions: [...positions],
        preloadReading: write(preloadReading),
        finalReading: write(finalReading),
        elongation: write(elongation),
        gaugeForce: write(gaugeForce),
        ...rest,
      };
    }),
  };
}
