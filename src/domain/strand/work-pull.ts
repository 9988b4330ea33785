// A pull worked out from the drawing to the travel of the jack, as ordered steps that a page or paper prints.
// The formulas are in the files it calls.

import { type Outcome, succeed } from '../problem.ts';
import type { ForceUnit } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import type { Quantity } from '../units/quantity.ts';
import { type StretchedStrand, theoreticalElongation } from './elongation.ts';
import { jackTravel, type TravelAllowances } from './jack-travel.ts';
import { type ForceRequest, type PlannedForce, planForce } from './plan-force.ts';
import type { WorkedStep } from './worked-step.ts';

export interface PullRequest {
  readonly force: ForceRequest;
  readonly preload: Quantity<ForceUnit>;
  readonly stretched: Omit<StretchedStrand, 'strands'>;
  readonly allowances: TravelAllowances;
  readonly elongationUnit: LengthUnit;
}

export interface WorkedPull {
  readonly planned: PlannedForce;
  readonly elongation: Quantity<LengthUnit>;
  readonly travel: Quantity<LengthUnit>;
  /** What a measured travel is to be reduced by before it is compared with the elongation. */
  readonly allowance: Quantity<LengthUnit>;
  readonly steps: readonly WorkedStep[];
}

/** Answers force, elongation and travel of a pull, each step in order. Problems: those of the parts. */
export function workPull({ force, preload, stretched, allowances, elongationUnit }: PullRequest): Outcome<WorkedPull> {
  const planned = planForce(force);
  if (!planned.ok) return planned;
  const strand = { ...stretched, strands: force.strands };
  const elongation = theoreticalElongation(strand, { force: planned.value.force, preload }, elongationUnit);
  if (!elongation.ok) return elongation;
  const travel = jackTravel(elongation.value.value, allowances);
  if (!travel.ok) return travel;
  return succeed({
    planned: planned.value,
    elongation: elongation.value.value,
    travel: travel.value.value,
    allowance: travel.value.allowance,
    steps: [...planned.value.steps, elongation.value.step, ...travel.value.steps],
  });
}
