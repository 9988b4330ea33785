// The kinds of ledger entry and what each holds. How an entry becomes bytes is in canonical-bytes.ts, the chain in
// hash-chain.ts, what entries add up to in replay.ts. A version that was released is never edited; a new one is added.

import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { PairCheck } from '../domain/drift/pair-check.ts';
import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { PairEvent } from '../domain/equipment/pair-event.ts';
import type { Laboratory, StandardCertificate } from '../domain/equipment/traceability.ts';
import type { Role } from '../domain/rules/role.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import type { FiledStrand } from '../domain/strand/filed-strand.ts';
import type { Reel } from '../domain/strand/reel.ts';
import type { PullEntry } from '../domain/stressing/pull.ts';
import type { BedFacts } from '../domain/stressing/stressing-record.ts';
import type { ForceUnit } from '../domain/units/force.ts';
import type { PressureUnit } from '../domain/units/pressure.ts';
import type { Quantity } from '../domain/units/quantity.ts';
import type { ReviewedCalibration, ReviewedParts } from './review-hash.ts';

/** The body of every kind of entry; the subject of each is named beside it. */
export interface EntryBodies {
  /** subject: "plant" */
  readonly 'plant-opened/1': {
    readonly name: string;
    readonly timeZone: string;
    readonly sample: boolean;
  };
  /** subject: name of the profile */
  readonly 'rules-set/1': {
    readonly profile: RuleProfile;
    readonly reason: string;
  };
  /** subject: name of the profile. Since 1: limits of reversibility, zero, resolution, first use, guard band and falling use. */
  readonly 'rules-set/2': {
    readonly profile: RuleProfile;
    readonly reason: string;
  };
  /** subject: name of the profile. Since 2: what events do. */
  readonly 'rules-set/3': {
    readonly profile: RuleProfile;
    readonly reason: string;
  };
  /** subject: name of the profile. Since 3: windows of the elongation, charts of the beds, age of what a device holds. */
  readonly 'rules-set/4': {
    readonly profile: RuleProfile;
    readonly reason: string;
  };
  /** subject: id of the person */
  readonly 'person-added/1': { readonly name: string; readonly role: Role };
  /** subject: id of the person */
  readonly 'person-changed/1': { readonly name: string; readonly role: Role; readonly reason: string };
  /** subject: id of the person, who cannot sign in from then on */
  readonly 'person-barred/1': { readonly reason: string };
  /** subject: id of the person, who may sign in again */
  readonly 'person-readmitted/1': { readonly reason: string };
  /** subject: id of the device; it may look up and nothing else */
  readonly 'device-admitted/1': { readonly name: string };
  /** subject: id of the device */
  readonly 'device-barred/1': { readonly reason: string };
  /** subject: tag */
  readonly 'equipment-registered/1': { readonly equipment: Equipment };
  /** subject: tag. Since 1: the readable part of a dial's graduation, the resolution of a load cell's indicator. */
  readonly 'equipment-registered/2': { readonly equipment: Equipment };
  /** subject: tag. The part as it should have been registered; `corrects` is the number of the entry it takes the place of. */
  readonly 'equipment-amended/1': { readonly equipment: Equipment; readonly corrects: number; readonly reason: string };
  /** subject: tag */
  readonly 'equipment-retired/1': { readonly on: PlantDay; readonly reason: string };
  /** subject: tag of the load cell */
  readonly 'certificate-filed/1': { readonly certificate: Certificate };
  /** subject: tag of the load cell. Since 1: the standard it rests on, attached files. */
  readonly 'certificate-filed/2': { readonly certificate: Omit<Certificate, 'withdrawn'> };
  /** subject: tag of the load cell; `corrects` as in equipment-amended */
  readonly 'certificate-amended/1': {
    readonly certificate: Omit<Certificate, 'withdrawn'>;
    readonly corrects: number;
    readonly reason: string;
  };
  /** subject: tag of the load cell. What rests on the certificate after its last good day is in doubt. */
  readonly 'certificate-withdrawn/1': {
    readonly number: string;
    readonly reason: string;
    readonly lastGood?: PlantDay;
  };
  /** subject: name of the laboratory; a later entry takes the place of an earlier one */
  readonly 'laboratory-filed/1': { readonly laboratory: Laboratory };
  /** subject: designation of the size; a later entry takes the place of an earlier one */
  readonly 'strand-filed/1': { readonly strand: FiledStrand };
  /** subject: id of the reel; a later entry takes the place of an earlier one */
  readonly 'reel-filed/1': { readonly reel: Reel };
  /** subject: number of the certificate */
  readonly 'standard-filed/1': { readonly standard: Omit<StandardCertificate, 'withdrawn'> };
  /** subject: number of the certificate. What rests on it after its last good day is in doubt. */
  readonly 'standard-withdrawn/1': { readonly reason: string; readonly lastGood?: PlantDay };
  /** subject: tag of the pair */
  readonly 'pair-formed/1': { readonly pair: Omit<Pair, 'parted'> };
  /** subject: tag of the pair */
  readonly 'pair-parted/1': { readonly on: PlantDay; readonly reason: string };
  /** subject: number of the calibration */
  readonly 'run-recorded/1': {
    readonly pair: string;
    readonly calibratedOn: PlantDay;
    readonly loadCell: string;
    readonly sheet: RunSheet;
    readonly degree: 1 | 2 | 3 | 'auto';
    readonly degreeReason?: string;
  };
  /** subject: number of the calibration. Since 1: the day of first use in the sheet. */
  readonly 'run-recorded/2': EntryBodies['run-recorded/1'];
  /** subject: number of the calibration. Since 2: whether the sheet is as found, as left or both. */
  readonly 'run-recorded/3': EntryBodies['run-recorded/1'];
  /** subject: number of the calibration; `reviewed` is the hash of what the approver saw (see review-hash.ts) */
  readonly 'calibration-approved/1': {
    readonly reviewed: string;
    readonly note?: string;
  };
  /** subject: number of the calibration. Since 1: what was reviewed beside the sheet, so that its hash can be made again from the ledger. */
  readonly 'calibration-approved/2': {
    readonly reviewed: string;
    readonly note?: string;
    readonly curve: Pick<ReviewedCalibration, 'response' | 'degree' | 'coefficients'>;
    readonly certificate: Certificate | null;
    /** The entries that held jack, gauge and load cell as they were reviewed. */
    readonly parts: ReviewedParts;
    /** Hash of the rules-set entry in force; null while the shipped profile stands, which is then in `rules`. */
    readonly rulesHash: string | null;
    readonly rules?: RuleProfile;
  };
  /** subject: number of the calibration, which no look-up rests on from then on */
  readonly 'calibration-withdrawn/1': { readonly reason: string };
  /** subject: number of the calibration; somebody looked into the doubt and says why the calibration still holds */
  readonly 'doubt-cleared/1': { readonly doubt: string; readonly reason: string };
  /** subject: tag of the pair */
  readonly 'event-reported/1': { readonly event: PairEvent };
  /** subject: tag of the pair; `event` is the number of the entry that reported it */
  readonly 'event-settled/1': { readonly event: number; readonly reason: string };
  /** subject: number of the calibration */
  readonly 'calibration-rejected/1': { readonly reason: string };
  /** subject: tag of the pair */
  readonly 'hold-placed/1': { readonly reason: string };
  /** subject: tag of the pair */
  readonly 'hold-lifted/1': { readonly reason: string };
  /** subject: tag of the pair; somebody showed a reading in spite of a stop */
  readonly 'reading-released/1': {
    readonly name: string;
    readonly reason: string;
    readonly calibration: string;
    readonly force: Quantity<ForceUnit>;
    readonly readingToSet: Quantity<PressureUnit>;
    readonly stops: readonly string[];
  };
  /** subject: tag of the pair. `calibration` is the number of the one in force on the day. */
  readonly 'check-recorded/1': { readonly check: PairCheck; readonly calibration: string };
  /**
   * subject: number of the record. What the bed was pulled by and the pulls as they were read, with the window of that day;
   * whether gauge and elongation agree is computed from them.
   */
  readonly 'stressing-recorded/1': { readonly facts: BedFacts; readonly pulls: readonly PullEntry[] };
  /** subject: "plant". The clock had run `ahead` and was set right before this entry, so that later instants count from it on. */
  readonly 'clock-set-right/1': { readonly ahead: string; readonly reason: string };
  /** subject: file name of the backup; `head` is the last entry it holds */
  readonly 'backup-made/1': {
    readonly head: { readonly seq: number; readonly hash: string };
    readonly bytes: number;
    readonly sha256: string;
  };
  /** subject: file name of the backup. `from` is its head; `givenUp` is the head of the ledger it took the place of, where it was ahead. */
  readonly 'restored/1': {
    readonly from: { readonly seq: number; readonly hash: string };
    readonly givenUp: { readonly seq: number; readonly hash: string } | null;
    readonly reason: string;
  };
}

