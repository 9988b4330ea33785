// What only a file has: it outlives the process, refuses direct SQL, and holds the same hashes as the store in memory.

import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openDatabase } from '../../src/storage/sqlite/open-database.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import type { Storage } from '../../src/storage/storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from './collect.ts';
import { approval, holdPlaced, plantWithEveryKind, runRecorded } from './plant-entries.ts';
import { temporaryFolder } from './temporary-folder.ts';

const openFile = (file: string): Storage => outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));

describe('a ledger file', () => {
  it('holds entries, answers, passwords and sessions after it was closed', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const idempotency = { key: 'k', requestHash: 'r', answer: () => '"first answer"' };
    const session = { tokenHash: 't', person: 'tess', createdAt: 'a', expiresAt: 'b', lastUsedAt: 'a' };
    const first = openFile(file);
    const appended = outcomeValue(
      await first.ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0, idempotency }),
    );
    await first.credentials.change([
      { change: 'set-password', person: 'tess', hash: 'hash' },
      { change: 'add-session', session },
    ]);
    await first.close();
    await first.close();
    const again = outcomeValue(openSqliteStorage(file, { sha256, mode: 'existing' }));
    expect(await collect(again.ledger.readEntries(0))).toEqual(appended);
    expect(await again.ledger.rememberedAnswer(idempotency)).toEqual({ ok: true, value: '"first answer"' });
    expect(await again.credentials.passwordHash('tess')).toBe('hash');
    expect(await again.credentials.session('t')).toEqual(session);
    await again.close();
  });

  it('holds the same hashes as the store in memory', async () => {
    const onDisk = openFile(join(temporaryFolder(), 'plant.ledger'));
    const inMemory = openMemoryStorage({ sha256 });
    for (const [index, entry] of plantWithEveryKind().entries()) {
      await onDisk.ledger.append({ entries: [entry], expectedSeq: index });
    }
    await inMemory.ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0 });
    expect(await collect(onDisk.ledger.readEntries(0))).toEqual(await collect(inMemory.ledger.readEntries(0)));
    expect(await onDisk.ledger.head()).toEqual(await inMemory.ledger.head());
    await onDisk.close();
  });

  it('shows an entry at once to another process, which can then append after it', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const one = openFile(file);
    const other = openFile(file);
    await one.ledger.append({ entries: [holdPlaced(0, 'one')], expectedSeq: 0 });
    const stale = await other.ledger.append({ entries: [holdPlaced(1, 'other')], expectedSeq: 0 });
    expect(stale).toMatchObject({ ok: false, problem: { code: 'ledger-conflict' } });
    expect(await collect(other.ledger.readEntries(0))).toHaveLength(1);
    expect(await other.ledger.append({ entries: [holdPlaced(1, 'other')], expectedSeq: 1 })).toMatchObject({
      ok: true,
    });
    expect(await one.ledger.head()).toEqual(await other.ledger.head());
    await one.close();
    await other.close();
  });

  it('can be read and verified, not written, in mode read-only', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const writer = openFile(file);
    await writer.ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0 });
    await writer.close();
    const reader = outcomeValue(openSqliteStorage(file, { sha256, mode: 'read-only' }));
    const { seq } = await reader.ledger.head();
    expect(await verifyLedger(reader.rows.readStoredRows(0), sha256)).toMatchObject({ ok: true });
    expect(await reader.ledger.append({ entries: [holdPlaced(20, 'x')], expectedSeq: seq })).toMatchObject({
      ok: false,
      problem: { code: 'ledger-write-failed', given: 'SQLITE_READONLY' },
    });
    expect(await reader.ledger.head()).toMatchObject({ seq });
    await reader.close();
  });
});

