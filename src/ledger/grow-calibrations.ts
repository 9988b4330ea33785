// What entries about calibrations do to the plant state. The other kinds are dealt out by grow-plant.ts.

import type { LedgerEntry } from './entry.ts';
import { actOf, addNew, type GrowingPlant, known, refusal } from './growing-plant.ts';
import type { CalibrationRecord } from './plant-state.ts';

export function recordRun(
  plant: GrowingPlant,
  entry: LedgerEntry<'run-recorded/1'> | LedgerEntry<'run-recorded/2'> | LedgerEntry<'run-recorded/3'>,
): void {
  const pair = known(plant.pairs, entry.body.pair, entry, 'pair');
  const calibration: CalibrationRecord = {
    number: entry.subject,
    ...entry.body,
    runHash: entry.hash,
    enteredIn: entry.seq,
    enteredBy: entry.actor,
    enteredAt: entry.at,
    status: 'submitted',
  };
  addNew(plant.calibrations, entry.subject, calibration, entry, 'calibration');
  pair.calibrations.push(entry.subject);
}

export function approveCalibration(
  plant: GrowingPlant,
  entry: LedgerEntry<'calibration-approved/1'> | LedgerEntry<'calibration-approved/2'>,
): void {
  const calibration = undecided(plant, entry);
  // At the command line of a machine a person acts under another name, and is the same person.
  if (calibration.enteredBy.replace(/^command-line:/, '') === entry.actor.replace(/^command-line:/, '')) {
    throw refusal(entry, `approves calibration "${entry.subject}" by "${entry.actor}", who entered it`);
  }
  const { note } = entry.body;
  plant.approvedIn.set(entry.subject, entry.seq);
  plant.calibrations.set(entry.subject, {
    ...decided(calibration, entry, note),
    status: 'approved',
    ...(entry.kind === 'calibration-approved/2'
      ? {
          approvedCurve: entry.body.curve,
          approvedParts: entry.body.parts,
          approvedCertificate: entry.body.certificate,
        }
      : {}),
  });
}

export function rejectCalibration(plant: GrowingPlant, entry: LedgerEntry<'calibration-rejected/1'>): void {
  const calibration = undecided(plant, entry);
  plant.calibrations.set(entry.subject, { ...decided(calibration, entry, entry.body.reason), status: 'rejected' });
}

/** Withdraws a calibration that was approved, or takes back one that nobody decided on yet. */
export function withdrawCalibration(plant: GrowingPlant, entry: LedgerEntry<'calibration-withdrawn/1'>): void {
  const calibration = known(plant.calibrations, entry.subject, entry, 'calibration');
  if (calibration.status !== 'approved' && calibration.status !== 'submitted') {
    throw refusal(entry, `withdraws calibration "${entry.subject}", which was ${calibration.status} before`);
  }
  const withdrawn = actOf(entry, entry.body.reason);
  plant.calibrations.set(entry.subject, { ...calibration, status: 'withdrawn', withdrawn });
}

export function clearDoubt(plant: GrowingPlant, entry: LedgerEntry<'doubt-cleared/1'>): void {
  const calibration = known(plant.calibrations, entry.subject, entry, 'calibration');
  const clearedDoubts = { ...calibration.clearedDoubts, [entry.body.doubt]: actOf(entry, entry.body.reason) };
  plant.calibrations.set(entry.subject, { ...calibration, clearedDoubts });
}

function undecided(plant: GrowingPlant, entry: LedgerEntry): CalibrationRecord {
  const calibration = known(plant.calibrations, entry.subject, entry, 'calibration');
  if (calibration.status !== 'submitted') {
    throw refusal(entry, `decides on calibration "${entry.subject}", which was ${calibration.status} before`);
  }
  return calibration;
}

function decided(calibration: CalibrationRecord, entry: LedgerEntry, note: string | undefined): CalibrationRecord {
  return {
    ...calibration,
    decidedBy: entry.actor,
    decidedAt: entry.at,
    ...(note === undefined ? {} : { decisionNote: note }),
  };
}
