// What the record of a bed does to the plant state. The other kinds are dealt out by grow-plant.ts.

import type { LedgerEntry } from './entry.ts';
import { addNew, type GrowingPlant, known, refusal } from './growing-plant.ts';

/** Takes in a record; throws where the entry it names approved no calibration of its pair. */
export function recordStressing(plant: GrowingPlant, entry: LedgerEntry<'stressing-recorded/1'>): void {
  const { facts, pulls } = entry.body;
  const pair = known(plant.pairs, facts.pair, entry, 'pair');
  const calibration = pair.calibrations.find((number) => plant.approvedIn.get(number) === facts.calibrationEntry);
  if (calibration === undefined) {
    throw refusal(entry, `rests on entry ${facts.calibrationEntry}, which approved no calibration of "${facts.pair}"`);
  }
  const stressing = {
    ...{ number: entry.subject, facts, pulls, calibration },
    ...{ enteredIn: entry.seq, enteredBy: entry.actor, enteredAt: entry.at },
  };
  addNew(plant.stressings, entry.subject, stressing, entry, 'stressing record');
}
