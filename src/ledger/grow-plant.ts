// What each kind of entry does to the plant state. Opening, copying and replaying states is in replay.ts.

import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { AnyLedgerEntry, EntryKind, LedgerEntry } from './entry.ts';
import type { CalibrationRecord, Hold, Person, PlantState } from './plant-state.ts';

interface GrowingPair {
  readonly pair: Pair;
  readonly calibrations: string[];
  readonly hold: Hold | null;
}

/** A plant state while it is being built; everybody else sees it as the read-only `PlantState`. */
export interface GrowingPlant {
  head: PlantState['head'];
  newestAt: PlantState['newestAt'];
  plant: PlantState['plant'];
  rules: PlantState['rules'];
  rulesHash: PlantState['rulesHash'];
  rulesSet: PlantState['rulesSet'];
  readonly people: Map<string, Person>;
  readonly equipment: Map<string, Equipment>;
  readonly certificates: Map<string, Certificate[]>;
  readonly pairs: Map<string, GrowingPair>;
  readonly calibrations: Map<string, CalibrationRecord>;
}

/** Takes one entry into a plant; throws before anything changes when the entry cannot be. */
export function growPlant(plant: GrowingPlant, entry: AnyLedgerEntry): void {
  if (entry.seq !== plant.head.seq + 1 || entry.previousHash !== plant.head.hash) {
    throw new Error(`Entry ${entry.seq} does not follow entry ${plant.head.seq}.`);
  }
  takeIn(plant, entry);
  plant.head = { seq: entry.seq, hash: entry.hash };
  if (plant.newestAt === null || entry.at > plant.newestAt) plant.newestAt = entry.at;
}

function takeIn(plant: GrowingPlant, entry: AnyLedgerEntry): void {
  switch (entry.kind) {
    case 'plant-opened/1':
      if (plant.plant !== null) throw refusal(entry, 'opens a plant that is already open');
      plant.plant = { ...entry.body, openedAt: entry.at };
      return;
    case 'rules-set/1':
    case 'rules-set/2':
      plant.rules = entry.body.profile;
      plant.rulesHash = entry.hash;
      plant.rulesSet = { seq: entry.seq, at: entry.at, by: entry.actor, reason: entry.body.reason };
      return;
    case 'person-added/1':
      addNew(plant.people, entry.subject, { id: entry.subject, ...entry.body }, entry, 'person');
      return;
    case 'equipment-registered/1':
    case 'equipment-registered/2':
      addNew(plant.equipment, entry.subject, entry.body.equipment, entry, 'part');
      return;
    case 'certificate-filed/1':
      fileCertificate(plant, entry);
      return;
    case 'pair-formed/1':
      addNew(plant.pairs, entry.subject, { pair: entry.body.pair, calibrations: [], hold: null }, entry, 'pair');
      return;
    case 'pair-parted/1': {
      const record = known(plant.pairs, entry.subject, entry, 'pair');
      plant.pairs.set(entry.subject, { ...record, pair: { ...record.pair, parted: { ...entry.body } } });
      return;
    }
    case 'run-recorded/1':
    case 'run-recorded/2':
      recordRun(plant, entry);
      return;
    case 'calibration-approved/1': {
      const calibration = undecided(plant, entry);
      if (calibration.enteredBy === entry.actor) {
        throw refusal(entry, `approves calibration "${entry.subject}" by "${entry.actor}", who entered it`);
      }
      decide(plant, entry, calibration, 'approved', entry.body.note);
      return;
    }
    case 'calibration-rejected/1':
      decide(plant, entry, undecided(plant, entry), 'rejected', entry.body.reason);
      return;
    case 'hold-placed/1':
      setHold(plant, entry, { reason: entry.body.reason, placedBy: entry.actor, placedAt: entry.at });
      return;
    case 'hold-lifted/1':
      setHold(plant, entry, null);
      return;
    case 'reading-released/1':
      known(plant.pairs, entry.subject, entry, 'pair');
      return;
    default: {
      // Unreachable for the compiler; a ledger written by a newer program gets here.
      const unknown: { readonly seq: number; readonly kind: string } = entry;
      throw new Error(`Entry ${unknown.seq} is of the kind "${unknown.kind}", which this version does not know.`);
    }
  }
}

function fileCertificate(plant: GrowingPlant, entry: LedgerEntry<'certificate-filed/1'>): void {
  known(plant.equipment, entry.subject, entry, 'part');
  const filed = plant.certificates.get(entry.subject);
  if (filed === undefined) plant.certificates.set(entry.subject, [entry.body.certificate]);
  else filed.push(entry.body.certificate);
}

function recordRun(plant: GrowingPlant, entry: LedgerEntry<'run-recorded/1'> | LedgerEntry<'run-recorded/2'>): void {
  const pair = known(plant.pairs, entry.body.pair, entry, 'pair');
  const calibration: CalibrationRecord = {
    number: entry.subject,
    ...entry.body,
    runHash: entry.hash,
    enteredBy: entry.actor,
    enteredAt: entry.at,
    status: 'submitted',
  };
  addNew(plant.calibrations, entry.subject, calibration, entry, 'calibration');
  pair.calibrations.push(entry.subject);
}

type Decision = LedgerEntry<'calibration-approved/1'> | LedgerEntry<'calibration-rejected/1'>;

function undecided(plant: GrowingPlant, entry: Decision): CalibrationRecord {
  const calibration = known(plant.calibrations, entry.subject, entry, 'calibration');
  if (calibration.status !== 'submitted') {
    throw refusal(entry, `decides on calibration "${entry.subject}", which was ${calibration.status} before`);
  }
  return calibration;
}

function decide(
  plant: GrowingPlant,
  entry: Decision,
  calibration: CalibrationRecord,
  status: 'approved' | 'rejected',
  note: string | undefined,
): void {
  plant.calibrations.set(entry.subject, {
    ...calibration,
    status,
    decidedBy: entry.actor,
    decidedAt: entry.at,
    ...(note === undefined ? {} : { decisionNote: note }),
  });
}

function setHold(plant: GrowingPlant, entry: LedgerEntry, hold: Hold | null): void {
  const record = known(plant.pairs, entry.subject, entry, 'pair');
  plant.pairs.set(entry.subject, { ...record, hold });
}

function known<T>(records: ReadonlyMap<string, T>, key: string, entry: LedgerEntry, word: string): T {
  const record = records.get(key);
  if (record === undefined) throw refusal(entry, `names the ${word} "${key}", which no earlier entry holds`);
  return record;
}

function addNew<T>(records: Map<string, T>, key: string, record: T, entry: LedgerEntry, word: string): void {
  if (records.has(key)) throw refusal(entry, `adds the ${word} "${key}" a second time`);
  records.set(key, record);
}

function refusal(entry: { readonly seq: number; readonly kind: EntryKind }, why: string): Error {
  return new Error(`Entry ${entry.seq} (${entry.kind}) ${why}.`);
}
