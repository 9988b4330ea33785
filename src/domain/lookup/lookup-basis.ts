// What a look-up rests on and what it is asked.

import type { AcceptanceResult } from '../calibration/acceptance-result.ts';
import type { WorkingCurve } from '../calibration/curve.ts';
import type { Certificate, Gauge, Jack } from '../equipment/equipment.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import type { StrandRow } from '../strand/strand-row.ts';
import type { ForceUnit } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import type { StandingJudgement } from './standing.ts';
import type { Warning } from './warning.ts';

/** What a look-up shows and counts of the certificate of the load cell. */
export type CertificateBehind = Pick<
  Certificate,
  'number' | 'laboratory' | 'expandedUncertaintyPercent' | 'coverageFactor'
>;

/** What a look-up rests on. A bare sheet has a curve and no jack, gauge, standing or certificate. */
export interface LookupBasis {
  readonly curve: WorkingCurve | null;
  readonly jack: Jack | null;
  readonly gauge: Gauge | null;
  readonly certificate: CertificateBehind | null;
  readonly budget: BudgetBasis;
  readonly standing: StandingJudgement | null;
  readonly parted: boolean;
  readonly onHold: boolean;
  readonly acceptance: readonly AcceptanceResult[];
  /** Warnings that hold besides those found here: of a look-up as of another day. */
  readonly besides: readonly Warning[];
  /** The smallest step that can be set. */
  readonly step: Quantity<PressureUnit>;
  readonly rules: RuleProfile;
  /** Strands that may be named beside those of the standards. */
  readonly ownStrands: readonly StrandRow[];
}

/** What the uncertainty rests on besides curve, gauge and certificate; null where it is not known or does not count. */
export interface BudgetBasis {
  /** The smallest step the load cell's indicator shows. */
  readonly cellResolution: Quantity<ForceUnit> | null;
  /** Largest difference between falling and rising series of the calibration, where readings are used falling. */
  readonly reversibilityPercent: number | null;
  /** Largest change of force from the calibration before to this one. */
  readonly driftPercent: number | null;
  /** The temperature at calibration. */
  readonly calibratedAtCelsius: number | null;
}

export interface LookupOptions {
  /** The named person who lets a withheld number be shown. */
  readonly released: { readonly name: string } | null;
  /** The temperature at work, where it is to count in the uncertainty. */
  readonly temperatureCelsius?: number | undefined;
}

export interface LookupTarget {
  readonly force: Quantity<ForceUnit>;
  /** The stress ceiling of the strand, where a strand was named. */
  readonly ceiling: Quantity<ForceUnit> | null;
  /** The preload force asked for; null takes the fraction of the rule profile. */
  readonly preload: Quantity<ForceUnit> | null;
}