describe('direct SQL on a ledger file', () => {
  async function rawLedger(): Promise<{ readonly file: string; readonly database: Database.Database }> {
    const file = join(temporaryFolder(), 'plant.ledger');
    const storage = openFile(file);
    const entries = [...plantWithEveryKind(), runRecorded(30, 'CAL-3', 'quinn')];
    await storage.ledger.append({ entries, expectedSeq: 0 });
    await storage.close();
    // As another program opens it: without any of our settings.
    return { file, database: new Database(file) };
  }

  const refusals = [
    ['a changed body', "UPDATE entry SET body = '{}' WHERE seq = 3", 'never changed'],
    ['a changed number', 'UPDATE entry SET seq = 99 WHERE seq = 3', 'never changed'],
    ['an update that changes nothing', 'UPDATE OR IGNORE entry SET at = at', 'never changed'],
    ['a removed entry', 'DELETE FROM entry WHERE seq = 3', 'never removed'],
    ['a removed last entry', 'DELETE FROM entry WHERE seq = (SELECT max(seq) FROM entry)', 'never removed'],
    ['an emptied table', 'DELETE FROM entry', 'never removed'],
    [
      'INSERT OR REPLACE',
      'INSERT OR REPLACE INTO entry SELECT seq, at, actor, kind, subject, body, previous_hash, hash FROM entry WHERE seq = 3',
      'follows the last one',
    ],
    [
      'an upsert',
      `INSERT INTO entry SELECT * FROM entry WHERE seq = 3 ON CONFLICT (seq) DO UPDATE SET body = '{}'`,
      'follows the last one',
    ],
    [
      'a gap in the numbers',
      `INSERT INTO entry SELECT seq + 2, at, actor, kind, subject, body, hash, hash FROM entry ORDER BY seq DESC LIMIT 1`,
      'follows the last one',
    ],
    [
      'an entry without a number',
      `INSERT INTO entry SELECT NULL, at, actor, kind, subject, body, hash, hash FROM entry ORDER BY seq DESC LIMIT 1`,
      'follows the last one',
    ],
    [
      'a wrong previous hash',
      `INSERT INTO entry SELECT seq + 1, at, actor, kind, subject, body, previous_hash, hash FROM entry ORDER BY seq DESC LIMIT 1`,
      'follows the last one',
    ],
    [
      'an approval by the enterer',
      `INSERT INTO entry SELECT seq + 1, at, 'quinn', 'calibration-approved/1', 'CAL-3', '{}', hash, hash FROM entry ORDER BY seq DESC LIMIT 1`,
      'approver-is-enterer',
    ],
    [
      'an entry without a body',
      `INSERT INTO entry SELECT seq + 1, at, actor, kind, subject, NULL, hash, hash FROM entry ORDER BY seq DESC LIMIT 1`,
      'NOT NULL',
    ],
  ] as const;

  it.each(refusals)('is refused: %s', async (_name, sql, reason) => {
    const { file, database } = await rawLedger();
    const before = database.prepare('SELECT * FROM entry').all();
    expect(() => database.exec(sql)).toThrow(reason);
    expect(database.prepare('SELECT * FROM entry').all()).toEqual(before);
    database.close();
    const storage = openFile(file);
    expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({ ok: true });
    await storage.close();
  });

  it('takes an entry that follows, so that the refusals above are not for another reason', async () => {
    const { database } = await rawLedger();
    const approve = `INSERT INTO entry SELECT seq + 1, at, 'ada', 'calibration-approved/1', 'CAL-3', '{}', hash, hash FROM entry ORDER BY seq DESC LIMIT 1`;
    expect(() => database.exec(approve)).not.toThrow();
    database.close();
  });
});

describe('REPLACE on a ledger file opened with our settings', () => {
  it('is refused as a removal even where the numbering were not watched', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const storage = openFile(file);
    await storage.ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0 });
    await storage.close();
    const database = outcomeValue(openDatabase(file, { mode: 'existing' }));
    database.exec('DROP TRIGGER entry_follows_the_last');
    const replace = `INSERT OR REPLACE INTO entry
      SELECT seq, at, actor, kind, subject, '{}', previous_hash, hash FROM entry WHERE seq = 3`;
    expect(() => database.exec(replace)).toThrow('never removed');
    database.close();
  });
});

describe('a ledger another process writes to', () => {
  it('is the problem ledger-locked, and the action can be tried again', async () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const storage = openFile(file);
    const blocker = new Database(file);
    blocker.exec('BEGIN IMMEDIATE');
    const entries = [runRecorded(0, 'CAL-1'), approval(1, 'CAL-1')];
    expect(await storage.ledger.append({ entries, expectedSeq: 0 })).toMatchObject({
      ok: false,
      problem: { code: 'ledger-locked' },
    });
    blocker.exec('ROLLBACK');
    blocker.close();
    expect(await storage.ledger.append({ entries, expectedSeq: 0 })).toMatchObject({ ok: true });
    await storage.close();
  });
});
