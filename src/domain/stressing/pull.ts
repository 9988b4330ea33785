// One pull of a strand, or of the strands one jack pulls together: what was read, and what it was found to be.
// The judging is in judge-pull.ts.

import type { ElongationWindow } from '../rules/elongation-window.ts';
import type { StretchedStrand } from '../strand/elongation.ts';
import type { ForceUnit } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import type { DisagreementReason } from './disagreement-reason.ts';

/** A pull as it was read and entered. */
export interface PullEntry {
  /** The strands of the pattern pulled together. */
  readonly positions: readonly string[];
  readonly preloadReading: Quantity<PressureUnit>;
  readonly finalReading: Quantity<PressureUnit>;
  /** Travel measured from the mark set at the preload. */
  readonly elongation: Quantity<LengthUnit>;
  /** Behind the final reading, by look-up. */
  readonly gaugeForce: Quantity<ForceUnit>;
  readonly reason?: DisagreementReason | undefined;
  readonly note?: string | undefined;
  /** Number of the pull of the same strands that this one repeats. */
  readonly repullOf?: number | undefined;
}

/** What every pull of a bed is judged by. */
export interface PullBasis {
  readonly strand: StretchedStrand;
  /** Of the jack, with the corrections applied. */
  readonly theoreticalForce: Quantity<ForceUnit>;
  readonly preload: Quantity<ForceUnit>;
  /** What of a measured travel is not the stretch of the strand. */
  readonly allowance: Quantity<LengthUnit>;
  readonly window: ElongationWindow;
}

export type PullOutcome = 'within' | 'out-of-window';

export interface Pull extends PullEntry {
  /** In the order of the record, from 1. */
  readonly number: number;
  readonly elongationForce: Quantity<ForceUnit>;
  /** Gauge force minus elongation force, in % of the theoretical force. */
  readonly agreementPercent: number;
  readonly outcome: PullOutcome;
}
