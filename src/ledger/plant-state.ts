// What the entries of a ledger add up to. It is computed by replay.ts and can be thrown away at any time.
// Standings and due dates are not in it: they depend on the day and are computed in domain/lookup/.

import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { PairCheck } from '../domain/drift/pair-check.ts';
import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { EventEffect } from '../domain/equipment/event-effect.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { PairEvent } from '../domain/equipment/pair-event.ts';
import type { Laboratory, StandardCertificate } from '../domain/equipment/traceability.ts';
import type { Role } from '../domain/rules/role.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import type { FiledStrand } from '../domain/strand/filed-strand.ts';
import type { Reel } from '../domain/strand/reel.ts';
import type { PullEntry } from '../domain/stressing/pull.ts';
import type { BedFacts } from '../domain/stressing/stressing-record.ts';
import type { ReviewedCalibration, ReviewedParts } from './review-hash.ts';

/** Who did something in which entry, when and why. */
export interface Act {
  readonly seq: number;
  readonly by: string;
  readonly at: string;
  readonly reason: string;
}

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  /** Cannot sign in since then. */
  readonly barred?: Act;
}

/** A telephone or tablet of a crew, which may look up and nothing else. */
export interface Device {
  readonly id: string;
  readonly name: string;
  readonly admittedBy: string;
  readonly admittedAt: string;
  readonly barred?: Act;
}

export interface PairEventRecord extends PairEvent {
  readonly seq: number;
  readonly reportedBy: string;
  readonly reportedAt: string;
  /** What it does by the rules that were in force when it was reported; a later change of the rules undoes no event. */
  readonly effect: EventEffect;
  readonly settled?: Act;
}

export interface BackupRecord {
  readonly file: string;
  readonly at: string;
  readonly by: string;
  readonly head: { readonly seq: number; readonly hash: string };
  readonly bytes: number;
  readonly sha256: string;
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
  /** Number of the run-recorded entry. */
  readonly enteredIn: number;
  readonly enteredBy: string;
  readonly enteredAt: string;
  readonly status: 'submitted' | 'approved' | 'rejected' | 'withdrawn';
  readonly decidedBy?: string;
  readonly decidedAt?: string;
  readonly decisionNote?: string;
  /** The curve its approver signed; left out where the approval is of the first version, which names its hash alone. */
  readonly approvedCurve?: Pick<ReviewedCalibration, 'response' | 'degree' | 'coefficients'>;
  /** The entries that held its parts when it was approved; left out as the curve is. */
  readonly approvedParts?: ReviewedParts;
  /** The certificate its approver saw; null where there was none, left out as the curve is. */
  readonly approvedCertificate?: Certificate | null;
  readonly withdrawn?: Act;
  /** Doubts somebody looked into and cleared, by the name of the doubt. */
  readonly clearedDoubts?: Readonly<Record<string, Act>>;
}

/** The record of a bed as it was entered; what its pulls are found to be is computed from it. */
export interface RecordedStressing {
  readonly number: string;
  readonly facts: BedFacts;
  readonly pulls: readonly PullEntry[];
  /** Number of the calibration its readings are by. */
  readonly calibration: string;
  readonly enteredIn: number;
  readonly enteredBy: string;
  readonly enteredAt: string;
}

export interface Hold {
  readonly reason: string;
  readonly placedBy: string;
  readonly placedAt: string;
}

/** An interim check with the entry that holds it. */
export interface PairCheckRecord extends PairCheck {
  readonly seq: number;
  readonly by: string;
  readonly at: string;
  /** Number of the calibration in force on its day. */
  readonly calibration: string;
}

export interface PairRecord {
  readonly pair: Pair;
  /** Numbers of its calibrations in the order they were entered. */
  readonly calibrations: readonly string[];
  readonly hold: Hold | null;
  /** What happened to it, in the order it was reported. */
  readonly events: readonly PairEventRecord[];
}

export interface RulesSetting {
  readonly seq: number;
  readonly at: string;
  readonly by: string;
  readonly reason: string;
}

export interface PlantState {
  readonly head: { readonly seq: number; readonly hash: string };
  /** The latest instant of an entry since the clock was last set right; null while there is none. */
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
  readonly devices: ReadonlyMap<string, Device>;
  readonly equipment: ReadonlyMap<string, Equipment>;
  /** Parts taken out of use, by tag, with the day. */
  readonly retired: ReadonlyMap<string, Act & { readonly on: PlantDay }>;
  readonly laboratories: ReadonlyMap<string, Laboratory>;
  /** Interim checks by the tag of their pair, in the order they were entered. */
  readonly checks: ReadonlyMap<string, readonly PairCheckRecord[]>;
  /** Sizes of strand of the plant's own, and its reels. */
  readonly strands: ReadonlyMap<string, FiledStrand>;
  readonly reels: ReadonlyMap<string, Reel>;
  /** Certificates of standards, by number. */
  readonly standards: ReadonlyMap<string, StandardCertificate>;
  /** Certificates of each load cell in the order they were filed. */
  readonly certificates: ReadonlyMap<string, readonly Certificate[]>;
  readonly pairs: ReadonlyMap<string, PairRecord>;
  readonly calibrations: ReadonlyMap<string, CalibrationRecord>;
  /** The entry that approved a calibration, by its number. */
  readonly approvedIn: ReadonlyMap<string, number>;
  /** Records of stressed beds by number, in the order they were entered. */
  readonly stressings: ReadonlyMap<string, RecordedStressing>;
  /** Entries that no longer stand as they were written, by number, each with what took its place and why. */
  readonly corrected: ReadonlyMap<number, Act>;
  /** The number of the entry that holds a part, by tag, or a certificate, by load cell and number. */
  readonly standing: ReadonlyMap<string, number>;
  readonly lastBackup: BackupRecord | null;
}

/** The key of a part in `PlantState.standing`. */
export const standingPart = (tag: string): string => `part ${tag}`;

/** The key of a certificate in `PlantState.standing`. */
export const standingCertificate = (loadCell: string, number: string): string => `certificate ${loadCell} ${number}`;
