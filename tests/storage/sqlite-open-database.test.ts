// Opening a ledger file: the settings in force, and every way a file can be none of ours.

import { mkdirSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/storage/sha256.ts';
import { makeLedgerFile } from '../../src/storage/sqlite/make-ledger-file.ts';
import { type OpenMode, openDatabase } from '../../src/storage/sqlite/open-database.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { schemas, stepToVersion2 } from '../../src/storage/sqlite/schema.ts';
import { outcomeValue } from '../outcome-value.ts';
import { temporaryFolder } from './temporary-folder.ts';

const modes: readonly OpenMode[] = ['create', 'existing', 'read-only'];

function makeLedger(file: string): void {
  outcomeValue(openDatabase(file, { mode: 'create' })).close();
}

function settingsOf(database: Database.Database): Readonly<Record<string, unknown>> {
  const names = [
    'journal_mode',
    'synchronous',
    'foreign_keys',
    'recursive_triggers',
    'trusted_schema',
    'busy_timeout',
    'application_id',
    'user_version',
  ];
  return Object.fromEntries(names.map((name) => [name, database.pragma(name, { simple: true })]));
}

const refusal = (code: string) => ({ ok: false, problem: { code } });

describe('openDatabase', () => {
  it.each(modes)('has every setting of the ledger in force in mode %s', (mode) => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const database = outcomeValue(openDatabase(file, { mode }));
    expect(settingsOf(database)).toEqual({
      journal_mode: 'wal',
      synchronous: 2,
      foreign_keys: 1,
      recursive_triggers: 1,
      trusted_schema: 0,
      busy_timeout: 2000,
      application_id: 0x4a4b4c47,
      user_version: 2,
    });
    database.close();
  });

  it('makes a new file that only its owner may read', () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    expect((statSync(file).mode & 0o777).toString(8)).toBe('600');
  });

  it('makes a new file and nothing else beside it', () => {
    const folder = temporaryFolder();
    makeLedger(join(folder, 'plant.ledger'));
    expect(readdirSync(folder)).toEqual(['plant.ledger']);
  });

  it.each(modes)('takes an empty file for no ledger in mode %s, and leaves it empty', (mode) => {
    const file = join(temporaryFolder(), 'plant.ledger');
    writeFileSync(file, '');
    expect(openDatabase(file, { mode })).toMatchObject(refusal('ledger-not-readable'));
    expect(statSync(file).size).toBe(0);
  });

  it.each(['existing', 'read-only'] as const)('finds no file in mode %s and makes none', (mode) => {
    const file = join(temporaryFolder(), 'missing.ledger');
    expect(openDatabase(file, { mode })).toMatchObject(refusal('file-not-found'));
    expect(statSync(file, { throwIfNoEntry: false })).toBeUndefined();
  });

  it.each(modes)('finds nothing below a file that is taken for a folder in mode %s', (mode) => {
    const file = join(temporaryFolder(), 'sheet.csv');
    writeFileSync(file, 'run');
    expect(openDatabase(join(file, 'plant.ledger'), { mode })).toMatchObject(refusal('file-not-found'));
  });

  it.each(modes)('finds nothing behind a link that leads to itself in mode %s', (mode) => {
    const file = join(temporaryFolder(), 'plant.ledger');
    symlinkSync(file, file);
    expect(openDatabase(file, { mode })).toMatchObject(refusal('file-not-found'));
  });

  it('makes no folder for a new ledger', () => {
    const folder = temporaryFolder();
    expect(openDatabase(join(folder, 'missing', 'plant.ledger'), { mode: 'create' })).toMatchObject(
      refusal('file-not-found'),
    );
  });

  it.each(modes)('leaves the database of another program as it is in mode %s', (mode) => {
    const file = join(temporaryFolder(), 'other.sqlite');
    const other = new Database(file);
    other.exec('CREATE TABLE entry (seq INTEGER PRIMARY KEY)');
    other.pragma('user_version = 1');
    other.close();
    const before = readFileSync(file);
    expect(openDatabase(file, { mode })).toMatchObject(refusal('ledger-not-readable'));
    expect(readFileSync(file)).toEqual(before);
  });

  it.each(modes)('leaves a file that is no database as it is in mode %s', (mode) => {
    const file = join(temporaryFolder(), 'sheet.csv');
    writeFileSync(file, 'run,direction,force (kip),reading (psi)\n'.repeat(100));
    const before = readFileSync(file);
    expect(openDatabase(file, { mode })).toMatchObject(refusal('ledger-not-readable'));
    expect(readFileSync(file)).toEqual(before);
  });

  it.each(modes)('refuses a folder in mode %s', (mode) => {
    const folder = join(temporaryFolder(), 'plant.ledger');
    mkdirSync(folder);
    expect(openDatabase(folder, { mode })).toMatchObject(refusal('ledger-not-readable'));
  });

  it('refuses a ledger of a later version and says which', () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const raw = new Database(file);
    raw.pragma('user_version = 3');
    raw.close();
    expect(openDatabase(file, { mode: 'existing' })).toMatchObject({
      ok: false,
      problem: { code: 'ledger-not-readable', given: '3', needed: '2' },
    });
  });

  it('refuses to read only what is not in write-ahead mode, which nobody but another program can have changed', () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const raw = new Database(file);
    raw.pragma('journal_mode = DELETE');
    raw.close();
    expect(openDatabase(file, { mode: 'read-only' })).toMatchObject({
      ok: false,
      problem: { code: 'ledger-not-readable', given: 'delete', needed: 'WAL' },
    });
  });

  it.each([
    ['a trigger that was removed', 'DROP TRIGGER entry_is_never_changed', 'trigger entry_is_never_changed'],
    ['a table that was added', 'CREATE TABLE notes (text TEXT)', 'table notes'],
    ['a column that was added', 'ALTER TABLE session ADD COLUMN note TEXT', 'table session'],
    ['a table that was removed', 'DROP TABLE answered_request', 'table answered_request'],
  ])('writes to no file with %s', (_what, sql, named) => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const raw = new Database(file);
    raw.exec(sql);
    raw.close();
    for (const mode of ['create', 'existing'] as const) {
      const outcome = openDatabase(file, { mode });
      expect(outcome).toMatchObject(refusal('ledger-not-readable'));
      expect(outcome.ok ? '' : outcome.problem.message).toContain(`${named} is not as Jackledger made it`);
    }
  });

  it('reads a file without triggers in mode read-only, so that it can be verified', () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const raw = new Database(file);
    raw.exec('DROP TRIGGER entry_is_never_changed');
    raw.close();
    outcomeValue(openDatabase(file, { mode: 'read-only' })).close();
  });
});

