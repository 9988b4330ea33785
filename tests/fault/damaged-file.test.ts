// A ledger file torn or damaged on the disk: it is refused, or verifying names an entry, or every entry is as it was.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { StoredRow } from '../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { stageSqliteRestore } from '../../src/storage/sqlite/stage-restore.ts';
import { sqliteBackupFiles } from '../../src/storage/sqlite/write-backup.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { plantWithEveryKind, runRecorded } from '../storage/plant-entries.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';
import { seededRandom } from './seeded-random.ts';

async function soundLedger(file: string): Promise<readonly StoredRow[]> {
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
  const runs = Array.from({ length: 20 }, (_, index) => runRecorded(20 + index, `CAL-${10 + index}`));
  outcomeValue(await storage.ledger.append({ entries: [...plantWithEveryKind(), ...runs], expectedSeq: 0 }));
  const rows = await collect(storage.rows.readStoredRows(0));
  await storage.close();
  return rows;
}

/** Answers how a file is found: `not readable`, `broken`, or the rows of a ledger that verifies. */
async function findingOf(file: string): Promise<'not readable' | 'broken' | readonly StoredRow[]> {
  const opened = openSqliteStorage(file, { sha256, mode: 'existing' });
  if (!opened.ok) {
    expect(opened.problem.code).toBe('ledger-not-readable');
    return 'not readable';
  }
  const verified = await verifyLedger(opened.value.rows.readStoredRows(0), sha256);
  const rows = verified.ok ? await collect(opened.value.rows.readStoredRows(0)) : [];
  await opened.value.close();
  if (verified.ok) return rows;
  expect(verified.problem).toMatchObject({ code: 'ledger-broken', where: expect.stringMatching(/^entry \d+$/) });
  return 'broken';
}

describe('a damaged ledger file', () => {
  it('never passes with another entry in it, whichever byte was hit', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const rows = await soundLedger(file);
    const bytes = readFileSync(file);
    const random = seededRandom(7);
    const findings = { 'not readable': 0, broken: 0, 'as it was': 0 };
    for (let round = 0; round < 300; round += 1) {
      const damaged = Buffer.from(bytes);
      const at = random(bytes.length);
      damaged.writeUInt8(damaged.readUInt8(at) ^ (1 + random(255)), at);
      writeFileSync(file, damaged);
      const finding = await findingOf(file);
      if (typeof finding !== 'string') expect(finding).toEqual(rows);
      findings[typeof finding === 'string' ? finding : 'as it was'] += 1;
    }
    // Bytes of entries, of the header, and of pages that hold none were all hit.
    expect(Math.min(...Object.values(findings))).toBeGreaterThan(0);
  });

  it('is found wherever it was cut off', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    await soundLedger(file);
    const bytes = readFileSync(file);
    const random = seededRandom(8);
    for (let round = 0; round < 60; round += 1) {
      writeFileSync(file, bytes.subarray(0, random(bytes.length)));
      expect(['not readable', 'broken']).toContain(await findingOf(file));
    }
  });
});

describe('an index that lies while every row beside it is sound', () => {
  /** Changes the last byte of the first page of an index: part of a key. */
  function damageIndex(file: string, index: string): void {
    const database = new Database(file);
    database.pragma('wal_checkpoint(TRUNCATE)');
    const page = database.prepare('SELECT rootpage FROM sqlite_schema WHERE name = ?').pluck().get(index) as number;
    const size = database.pragma('page_size', { simple: true }) as number;
    database.close();
    const bytes = readFileSync(file);
    const at = page * size - 1;
    bytes.writeUInt8(bytes.readUInt8(at) ^ 1, at);
    writeFileSync(file, bytes);
  }

  it('gets into no backup', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'plant.ledger');
    await soundLedger(file);
    damageIndex(file, 'recorded_run');
    expect(typeof (await findingOf(file))).toBe('object');
    const target = join(folder, 'copy');
    const written = await sqliteBackupFiles(file, { sha256 }).write(target, () => '{}');
    expect(written).toMatchObject({ problem: { code: 'ledger-broken', where: target } });
    expect(existsSync(target)).toBe(false);
  });

  it('comes back from no backup', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'plant.ledger');
    await soundLedger(file);
    damageIndex(file, 'recorded_run');
    const staged = await stageSqliteRestore(file, join(folder, 'place'), { sha256 });
    expect(staged).toMatchObject({ problem: { code: 'ledger-broken', where: file } });
  });
});
