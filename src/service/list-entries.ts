// The ledger as people read it: every entry in one sentence.

import type { z } from 'zod';
import type { entryLine } from '../contract/calibration.ts';
import type { EquipmentKind } from '../domain/equipment/equipment.ts';
import { writeQuantityInFull } from '../domain/units/write-quantity.ts';
import type { AnyLedgerEntry } from '../ledger/entry.ts';
import type { PlantState } from '../ledger/plant-state.ts';
import type { Plant } from './plant.ts';

export type EntryLine = z.infer<typeof entryLine>;

/** Which pair, part or person an entry is about, besides its subject. */
export function concernsPair(entry: AnyLedgerEntry, tag: string, calibrations: readonly string[]): boolean {
  return entry.subject === tag || calibrations.includes(entry.subject);
}

/** Entries after a number, oldest first; all of them without a limit. */
export async function readEntries(
  plant: Plant,
  afterSeq: number,
  limit = Number.POSITIVE_INFINITY,
): Promise<readonly AnyLedgerEntry[]> {
  const entries: AnyLedgerEntry[] = [];
  for await (const entry of plant.ledger.readEntries(afterSeq)) {
    entries.push(entry);
    if (entries.length >= limit) break;
  }
  return entries;
}

/** Answers an entry as a line, with the later entry that took its place, if the state knows of one. */
export function entryLineOf(entry: AnyLedgerEntry, { corrected }: Pick<PlantState, 'corrected'>): EntryLine {
  const { seq, at, actor, kind, subject, hash } = entry;
  const act = corrected.get(seq);
  const correctedBy = act === undefined ? null : { seq: act.seq, reason: act.reason };
  return { seq, at, actor, kind, subject, hash, summary: summaryOf(entry), corrects: correctsOf(entry), correctedBy };
}

const partName: Readonly<Record<EquipmentKind, string>> = {
  jack: 'Jack',
  gauge: 'Gauge',
  pump: 'Pump',
  'load-cell': 'Load cell',
};

function correctsOf({ body }: AnyLedgerEntry): number | null {
  return 'corrects' in body ? body.corrects : null;
}

