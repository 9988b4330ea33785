// Entries to plant state: what the ledger adds up to, each entry in constant time.
// The shape of the state is in plant-state.ts; whether the entries are genuine is checked by verify.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { twelveMonthsTwoPercent } from '../domain/rules/twelve-months-two-percent.ts';
import type { AnyLedgerEntry } from './entry.ts';
import { growPlant } from './grow-plant.ts';
import type { GrowingPlant } from './growing-plant.ts';
import { genesisHash } from './hash-chain.ts';
import type { PlantState } from './plant-state.ts';
import { entryOfRow, type StoredRow } from './stored-row.ts';

export interface Replay {
  /** The state after the last entry applied: always this object, which moves on with each entry. */
  readonly state: PlantState;
  /**
   * Takes in the next entry. Throws, leaving the state as it was, when the entry does not follow the head or says
   * something that cannot be: an unknown kind, a tag nobody registered, an approval by the one who entered the run.
   */
  apply(entry: AnyLedgerEntry): void;
}

/** The state of a ledger without entries: nobody, nothing, and the rules the program ships with. */
export function emptyPlant(): PlantState {
  return startOf(undefined);
}

/** Opens a replay on an empty plant, or on a copy of a state that stays as it is. */
export function createReplay(from?: PlantState): Replay {
  const plant = startOf(from);
  return { state: plant, apply: (entry) => growPlant(plant, entry) };
}

/** Answers the state after the given entries. Throws as `Replay.apply` does. */
export function replay(entries: Iterable<AnyLedgerEntry>, from?: PlantState): PlantState {
  const { state, apply } = createReplay(from);
  for (const entry of entries) apply(entry);
  return state;
}

/**
 * Answers the state after rows as they are stored; none of them is checked against its hash.
 * Problem: `ledger-broken` naming the first entry that says what cannot be.
 */
export async function replayRows(rows: AsyncIterable<StoredRow> | Iterable<StoredRow>): Promise<Outcome<PlantState>> {
  const { state, apply } = createReplay();
  for await (const row of rows) {
    try {
      apply(entryOfRow(row));
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('ledger-broken', reason, { where: `entry ${row.seq}` });
    }
  }
  return succeed(state);
}

function startOf(from: PlantState | undefined): GrowingPlant {
  return {
    head: from?.head ?? { seq: 0, hash: genesisHash },
    newestAt: from?.newestAt ?? null,
    plant: from?.plant ?? null,
    rules: from?.rules ?? twelveMonthsTwoPercent,
    rulesHash: from?.rulesHash ?? null,
    rulesSet: from?.rulesSet ?? null,
    people: new Map(from?.people),
    devices: new Map(from?.devices),
    equipment: new Map(from?.equipment),
    retired: new Map(from?.retired),
    laboratories: new Map(from?.laboratories),
    checks: new Map(from?.checks),
    strands: new Map(from?.strands),
    reels: new Map(from?.reels),
    standards: new Map(from?.standards),
    certificates: new Map([...(from?.certificates ?? [])].map(([cell, filed]) => [cell, [...filed]])),
    pairs: new Map(
      [...(from?.pairs ?? [])].map(([tag, record]) => [
        tag,
        { ...record, calibrations: [...record.calibrations], events: [...record.events] },
      ]),
    ),
    calibrations: new Map(from?.calibrations),
    approvedIn: new Map(from?.approvedIn),
    stressings: new Map(from?.stressings),
    corrected: new Map(from?.corrected),
    standing: new Map(from?.standing),
    lastBackup: from?.lastBackup ?? null,
  };
}
