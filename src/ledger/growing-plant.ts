// A plant state while it is being built, and what every entry is checked for on its way in.
// What each kind of entry does is in grow-plant.ts and the files it names.

import type { Certificate, Equipment } from '../domain/equipment/equipment.ts';
import type { Pair } from '../domain/equipment/pair.ts';
import type { Laboratory, StandardCertificate } from '../domain/equipment/traceability.ts';
import type { FiledStrand } from '../domain/strand/filed-strand.ts';
import type { Reel } from '../domain/strand/reel.ts';
import type { EntryKind, LedgerEntry } from './entry.ts';
import type {
  Act,
  CalibrationRecord,
  Device,
  Hold,
  PairCheckRecord,
  PairEventRecord,
  Person,
  PlantState,
  RecordedStressing,
} from './plant-state.ts';

export interface GrowingPair {
  readonly pair: Pair;
  readonly calibrations: string[];
  readonly hold: Hold | null;
  readonly events: PairEventRecord[];
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
  readonly devices: Map<string, Device>;
  readonly equipment: Map<string, Equipment>;
  readonly retired: Map<string, Act & { readonly on: string }>;
  readonly laboratories: Map<string, Laboratory>;
  readonly checks: Map<string, readonly PairCheckRecord[]>;
  readonly strands: Map<string, FiledStrand>;
  readonly reels: Map<string, Reel>;
  readonly standards: Map<string, StandardCertificate>;
  readonly certificates: Map<string, Certificate[]>;
  readonly pairs: Map<string, GrowingPair>;
  readonly calibrations: Map<string, CalibrationRecord>;
  readonly approvedIn: Map<string, number>;
  readonly stressings: Map<string, RecordedStressing>;
  readonly corrected: Map<number, Act>;
  readonly standing: Map<string, number>;
  lastBackup: PlantState['lastBackup'];
}

/** Who wrote an entry, when and why. */
export function actOf(entry: LedgerEntry, reason: string): Act {
  return { seq: entry.seq, by: entry.actor, at: entry.at, reason };
}

/** Answers the record an entry names; throws where no earlier entry holds it. */
export function known<T>(records: ReadonlyMap<string, T>, key: string, entry: LedgerEntry, word: string): T {
  const record = records.get(key);
  if (record === undefined) throw refusal(entry, `names the ${word} "${key}", which no earlier entry holds`);
  return record;
}

/** Takes in a record that is new; throws where there is one of its name. */
export function addNew<T>(records: Map<string, T>, key: string, record: T, entry: LedgerEntry, word: string): void {
  if (records.has(key)) throw refusal(entry, `adds the ${word} "${key}" a second time`);
  records.set(key, record);
}

/**
 * Lets an entry take the place of the one that holds something under a key of `PlantState.standing`; throws where
 * `corrects` is not the number of that one, so that two corrections made side by side do not hide each other.
 */
export function takePlace(
  plant: GrowingPlant,
  entry: LedgerEntry,
  { key, corrects, reason }: { readonly key: string; readonly corrects: number; readonly reason: string },
): void {
  const held = plant.standing.get(key);
  if (held !== corrects) throw refusal(entry, `corrects entry ${corrects}, which does not hold the ${key}`);
  plant.corrected.set(corrects, actOf(entry, reason));
  plant.standing.set(key, entry.seq);
}

/** What is thrown where an entry says something that cannot be. */
export function refusal(entry: { readonly seq: number; readonly kind: EntryKind }, why: string): Error {
  return new Error(`Entry ${entry.seq} (${entry.kind}) ${why}.`);
}