function summaryOf(entry: AnyLedgerEntry): string {
  const { subject } = entry;
  switch (entry.kind) {
    case 'plant-opened/1':
      return `Ledger of ${entry.body.name} opened.`;
    case 'rules-set/1':
    case 'rules-set/2':
    case 'rules-set/3':
    case 'rules-set/4':
      return `Rules set to "${entry.body.profile.title}": ${entry.body.reason}`;
    case 'person-added/1':
      return `${entry.body.name} added as ${entry.body.role}.`;
    case 'person-changed/1':
      return `${subject} is now ${entry.body.name}, ${entry.body.role}: ${entry.body.reason}`;
    case 'person-barred/1':
      return `${subject} barred: ${entry.body.reason}`;
    case 'person-readmitted/1':
      return `${subject} readmitted: ${entry.body.reason}`;
    case 'device-admitted/1':
      return `Device "${entry.body.name}" admitted; it may look up.`;
    case 'device-barred/1':
      return `Device ${subject} barred: ${entry.body.reason}`;
    case 'equipment-registered/1':
    case 'equipment-registered/2':
      return `${partName[entry.body.equipment.kind]} ${subject} registered, serial ${entry.body.equipment.serial}.`;
    case 'equipment-amended/1':
      return `${partName[entry.body.equipment.kind]} ${subject} corrected (entry ${entry.body.corrects}): ${entry.body.reason}`;
    case 'equipment-retired/1':
      return `${subject} taken out of use on ${entry.body.on}: ${entry.body.reason}`;
    case 'certificate-amended/1':
      return `Certificate ${entry.body.certificate.number} of load cell ${subject} corrected (entry ${entry.body.corrects}): ${entry.body.reason}`;
    case 'certificate-withdrawn/1':
      return `Certificate ${entry.body.number} of load cell ${subject} withdrawn${entry.body.lastGood === undefined ? '' : `, good until ${entry.body.lastGood}`}: ${entry.body.reason}`;
    case 'laboratory-filed/1':
      return `Laboratory ${subject} filed.`;
    case 'check-recorded/1':
      return `Pair ${subject} checked on ${entry.body.check.on} against load cell ${entry.body.check.loadCell}, by ${entry.body.calibration}.`;
    case 'strand-filed/1':
      return `Strand ${subject} filed, by ${entry.body.strand.certificate}.`;
    case 'reel-filed/1':
      return `Reel ${subject} of ${entry.body.reel.strandId} filed, by ${entry.body.reel.certificate}.`;
    case 'standard-filed/1':
      return `Certificate ${subject} of a standard of ${entry.body.standard.heldBy} filed, issued by ${entry.body.standard.issuedBy}.`;
    case 'standard-withdrawn/1':
      return `Certificate ${subject} of a standard withdrawn${entry.body.lastGood === undefined ? '' : `, good until ${entry.body.lastGood}`}: ${entry.body.reason}`;
    case 'certificate-filed/1':
    case 'certificate-filed/2':
      return `Certificate ${entry.body.certificate.number} of load cell ${subject} filed, valid until ${entry.body.certificate.validUntil}.`;
    case 'pair-formed/1':
      return `Pair ${subject} formed of jack ${entry.body.pair.jack} and gauge ${entry.body.pair.gauge}.`;
    case 'pair-parted/1':
      return `Pair ${subject} parted on ${entry.body.on}: ${entry.body.reason}`;
    case 'run-recorded/1':
    case 'run-recorded/2':
    case 'run-recorded/3':
      return `Calibration ${subject} of pair ${entry.body.pair} on ${entry.body.calibratedOn} entered.`;
    case 'calibration-approved/1':
    case 'calibration-approved/2':
      return `Calibration ${subject} approved.${entry.body.note === undefined ? '' : ` ${entry.body.note}`}`;
    case 'calibration-rejected/1':
      return `Calibration ${subject} rejected: ${entry.body.reason}`;
    case 'calibration-withdrawn/1':
      return `Calibration ${subject} withdrawn: ${entry.body.reason}`;
    case 'doubt-cleared/1':
      return `Doubt about calibration ${subject} (${entry.body.doubt}) cleared: ${entry.body.reason}`;
    case 'event-reported/1':
      return `Pair ${subject}, ${entry.body.event.on}: ${entry.body.event.what.replaceAll('-', ' ')}. ${entry.body.event.note}`;
    case 'event-settled/1':
      return `Event of entry ${entry.body.event} on pair ${subject} settled: ${entry.body.reason}`;
    case 'clock-set-right/1':
      return `The clock had run ahead to ${entry.body.ahead} and was set right: ${entry.body.reason}`;
    case 'backup-made/1':
      return `Backup ${subject} made, up to entry ${entry.body.head.seq}.`;
    case 'restored/1':
      return `Restored from ${subject}, up to entry ${entry.body.from.seq}: ${entry.body.reason}`;
    case 'hold-placed/1':
      return `Pair ${subject} put on hold: ${entry.body.reason}`;
    case 'hold-lifted/1':
      return `Hold on pair ${subject} lifted: ${entry.body.reason}`;
    case 'stressing-recorded/1': {
      const { facts, pulls } = entry.body;
      return `Bed ${facts.bed} of ${facts.on} recorded as ${subject}: ${pulls.length} ${pulls.length === 1 ? 'pull' : 'pulls'} with pair ${facts.pair}.`;
    }
    case 'reading-released/1':
      return `${entry.body.name} released ${writeQuantityInFull(entry.body.readingToSet)} for ${writeQuantityInFull(entry.body.force)} on pair ${subject} (${entry.body.stops.join(', ')}): ${entry.body.reason}`;
  }
}
