// The page of one part: as it stands, its earlier versions, its certificates with what rests on them, its entries.

import type { PartPageAnswer } from '../contract/part-page.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { AnyLedgerEntry } from '../ledger/entry.ts';
import type { Act, PlantState } from '../ledger/plant-state.ts';
import { findPart } from './find-record.ts';
import { certificateOn } from './judge-calibration.ts';
import { entryLineOf } from './list-entries.ts';
import type { Plant } from './plant.ts';

type PartVersion = PartPageAnswer['versions'][number];
type CertificateHistory = Pick<PartPageAnswer['certificates'][number], 'versions' | 'withdrawn'>;

interface History {
  readonly versions: PartVersion[];
  readonly certificates: CertificateHistory[];
  readonly entries: AnyLedgerEntry[];
}

/** Answers the page of a part as of the plant's day. Problem: `unknown-equipment`. */
export async function showPart(plant: Plant, tag: string): Promise<Outcome<PartPageAnswer>> {
  const part = findPart(plant.state, tag);
  if (!part.ok) return part;
  const { state } = plant;
  const subject = part.value.tag;
  const { versions, certificates, entries } = await readHistory(plant, subject);
  return succeed({
    asOf: plant.today(),
    part: part.value,
    pair: pairOf(state, subject),
    retired: state.retired.get(subject) ?? null,
    versions,
    certificates: certificates
      .map((history, place) => ({ history, held: state.certificates.get(subject)?.[place] }))
      .flatMap(({ history, held }) =>
        held === undefined
          ? []
          : [{ certificate: held, ...history, restingOnIt: restingOn(state, subject, held.number) }],
      )
      .reverse(),
    entries: entries.map((entry) => entryLineOf(entry, state)).reverse(),
  });
}

/** What the entries say of a part: they stand under its tag, certificates in the order they were filed. */
async function readHistory(plant: Plant, subject: string): Promise<History> {
  const history: History = { versions: [], certificates: [], entries: [] };
  for await (const entry of plant.ledger.readEntries(0)) {
    if (entry.subject === subject && takeIn(history, entry)) history.entries.push(entry);
  }
  return history;
}

/** Whether the entry is about the part; a calibration or a person may have the same name. */
function takeIn({ versions, certificates }: History, entry: AnyLedgerEntry): boolean {
  const written = { entry: entry.seq, at: entry.at, by: entry.actor };
  const last = (number: string) => certificates.findLast((each) => each.versions[0]?.certificate.number === number);
  switch (entry.kind) {
    case 'equipment-registered/1':
    case 'equipment-registered/2':
      versions.push({ ...written, reason: null, part: entry.body.equipment });
      return true;
    case 'equipment-amended/1':
      versions.push({ ...written, reason: entry.body.reason, part: entry.body.equipment });
      return true;
    case 'equipment-retired/1':
      return true;
    case 'certificate-filed/1':
    case 'certificate-filed/2':
      certificates.push({
        versions: [{ ...written, reason: null, certificate: { ...entry.body.certificate } }],
        withdrawn: null,
      });
      return true;
    case 'certificate-amended/1': {
      const { certificate, reason } = entry.body;
      last(certificate.number)?.versions.push({ ...written, reason, certificate });
      return true;
    }
    case 'certificate-withdrawn/1': {
      const { number, reason } = entry.body;
      const act: Act = { seq: entry.seq, by: entry.actor, at: entry.at, reason };
      const found = last(number);
      if (found !== undefined) certificates[certificates.lastIndexOf(found)] = { ...found, withdrawn: act };
      return true;
    }
    default:
      return false;
  }
}

/** The calibrations a certificate stands behind, newest calibration day first. */
function restingOn(state: PlantState, cell: string, number: string) {
  return [...state.calibrations.values()]
    .filter(({ loadCell, status }) => loadCell === cell && (status === 'approved' || status === 'submitted'))
    .filter(({ calibratedOn }) => certificateOn(state, cell, calibratedOn)?.number === number)
    .map((record) => ({ number: record.number, pair: record.pair, calibratedOn: record.calibratedOn }))
    .sort((a, b) => b.calibratedOn.localeCompare(a.calibratedOn));
}

/** The pair in use that has a part. */
export function pairOf(state: PlantState, tag: string): string | null {
  for (const { pair } of state.pairs.values()) {
    if (pair.parted === undefined && [pair.jack, pair.gauge, pair.pump].includes(tag)) return pair.tag;
  }
  return null;
}
