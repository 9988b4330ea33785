// How much of the speed of bare durable inserts is left once entries are chained, checked and kept with their answer.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { canonicalText } from '../../src/ledger/canonical-bytes.ts';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { holdPlaced, runRecorded, runSheet } from '../storage/plant-entries.ts';
import { type Benchmark, type Figure, median } from './benchmark.ts';

const appendsPerRound = 400;
const rounds = 9;

type EntryAt = (index: number) => NewEntry;

/** Appends per second of one commit each: the same columns, put into a bare table with the same durability. */
function rawInserts(file: string, entryAt: EntryAt): number {
  const database = new Database(file);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.exec(
    'CREATE TABLE raw (seq INTEGER PRIMARY KEY, at TEXT, actor TEXT, kind TEXT, subject TEXT, body TEXT, previous_hash TEXT, hash TEXT) STRICT',
  );
  const insert = database.prepare('INSERT INTO raw VALUES (?, ?, ?, ?, ?, ?, ?, ?)');
  const hash = '0'.repeat(64);
  const rows = Array.from({ length: appendsPerRound }, (_, index) => {
    const { at, actor, kind, subject, body } = entryAt(index);
    return [index + 1, at, actor, kind, subject, canonicalText(body), hash, hash];
  });
  const start = performance.now();
  for (const row of rows) insert.run(row);
  const seconds = (performance.now() - start) / 1000;
  database.close();
  return appendsPerRound / seconds;
}

/** Appends per second through the store, one action of one entry each, with or without a remembered answer. */
async function storeAppends(file: string, entryAt: EntryAt, remembered: boolean): Promise<number> {
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
  const entries = Array.from({ length: appendsPerRound }, (_, index) => entryAt(index));
  const start = performance.now();
  for (const [index, entry] of entries.entries()) {
    const key = { key: `key ${index}`, requestHash: 'r', answer: () => '"answer"' };
    const request = { entries: [entry], expectedSeq: index };
    outcomeValue(await storage.ledger.append(remembered ? { ...request, idempotency: key } : request));
  }
  const seconds = (performance.now() - start) / 1000;
  await storage.close();
  return appendsPerRound / seconds;
}

async function compare(name: string, entryAt: EntryAt, remembered: boolean): Promise<Figure> {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
  const raw: number[] = [];
  const store: number[] = [];
  // Turn by turn, so that a disk that slows down slows both; the first turn only warms up.
  for (let round = 0; round <= rounds; round += 1) {
    const rawRate = rawInserts(join(folder, `raw-${round}.sqlite`), entryAt);
    const storeRate = await storeAppends(join(folder, `store-${round}.ledger`), entryAt, remembered);
    if (round === 0) continue;
    raw.push(rawRate);
    store.push(storeRate);
  }
  rmSync(folder, { recursive: true, force: true });
  const share = median(store.map((rate, round) => rate / (raw[round] ?? Number.NaN)));
  const rates = `${median(store).toFixed(0)}/s of ${median(raw).toFixed(0)}/s`;
  return {
    what: `durable append, ${name}`,
    measured: `${(100 * share).toFixed(0)} % (${rates})`,
    budget: 'at least 50 %',
    met: share >= 0.5,
  };
}

export const durableAppend: Benchmark = {
  name: 'durable-append',
  async measure() {
    const hold: EntryAt = (index) => holdPlaced(index, 'Dropped from the bed.');
    const run: EntryAt = (index) => runRecorded(index, `CAL-${index}`, 'tess', 'P-01', runSheet(10));
    return [
      await compare('a hold', hold, false),
      await compare('a run sheet', run, false),
      await compare('a run sheet with its answer', run, true),
    ];
  },
};