export type EntryKind = keyof EntryBodies;

/** What is hashed, beside the previous hash. `at` is the server's UTC instant, ISO 8601 with milliseconds and Z. */
export interface EntryContent<K extends EntryKind = EntryKind> {
  readonly seq: number;
  readonly at: string;
  /** id of the person, or "jackledger" for what the program itself writes */
  readonly actor: string;
  readonly kind: K;
  readonly subject: string;
  readonly body: EntryBodies[K];
}

/** An entry as it stands in the ledger. Hashes are 64 lower-case hexadecimal digits. */
export interface LedgerEntry<K extends EntryKind = EntryKind> extends EntryContent<K> {
  readonly previousHash: string;
  readonly hash: string;
}

/** An entry of any kind, so that a check of `kind` narrows `body`. */
export type AnyLedgerEntry = { [K in EntryKind]: LedgerEntry<K> }[EntryKind];

/** What a service hands over to be appended; sequence and hashes are given by the store's writer. */
export type NewEntry = {
  [K in EntryKind]: Pick<EntryContent<K>, 'at' | 'actor' | 'kind' | 'subject' | 'body'>;
}[EntryKind];

export const entryKinds = [
  'plant-opened/1',
  'rules-set/1',
  'rules-set/2',
  'rules-set/3',
  'rules-set/4',
  'person-added/1',
  'person-changed/1',
  'person-barred/1',
  'person-readmitted/1',
  'device-admitted/1',
  'device-barred/1',
  'equipment-registered/1',
  'equipment-registered/2',
  'equipment-amended/1',
  'equipment-retired/1',
  'certificate-filed/1',
  'certificate-filed/2',
  'certificate-amended/1',
  'certificate-withdrawn/1',
  'laboratory-filed/1',
  'standard-filed/1',
  'strand-filed/1',
  'reel-filed/1',
  'standard-withdrawn/1',
  'pair-formed/1',
  'pair-parted/1',
  'run-recorded/1',
  'run-recorded/2',
  'run-recorded/3',
  'calibration-approved/1',
  'calibration-approved/2',
  'calibration-rejected/1',
  'calibration-withdrawn/1',
  'doubt-cleared/1',
  'event-reported/1',
  'event-settled/1',
  'hold-placed/1',
  'hold-lifted/1',
  'reading-released/1',
  'stressing-recorded/1',
  'check-recorded/1',
  'clock-set-right/1',
  'backup-made/1',
  'restored/1',
] as const satisfies readonly EntryKind[];
