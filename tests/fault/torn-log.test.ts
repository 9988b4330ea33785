// The log beside a ledger cut off anywhere, and bytes flipped in it and in every page of the file: what opens is the
// beginning of what was written, action by action, or it is refused by name; never an entry that was not written.

import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { createReplay } from '../../src/ledger/replay.ts';
import { entryOfRow, type StoredRow } from '../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { temporaryFolder } from '../cli/run-command.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { holdPlaced, plantBeforeCalibration, runRecorded } from '../storage/plant-entries.ts';
import { seededRandom } from './seeded-random.ts';

/** Sizes of the log's header and of a frame's. Source: sqlite.org/fileformat.html 4.1. */
const logHeader = 32;
const frameHeader = 24;
const page = 4096;
const frame = frameHeader + page;

const folder = temporaryFolder();
const sound = join(folder, 'sound.ledger');
const torn = join(folder, 'torn.ledger');
const actions = 15;
let rows: readonly StoredRow[];
let inFile: number;
let log: Buffer;
let file: Buffer;

beforeAll(async () => {
  // The first actions are moved from the log into the file, as closing does; the others are in the log alone.
  let storage = outcomeValue(openSqliteStorage(sound, { sha256, mode: 'create' }));
  let seq = outcomeValue(await storage.ledger.append({ entries: plantBeforeCalibration(), expectedSeq: 0 })).length;
  inFile = seq;
  await storage.close();
  storage = outcomeValue(openSqliteStorage(sound, { sha256, mode: 'existing' }));
  for (let action = 0; action < actions; action += 1) {
    const entries = [holdPlaced(seq, `action ${action}`), runRecorded(seq, `CAL-${action}`)];
    seq += outcomeValue(await storage.ledger.append({ entries, expectedSeq: seq })).length;
  }
  rows = await collect(storage.rows.readStoredRows(0));
  log = readFileSync(`${sound}-wal`);
  file = readFileSync(sound);
  await storage.close();
});

type Finding = 'refused' | 'broken' | readonly StoredRow[];

async function findingOf(newFile: Buffer, newLog: Buffer): Promise<Finding> {
  for (const ending of ['-shm', '-wal']) rmSync(`${torn}${ending}`, { force: true });
  writeFileSync(torn, newFile);
  writeFileSync(`${torn}-wal`, newLog);
  const opened = openSqliteStorage(torn, { sha256, mode: 'existing' });
  if (!opened.ok) {
    expect(opened.problem.code).toBe('ledger-not-readable');
    return 'refused';
  }
  const { rows: stored, close } = opened.value;
  const verified = await verifyLedger(stored.readStoredRows(0), sha256);
  const found = verified.ok ? await collect(stored.readStoredRows(0)) : [];
  await close();
  if (verified.ok) return found;
  expect(verified.problem).toMatchObject({ code: 'ledger-broken', where: expect.stringMatching(/^entry \d+$/) });
  return 'broken';
}

/** The beginning of what was written, whole actions only, and a plant when it is replayed. */
function expectBeginning(found: readonly StoredRow[]): void {
  expect(found).toEqual(rows.slice(0, found.length));
  expect(found.length).toBeGreaterThanOrEqual(inFile);
  expect((found.length - inFile) % 2).toBe(0);
  const { state, apply } = createReplay();
  for (const row of found) apply(entryOfRow(row));
  expect(state.head.seq).toBe(found.length);
}

describe('a torn log', () => {
  it('opens to the actions before the tear, wherever it is', async () => {
    const frames = (log.length - logHeader) / frame;
    expect(Number.isInteger(frames)).toBe(true);
    expect(frames).toBeGreaterThan(actions);
    const lengths = [0, 1, logHeader - 1, logHeader];
    for (let index = 0; index < frames; index += 1) {
      const start = logHeader + index * frame;
      lengths.push(start + 1, start + frameHeader, start + frameHeader + page / 2, start + frame - 1, start + frame);
    }
    let before = inFile;
    for (const length of lengths) {
      const found = await findingOf(file, log.subarray(0, length));
      if (typeof found === 'string') throw new Error(`Cut at ${length}, the ledger is ${found}.`);
      expectBeginning(found);
      // A longer log never holds less.
      expect(found.length).toBeGreaterThanOrEqual(before);
      before = found.length;
    }
    expect(before).toBe(rows.length);
  });

  it('with a byte flipped in any frame opens to the actions before it', async () => {
    const random = seededRandom(31);
    for (let start = logHeader; start < log.length; start += frame) {
      for (const within of [random(frameHeader), frameHeader + random(page), frameHeader + random(page)]) {
        const flipped = Buffer.from(log);
        flipped.writeUInt8(flipped.readUInt8(start + within) ^ (1 + random(255)), start + within);
        const found = await findingOf(file, flipped);
        if (typeof found === 'string') throw new Error(`With byte ${start + within} flipped, the ledger is ${found}.`);
        expectBeginning(found);
      }
    }
  });
});

describe('a file with a byte flipped', () => {
  it('in any page is refused, or broken at an entry, or as it was', async () => {
    copyFileSync(sound, torn);
    const whole = readFileSync(sound);
    const random = seededRandom(32);
    const counts = { refused: 0, broken: 0, 'as it was': 0 };
    for (let start = 0; start < whole.length; start += page) {
      for (let sample = 0; sample < 12; sample += 1) {
        const flipped = Buffer.from(whole);
        // The first bytes of a page say where everything else in it is.
        const at = start + (sample < 4 ? random(100) : random(page));
        flipped.writeUInt8(flipped.readUInt8(at) ^ (1 + random(255)), at);
        const found = await findingOf(flipped, Buffer.alloc(0));
        if (typeof found !== 'string') expect(found).toEqual(rows);
        counts[typeof found === 'string' ? found : 'as it was'] += 1;
      }
    }
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(0);
  });
});