describe('a file of version 1', () => {
  const version1 = (): string => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const raw = new Database(file);
    raw.pragma('journal_mode = WAL');
    raw.exec(`BEGIN; ${schemas[1]} COMMIT;`);
    raw.exec("INSERT INTO credential VALUES ('tess', 'hash')");
    raw.exec("INSERT INTO session VALUES ('t', 'tess', 'a', 'b')");
    raw.close();
    return file;
  };
  const versionOf = (file: string): unknown => {
    const raw = new Database(file, { readonly: true });
    const version = raw.pragma('user_version', { simple: true });
    raw.close();
    return version;
  };

  it.each(['create', 'existing'] as const)('becomes one of version 2 in mode %s, with its passwords', (mode) => {
    const file = version1();
    const database = outcomeValue(openDatabase(file, { mode }));
    expect(database.prepare('SELECT * FROM credential').all()).toEqual([{ person: 'tess', password_hash: 'hash' }]);
    expect(database.prepare('SELECT * FROM session').all()).toEqual([]);
    database.close();
    expect(versionOf(file)).toBe(2);
    outcomeValue(openDatabase(file, { mode })).close();
  });

  it('is taken as it is by who exchanges it for another', () => {
    const file = version1();
    outcomeValue(openDatabase(file, { mode: 'alone' })).close();
    expect(versionOf(file)).toBe(1);
  });

  it('is read without being changed, and signs nobody in', async () => {
    const file = version1();
    const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'read-only' }));
    expect(await storage.credentials.passwordHash('tess')).toBe('hash');
    expect(await storage.credentials.session('t')).toBeNull();
    expect(await storage.credentials.invitation('tess')).toBeNull();
    const session = { tokenHash: 'u', person: 'tess', createdAt: 'a', expiresAt: 'b', lastUsedAt: 'a' };
    expect(await storage.credentials.change([{ change: 'add-session', session }])).toMatchObject({ ok: false });
    await storage.close();
    expect(versionOf(file)).toBe(1);
  });

  it('is refused and left alone where a trigger was removed', () => {
    const file = version1();
    const raw = new Database(file);
    raw.exec('DROP TRIGGER entry_is_never_changed');
    raw.close();
    expect(openDatabase(file, { mode: 'existing' })).toMatchObject(refusal('ledger-not-readable'));
    expect(versionOf(file)).toBe(1);
  });

  it('is still of version 1 when the step is cut off', () => {
    const file = version1();
    const raw = new Database(file);
    // Its last statement cannot be done, so neither are the others.
    expect(() => raw.transaction(() => raw.exec(`${stepToVersion2} CREATE TABLE session (x)`))()).toThrow();
    raw.close();
    expect(versionOf(file)).toBe(1);
    outcomeValue(openDatabase(file, { mode: 'existing' })).close();
  });
});

describe('makeLedgerFile', () => {
  it('leaves a file alone that another process put there first', () => {
    const file = join(temporaryFolder(), 'plant.ledger');
    makeLedger(file);
    const database = outcomeValue(openDatabase(file, { mode: 'existing' }));
    database.exec("INSERT INTO credential VALUES ('tess', 'hash')");
    database.close();
    const before = readFileSync(file);
    expect(makeLedgerFile(file)).toEqual({ ok: true, value: null });
    expect(readFileSync(file)).toEqual(before);
  });
});
