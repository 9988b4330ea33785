// What the entries of a ledger add up to. It is computed by replay.ts and can be thrown away at any time.
// Standings and due dates are not in it: they depend on the day and are computed in domain/lookup/.

import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { Role } from '../domain/rules/role.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
}

/** One calibration: the run sheet, who entered it, and what was decided about it. */
export interface CalibrationRecord {
  readonly number: string;
  readonly pair: string;
  readonly calibratedOn: PlantDay;
  readonly loadCell: string;
  readonly sheet: RunSheet;
  readonly degree: 1 | 2 | 3 | 'auto';
  readonly degreeReason?: string;
  /** Hash of the run-recorded entry. */
  readonly runHash: string;
  readonly enteredBy: string;
  readonly enteredAt: string;
  readonly status: 'submitted' | 'approved' | 'rejected';
  readonly decidedBy?: string;
  readonly decidedAt?: string;
  readonly decisionNote?: string;
}

export interface Hold {
  readonly reason: string;
  readonly placedBy: string;
  readonly placedAt: string;
}

export interface PairRecord {
  readonly pair: Pair;
  /** Numbers of its calibrations in the order they were entered. */
  readonly calibrations: readonly string[];
  readonly hold: Hold | null;
}

export interface RulesSetting {
  readonly seq: number;
  readonly at: string;
  readonly by: string;
  readonly reason: string;
}

export interface PlantState {
  readonly head: { readonly seq: number; readonly hash: string };
  /** The instant of the newest entry; null while there is none. */
  readonly newestAt: string | null;
  readonly plant: {
    readonly name: string;
    readonly timeZone: string;
    readonly sample: boolean;
    readonly openedAt: string;
  } | null;
  readonly rules: RuleProfile;
  /** Hash of the rules-set entry in force; null while the shipped profile stands. */
  readonly rulesHash: string | null;
  /** Who set the rules in force, when and why; null while the shipped profile stands. */
  readonly rulesSet: RulesSetting | null;
  readonly people: ReadonlyMap<string, Person>;
  readonly equipment: ReadonlyMap<string, Equipment>;
  /** Certificates of each load cell in the order they were filed. */
  readonly certificates: ReadonlyMap<string, readonly Certificate[]>;
  readonly pairs: ReadonlyMap<string, PairRecord>;
  readonly calibrations: ReadonlyMap<string, CalibrationRecord>;
}
