// What a look-up of one pair is computed from on any day: on the server, and on a device without network.
// What a device takes along of a plant is in contract/plant-snapshot.ts; how old that may be in snapshot-age.ts.

import type { AcceptanceResult } from '../calibration/acceptance-result.ts';
import type { WorkingCurve } from '../calibration/curve.ts';
import type { DoubtCause } from '../calibration/doubt.ts';
import type { PlantDay } from '../dates/plant-day.ts';
import type { Gauge, Jack } from '../equipment/equipment.ts';
import { type ActingEvent, actingEvents, type EventOfPair } from '../equipment/event-effect.ts';
import type { Pair } from '../equipment/pair.ts';
import { readableStep } from '../equipment/readable-step.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import type { StrandRow } from '../strand/strand-row.ts';
import { warningsOfFirstUse } from './first-use.ts';
import type { BudgetBasis, CertificateBehind, LookupBasis } from './lookup-basis.ts';
import { judgeStanding, type StandingJudgement } from './standing.ts';
import { type Warning, type WarningCode, warn } from './warning.ts';

/** What the standing of a pair is judged from, whatever the day. */
export interface PairFacts {
  readonly pair: Pair;
  readonly hold: { readonly reason: string } | null;
  /** What happened to it and quality has not settled. */
  readonly events: readonly EventOfPair[];
  readonly inForce: CalibrationInForce | null;
}

/** The calibration a pair is worked by. */
export interface CalibrationInForce {
  readonly number: string;
  /** The entry that approved it. */
  readonly approvedIn: number;
  readonly calibratedOn: PlantDay;
  readonly loadCell: string;
  /** Signed largest change of force against the calibration before, in %; null where there is none to compare. */
  readonly changePercent: number | null;
  /** What the charts of its beds signal, and on how many of the two; null where none does. */
  readonly beds: { readonly charts: number; readonly because: string } | null;
  /** What the latest interim check found, where it lies outside its interval; null where it does not. */
  readonly checkOutside: string | null;
  /** Why the curve is another than the approved one; null where it is that one. */
  readonly notAsApproved: string | null;
  /** Parts and certificate that were corrected after it was approved, each in a sentence. */
  readonly correctedParts: readonly string[];
  /** What puts it in doubt and nobody cleared. */
  readonly doubts: readonly { readonly cause: DoubtCause; readonly because: string }[];
}

/** The same with all that a reading is computed from. */
export interface PairSnapshot extends PairFacts {
  readonly jack: Jack;
  readonly gauge: Gauge;
  /** Of the calibration in force; null where there is none. */
  readonly worksBy: CurveInForce | null;
}

export interface CurveInForce {
  readonly curve: WorkingCurve;
  readonly certificate: CertificateBehind | null;
  readonly budget: BudgetBasis;
  readonly acceptance: readonly AcceptanceResult[];
  /** The day the calibration was first used; null where none is recorded. */
  readonly firstUseOn: PlantDay | null;
}

/** What holds for every pair of a plant. */
export interface PlantGround {
  readonly rules: RuleProfile;
  /** The day of the newest entry of the ledger; null while there is none. */
  readonly newestOn: PlantDay | null;
  /** Rows beside those of the standards: sizes of the plant's own, reels. */
  readonly ownStrands: readonly StrandRow[];
}

/** From which day a look-up is asked, and what that adds where it is of another one. */
export interface AskedFrom {
  readonly today: PlantDay;
  readonly ofAnotherDay: readonly Warning[];
}

/** A basis of a pair, which has a standing. */
export interface PairBasis extends LookupBasis {
  readonly standing: StandingJudgement;
}

/**
 * Answers what look-ups of a pair rest on at a day. The facts are those known on `on` or before it; from then to the next
 * entry of the ledger they hold for every later day, with the due day, the standing, events and first use judged by the day.
 * Source: design of the program, "Calculations" 11.
 */
