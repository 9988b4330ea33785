// The kinds of ledger entry and what each holds. How an entry becomes bytes is in canonical-bytes.ts, the chain in
// hash-chain.ts, what entries add up to in replay.ts. A version that was released is never edited; a new one is added.

import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { Role } from '../domain/rules/role.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import type { ForceUnit } from '../domain/units/force.ts';
import type { PressureUnit } from '../domain/units/pressure.ts';
import type { Quantity } from '../domain/units/quantity.ts';

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
  /** subject: id of the person */
  readonly 'person-added/1': { readonly name: string; readonly role: Role };
  /** subject: tag */
  readonly 'equipment-registered/1': { readonly equipment: Equipment };
  /** subject: tag. Since 1: the readable part of a dial's graduation, the resolution of a load cell's indicator. */
  readonly 'equipment-registered/2': { readonly equipment: Equipment };
  /** subject: tag of the load cell */
  readonly 'certificate-filed/1': { readonly certificate: Certificate };
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
  /** subject: number of the calibration; `reviewed` is the hash of what the approver saw (see review-hash.ts) */
  readonly 'calibration-approved/1': {
    readonly reviewed: string;
    readonly note?: string;
  };
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
  'person-added/1',
  'equipment-registered/1',
  'equipment-registered/2',
  'certificate-filed/1',
  'pair-formed/1',
  'pair-parted/1',
  'run-recorded/1',
  'run-recorded/2',
  'calibration-approved/1',
  'calibration-rejected/1',
  'hold-placed/1',
  'hold-lifted/1',
  'reading-released/1',
] as const satisfies readonly EntryKind[];
