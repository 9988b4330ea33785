// What entries about parts, certificates and pairs do to the plant state. The other kinds are dealt out by grow-plant.ts.

import type { Certificate } from '../domain/equipment/equipment.ts';
import { effectOfEvent } from '../domain/equipment/event-effect.ts';
import type { LedgerEntry } from './entry.ts';
import { actOf, addNew, type GrowingPlant, known, refusal, takePlace } from './growing-plant.ts';
import { type Hold, standingCertificate, standingPart } from './plant-state.ts';

export function registerEquipment(
  plant: GrowingPlant,
  entry: LedgerEntry<'equipment-registered/1'> | LedgerEntry<'equipment-registered/2'>,
): void {
  addNew(plant.equipment, entry.subject, entry.body.equipment, entry, 'part');
  plant.standing.set(standingPart(entry.subject), entry.seq);
}

export function amendEquipment(plant: GrowingPlant, entry: LedgerEntry<'equipment-amended/1'>): void {
  const { equipment, corrects, reason } = entry.body;
  const before = known(plant.equipment, entry.subject, entry, 'part');
  if (before.kind !== equipment.kind || before.tag !== equipment.tag) {
    throw refusal(entry, `makes the ${before.kind} "${before.tag}" the ${equipment.kind} "${equipment.tag}"`);
  }
  takePlace(plant, entry, { key: standingPart(entry.subject), corrects, reason });
  plant.equipment.set(entry.subject, equipment);
}

export function retireEquipment(plant: GrowingPlant, entry: LedgerEntry<'equipment-retired/1'>): void {
  known(plant.equipment, entry.subject, entry, 'part');
  const { on, reason } = entry.body;
  addNew(plant.retired, entry.subject, { ...actOf(entry, reason), on }, entry, 'retirement of');
}

export function fileCertificate(
  plant: GrowingPlant,
  entry: LedgerEntry<'certificate-filed/1'> | LedgerEntry<'certificate-filed/2'>,
): void {
  known(plant.equipment, entry.subject, entry, 'part');
  const { certificate } = entry.body;
  const filed = plant.certificates.get(entry.subject);
  if (filed === undefined) plant.certificates.set(entry.subject, [certificate]);
  else filed.push(certificate);
  plant.standing.set(standingCertificate(entry.subject, certificate.number), entry.seq);
}

export function amendCertificate(plant: GrowingPlant, entry: LedgerEntry<'certificate-amended/1'>): void {
  const { certificate, corrects, reason } = entry.body;
  const { number } = certificate;
  takePlace(plant, entry, { key: standingCertificate(entry.subject, number), corrects, reason });
  replaceCertificate(plant, entry, number, ({ withdrawn }) => ({
    ...certificate,
    ...(withdrawn === undefined ? {} : { withdrawn }),
  }));
}

export function withdrawCertificate(plant: GrowingPlant, entry: LedgerEntry<'certificate-withdrawn/1'>): void {
  const { number, reason, lastGood } = entry.body;
  replaceCertificate(plant, entry, number, (certificate) => {
    if (certificate.withdrawn !== undefined) throw refusal(entry, `withdraws certificate "${number}" a second time`);
    return { ...certificate, withdrawn: { reason, ...(lastGood === undefined ? {} : { lastGood }) } };
  });
}

/** Of several certificates of one number the one filed last. */
function replaceCertificate(
  plant: GrowingPlant,
  entry: LedgerEntry,
  number: string,
  change: (certificate: Certificate) => Certificate,
): void {
  const filed = plant.certificates.get(entry.subject) ?? [];
  const place = filed.findLastIndex((certificate) => certificate.number === number);
  const certificate = filed[place];
  if (certificate === undefined) {
    throw refusal(entry, `names certificate "${number}" of "${entry.subject}", which no earlier entry holds`);
  }
  filed[place] = change(certificate);
}

export function fileStandard(plant: GrowingPlant, entry: LedgerEntry<'standard-filed/1'>): void {
  addNew(plant.standards, entry.subject, entry.body.standard, entry, 'certificate of a standard');
}

export function withdrawStandard(plant: GrowingPlant, entry: LedgerEntry<'standard-withdrawn/1'>): void {
  const standard = known(plant.standards, entry.subject, entry, 'certificate of a standard');
  if (standard.withdrawn !== undefined) throw refusal(entry, `withdraws certificate "${entry.subject}" a second time`);
  plant.standards.set(entry.subject, { ...standard, withdrawn: entry.body });
}

export function formPair(plant: GrowingPlant, entry: LedgerEntry<'pair-formed/1'>): void {
  const record = { pair: entry.body.pair, calibrations: [], hold: null, events: [] };
  addNew(plant.pairs, entry.subject, record, entry, 'pair');
}

export function partPair(plant: GrowingPlant, entry: LedgerEntry<'pair-parted/1'>): void {
  const record = known(plant.pairs, entry.subject, entry, 'pair');
  plant.pairs.set(entry.subject, { ...record, pair: { ...record.pair, parted: { ...entry.body } } });
}

export function setHold(plant: GrowingPlant, entry: LedgerEntry, hold: Hold | null): void {
  const record = known(plant.pairs, entry.subject, entry, 'pair');
  plant.pairs.set(entry.subject, { ...record, hold });
}

export function recordCheck(plant: GrowingPlant, entry: LedgerEntry<'check-recorded/1'>): void {
  const { calibrations } = known(plant.pairs, entry.subject, entry, 'pair');
  const { check, calibration } = entry.body;
  if (!calibrations.includes(calibration)) {
    throw refusal(entry, `holds a check against "${calibration}", which is no calibration of "${entry.subject}"`);
  }
  const recorded = { ...check, calibration, seq: entry.seq, by: entry.actor, at: entry.at };
  plant.checks.set(entry.subject, [...(plant.checks.get(entry.subject) ?? []), recorded]);
}

export function reportEvent(plant: GrowingPlant, entry: LedgerEntry<'event-reported/1'>): void {
  const { events } = known(plant.pairs, entry.subject, entry, 'pair');
  const { event } = entry.body;
  const effect = effectOfEvent(event.what, plant.rules);
  events.push({ ...event, effect, seq: entry.seq, reportedBy: entry.actor, reportedAt: entry.at });
}

export function settleEvent(plant: GrowingPlant, entry: LedgerEntry<'event-settled/1'>): void {
  const { events } = known(plant.pairs, entry.subject, entry, 'pair');
  const place = events.findIndex(({ seq }) => seq === entry.body.event);
  const event = events[place];
  if (event === undefined || event.settled !== undefined) {
    throw refusal(entry, `settles the event of entry ${entry.body.event}, which waits for nobody`);
  }
  events[place] = { ...event, settled: actOf(entry, entry.body.reason) };
}