export function basisOn(
  snapshot: PairSnapshot,
  { rules, newestOn, ownStrands }: PlantGround,
  on: PlantDay,
  { today, ofAnotherDay }: AskedFrom = { today: on, ofAnotherDay: [] },
): PairBasis {
  const { pair, inForce, worksBy } = snapshot;
  const firstUse =
    inForce === null || worksBy === null
      ? []
      : warningsOfFirstUse(
          { calibratedOn: inForce.calibratedOn, firstUseOn: worksBy.firstUseOn ?? undefined },
          on,
          rules,
        );
  return {
    curve: worksBy?.curve ?? null,
    jack: snapshot.jack,
    gauge: snapshot.gauge,
    certificate: worksBy?.certificate ?? null,
    budget: worksBy?.budget ?? nothingKnown,
    standing: standingOn(snapshot, on, rules),
    parted: isPartedOn(pair, on),
    onHold: snapshot.hold !== null,
    acceptance: worksBy?.acceptance ?? [],
    besides: [
      ...warningsOfClock(newestOn, today),
      ...warningsAgainst(snapshot, on),
      ...warningsOfBeds(snapshot, rules),
      ...ofAnotherDay,
      ...firstUse,
    ],
    step: readableStep(snapshot.gauge),
    rules,
    ownStrands,
  };
}

/** Answers how a pair stands on a day. */
export function standingOn(facts: PairFacts, on: PlantDay, rules: RuleProfile): StandingJudgement {
  const speaking = warningsAgainst(facts, on);
  return judgeStanding(
    {
      pair: facts.pair,
      hold: facts.hold,
      calibratedOn: facts.inForce?.calibratedOn ?? null,
      changePercent: facts.inForce?.changePercent ?? null,
      inUseBecause: driftInUse(facts.inForce, rules),
      voidBecause: speaking.find(({ weight }) => weight === 'refuse')?.message ?? null,
      doubts: speaking.filter(({ weight }) => weight === 'stop').map(({ message }) => message),
    },
    on,
    rules,
  );
}

/** How many of the two charts must signal where the rules, set before there were any, do not say. House rule: both. */
const chartsToSignal = 2;

/** Whether enough charts of the beds signal for the pair to count as drifting. */
function bedsDrift(inForce: PairFacts['inForce'], rules: RuleProfile): boolean {
  return (inForce?.beds?.charts ?? 0) >= (rules.chartsToSignal?.value ?? chartsToSignal);
}

/** Answers whether jack and gauge were parted on a day or before it. */
export function isPartedOn({ parted }: Pair, on: PlantDay): boolean {
  return parted !== undefined && parted.on <= on;
}

const nothingKnown: BudgetBasis = {
  cellResolution: null,
  reversibilityPercent: null,
  driftPercent: null,
  calibratedAtCelsius: null,
};

/** What speaks against a pair beside its dates: a curve other than the approved one, events, doubts nobody cleared. */
function warningsAgainst({ inForce, events }: PairFacts, on: PlantDay): readonly Warning[] {
  if (inForce === null) return [];
  const { notAsApproved, correctedParts, doubts } = inForce;
  return [
    ...(notAsApproved === null ? [] : [warn('curve-not-as-approved', notAsApproved)]),
    ...actingEvents(events, inForce, on).map(({ effect, because }) => warn(codeOfEffect[effect], because)),
    ...doubts.map(({ cause, because }) =>
      warn(cause === 'pair-as-found' ? 'curve-in-doubt' : 'reference-in-doubt', because),
    ),
    ...correctedParts.map((message) => warn('part-corrected', message)),
  ];
}

/** What speaks for drift while the pair is in use: a check outside, or as many charts of the beds as the rules ask. */
function driftInUse(inForce: PairFacts['inForce'], rules: RuleProfile): string | null {
  if (inForce === null) return null;
  return inForce.checkOutside ?? (bedsDrift(inForce, rules) ? (inForce.beds?.because ?? null) : null);
}

/** One chart alone is a caution by name; it is no drift before the rules say so. */
function warningsOfBeds({ inForce }: PairFacts, rules: RuleProfile): readonly Warning[] {
  const beds = inForce?.beds ?? null;
  return beds === null || bedsDrift(inForce, rules) ? [] : [warn('beds-signal', beds.because)];
}

const codeOfEffect = {
  void: 'void-by-event',
  stop: 'event-not-settled',
  caution: 'event-reported',
} as const satisfies Readonly<Record<ActingEvent['effect'], WarningCode>>;

/** A clock set back would make an expired calibration valid again, and a superseded one the newest. */
function warningsOfClock(newestOn: PlantDay | null, today: PlantDay): readonly Warning[] {
  if (newestOn === null || newestOn <= today) return [];
  const message = `By the clock of this machine today is ${today}, but the ledger has an entry of ${newestOn}; set the clock right (where it is right: jackledger set-clock-right).`;
  return [warn('clock-behind-ledger', message)];
}
