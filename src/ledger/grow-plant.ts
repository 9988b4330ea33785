// Deals out each kind of entry to what it does to the plant state: people in grow-people.ts, parts and pairs in
// grow-equipment.ts, calibrations in grow-calibrations.ts, beds in grow-stressing.ts. Opening, copying and replaying states is in replay.ts.

import type { AnyLedgerEntry } from './entry.ts';
import {
  approveCalibration,
  clearDoubt,
  recordRun,
  rejectCalibration,
  withdrawCalibration,
} from './grow-calibrations.ts';
import {
  amendCertificate,
  amendEquipment,
  fileCertificate,
  fileStandard,
  formPair,
  partPair,
  recordCheck,
  registerEquipment,
  reportEvent,
  retireEquipment,
  setHold,
  settleEvent,
  withdrawCertificate,
  withdrawStandard,
} from './grow-equipment.ts';
import { addPerson, admitDevice, barDevice, barPerson, changePerson, readmitPerson } from './grow-people.ts';
import { recordStressing } from './grow-stressing.ts';
import { type GrowingPlant, known, refusal } from './growing-plant.ts';

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
    case 'rules-set/3':
    case 'rules-set/4':
      plant.rules = entry.body.profile;
      plant.rulesHash = entry.hash;
      plant.rulesSet = { seq: entry.seq, at: entry.at, by: entry.actor, reason: entry.body.reason };
      return;
    case 'person-added/1':
      addPerson(plant, entry);
      return;
    case 'person-changed/1':
      changePerson(plant, entry);
      return;
    case 'person-barred/1':
      barPerson(plant, entry);
      return;
    case 'person-readmitted/1':
      readmitPerson(plant, entry);
      return;
    case 'device-admitted/1':
      admitDevice(plant, entry);
      return;
    case 'device-barred/1':
      barDevice(plant, entry);
      return;
    case 'equipment-registered/1':
    case 'equipment-registered/2':
      registerEquipment(plant, entry);
      return;
    case 'equipment-amended/1':
      amendEquipment(plant, entry);
      return;
    case 'equipment-retired/1':
      retireEquipment(plant, entry);
      return;
    case 'certificate-filed/1':
    case 'certificate-filed/2':
      fileCertificate(plant, entry);
      return;
    case 'certificate-amended/1':
      amendCertificate(plant, entry);
      return;
    case 'certificate-withdrawn/1':
      withdrawCertificate(plant, entry);
      return;
    case 'laboratory-filed/1':
      plant.laboratories.set(entry.subject, entry.body.laboratory);
      return;
    case 'strand-filed/1':
      plant.strands.set(entry.subject, entry.body.strand);
      return;
    case 'reel-filed/1':
      plant.reels.set(entry.subject, entry.body.reel);
      return;
    case 'standard-filed/1':
      fileStandard(plant, entry);
      return;
    case 'standard-withdrawn/1':
      withdrawStandard(plant, entry);
      return;
    case 'pair-formed/1':
      formPair(plant, entry);
      return;
    case 'pair-parted/1':
      partPair(plant, entry);
      return;
    case 'run-recorded/1':
    case 'run-recorded/2':
    case 'run-recorded/3':
      recordRun(plant, entry);
      return;
    case 'calibration-approved/1':
    case 'calibration-approved/2':
      approveCalibration(plant, entry);
      return;
    case 'calibration-rejected/1':
      rejectCalibration(plant, entry);
      return;
    case 'calibration-withdrawn/1':
      withdrawCalibration(plant, entry);
      return;
    case 'doubt-cleared/1':
      clearDoubt(plant, entry);
      return;
    case 'hold-placed/1':
      setHold(plant, entry, { reason: entry.body.reason, placedBy: entry.actor, placedAt: entry.at });
      return;
    case 'hold-lifted/1':
      setHold(plant, entry, null);
      return;
    case 'event-reported/1':
      reportEvent(plant, entry);
      return;
    case 'event-settled/1':
      settleEvent(plant, entry);
      return;
    case 'reading-released/1':
      known(plant.pairs, entry.subject, entry, 'pair');
      return;
    case 'stressing-recorded/1':
      recordStressing(plant, entry);
      return;
    case 'check-recorded/1':
      recordCheck(plant, entry);
      return;
    case 'clock-set-right/1':
      plant.newestAt = entry.at;
      return;
    case 'backup-made/1':
      plant.lastBackup = { ...entry.body, file: entry.subject, at: entry.at, by: entry.actor };
      return;
    case 'restored/1':
      // What was restored is the ledger itself; the entry only says that it was.
      return;
    default: {
      // Unreachable for the compiler; a ledger written by a newer program gets here.
      const unknown: { readonly seq: number; readonly kind: string } = entry;
      throw new Error(`Entry ${unknown.seq} is of the kind "${unknown.kind}", which this version does not know.`);
    }
  }
}
