// What a look-up rests on and what it is asked.

import type { AcceptanceResult } from '../calibration/acceptance.ts';
import type { Curve } from '../calibration/curve.ts';
import type { Certificate, Gauge, Jack } from '../equipment/equipment.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import type { ForceUnit } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import type { StandingJudgement } from './standing.ts';
import type { Warning } from './warning.ts';

/** What a look-up rests on. A bare sheet has a curve and no jack, gauge, standing or certificate. */
export interface LookupBasis {
  readonly curve: Curve | null;
  readonly jack: Jack | null;
  readonly gauge: Gauge | null;
  readonly certificate: Certificate | null;
  readonly standing: StandingJudgement | null;
  readonly parted: boolean;
  readonly onHold: boolean;
  readonly acceptance: readonly AcceptanceResult[];
  /** Warnings that hold besides those found here: of a look-up as of another day. */
  readonly besides: readonly Warning[];
  /** The smallest step that can be set. */
  readonly step: Quantity<PressureUnit>;
  readonly rules: RuleProfile;
}

export interface LookupTarget {
  readonly force: Quantity<ForceUnit>;
  /** The stress ceiling of the strand, where a strand was named. */
  readonly ceiling: Quantity<ForceUnit> | null;
  /** The preload force asked for; null takes the fraction of the rule profile. */
  readonly preload: Quantity<ForceUnit> | null;
}
