// The record of stressing one bed: what it was pulled with, by what figures, and every pull with its findings.

import type { PlantDay } from '../dates/plant-day.ts';
import { type Outcome, succeed } from '../problem.ts';
import type { ElongationWindow } from '../rules/elongation-window.ts';
import { checkFigures } from '../strand/check-figures.ts';
import { theoreticalElongation } from '../strand/elongation.ts';
import type { Reel } from '../strand/reel.ts';
import type { AreaUnit } from '../units/area.ts';
import type { ForceUnit } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import type { ModulusUnit } from '../units/modulus.ts';
import type { Quantity } from '../units/quantity.ts';
import type { BedPattern } from './bed-pattern.ts';
import { judgePulls } from './judge-pull.ts';
import type { Pull, PullBasis, PullEntry } from './pull.ts';
import { checkCorrections, correctedForce, type RecordedCorrection, travelAllowance } from './recorded-correction.ts';

export interface BedFacts {
  readonly bed: string;
  readonly on: PlantDay;
  readonly pair: string;
  /** Number of the ledger entry that approved the calibration the readings are by. */
  readonly calibrationEntry: number;
  /** Designation of the strand. */
  readonly strand: string;
  /** Null where the figures are those of the table. */
  readonly reel: Reel | null;
  readonly area: Quantity<AreaUnit>;
  readonly modulus: Quantity<ModulusUnit>;
  /** Pulled together by the jack. */
  readonly strandsPulled: number;
  /** Chuck to chuck. */
  readonly length: Quantity<LengthUnit>;
  /** Of the jack, before corrections. */
  readonly force: Quantity<ForceUnit>;
  readonly preload: Quantity<ForceUnit>;
  readonly pattern: BedPattern;
  readonly corrections: readonly RecordedCorrection[];
  readonly window: ElongationWindow;
}

export interface StressingRecord extends BedFacts {
  /** Of the jack, with the corrections that were applied. */
  readonly theoreticalForce: Quantity<ForceUnit>;
  /** Between preload and that force, in the unit of the length. */
  readonly theoreticalElongation: Quantity<LengthUnit>;
  readonly pulls: readonly Pull[];
}

/** Answers what the pulls of a bed are judged by. */
export function pullBasisOf(facts: BedFacts): PullBasis {
  const { strandsPulled: strands, length, area, modulus, force, preload, corrections, window } = facts;
  return {
    strand: { strands, length, area, modulus },
    theoreticalForce: correctedForce(force, corrections),
    preload,
    allowance: travelAllowance(corrections, length.unit),
    window,
  };
}

/**
 * Answers the record of a bed from its facts and its pulls as entered. Problems: `number-out-of-range` where a figure cannot be
 * or the preload is not below the force; those of `checkCorrections` and `judgePulls`.
 */
export function recordStressing(facts: BedFacts, entries: readonly PullEntry[]): Outcome<StressingRecord> {
  const decided = checkCorrections(facts.corrections);
  if (!decided.ok) return decided;
  const basis = pullBasisOf(facts);
  const { theoreticalForce, preload, allowance, strand } = basis;
  const checked = checkFigures([['window', facts.window.percent, 'above-zero']]);
  if (!checked.ok) return checked;
  const elongation = theoreticalElongation(strand, { force: theoreticalForce, preload }, allowance.unit);
  if (!elongation.ok) return elongation;
  const pulls = judgePulls(facts.pattern, entries, basis);
  if (!pulls.ok) return pulls;
  return succeed({ ...facts, theoreticalForce, theoreticalElongation: elongation.value.value, pulls: pulls.value });
}
