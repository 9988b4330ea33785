// Files kept with entries: the same over both stores, and in a SQLite file never changed, never removed, and in every backup.

import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { verifyPlant } from '../../src/service/verify-ledger.ts';
import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { sqliteBackupFiles } from '../../src/storage/sqlite/write-backup.ts';
import type { Storage } from '../../src/storage/storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { temporaryFolder } from './temporary-folder.ts';

const content = new TextEncoder().encode('%PDF-1.7\n% of the tests \u0000\u00ff\n');
const attachment = { sha256: sha256(content), type: 'application/pdf', content };

const openSqlite = (file: string, mode: 'create' | 'existing') =>
  outcomeValue(openSqliteStorage(file, { sha256, mode }));

/** Keeps the file and an entry that names it. */
async function keepNamed(storage: Storage): Promise<void> {
  outcomeValue(await storage.attachments.keep(attachment));
  const files = [
    { sha256: attachment.sha256, name: 'scope.pdf', type: 'application/pdf', bytes: content.length },
  ] as const;
  const entry: NewEntry = {
    at: '2026-06-01T12:00:00.000Z',
    actor: 'tess',
    kind: 'laboratory-filed/1',
    subject: 'Laboratory of the Tests',
    body: { laboratory: { name: 'Laboratory of the Tests', files } },
  };
  outcomeValue(await storage.ledger.append({ entries: [entry], expectedSeq: 0 }));
}

const stores: readonly (readonly [string, () => Storage])[] = [
  ['in memory', () => openMemoryStorage({ sha256 })],
  ['in a SQLite file', () => openSqlite(join(temporaryFolder(), 'plant.ledger'), 'create')],
];

describe.each(stores)('a file kept %s', (_where, open) => {
  it('is found by its SHA-256, byte for byte, and nothing by another', async () => {
    const storage = open();
    outcomeValue(await storage.attachments.keep(attachment));
    const found = await storage.attachments.read(attachment.sha256);
    expect(found).toMatchObject({ sha256: attachment.sha256, type: 'application/pdf' });
    expect(Buffer.from(found?.content ?? []).equals(content)).toBe(true);
    expect(await storage.attachments.read('0'.repeat(64))).toBeNull();
    expect(await storage.attachments.read('constructor')).toBeNull();
    await storage.close();
  });

  it('stays as it was when it is kept once more, and when its sender changes the bytes it gave', async () => {
    const storage = open();
    const given = content.slice();
    outcomeValue(await storage.attachments.keep({ ...attachment, content: given }));
    given.fill(0);
    outcomeValue(await storage.attachments.keep({ ...attachment, type: 'image/png', content: given }));
    const found = await storage.attachments.read(attachment.sha256);
    expect(found?.type).toBe('application/pdf');
    expect(sha256(found?.content ?? given)).toBe(attachment.sha256);
    await storage.close();
  });

  it('is counted by the verifier once an entry names it', async () => {
    const storage = open();
    outcomeValue(await storage.attachments.keep({ ...attachment, sha256: '1'.repeat(64) }));
    expect(outcomeValue(await verifyPlant({ ...storage, sha256 })).files).toBe(0);
    await keepNamed(storage);
    expect(outcomeValue(await verifyPlant({ ...storage, sha256 })).files).toBe(1);
    await storage.close();
  });
});

describe('a file in a SQLite file', () => {
  it.each([
    "UPDATE attachment SET content = x'00'",
    "UPDATE attachment SET type = 'text/html'",
    'DELETE FROM attachment',
    `REPLACE INTO attachment (sha256, type, content) VALUES ('${attachment.sha256}', 'text/html', x'00')`,
  ])('is never changed or removed by the program: %s', async (sql) => {
    const file = join(temporaryFolder(), 'plant.ledger');
    const storage = openSqlite(file, 'create');
    await keepNamed(storage);
    await storage.close();
    const database = new Database(file);
    database.pragma('recursive_triggers = ON');
    expect(() => database.exec(sql)).toThrow(/a file of the ledger is never (changed|removed)/);
    database.close();
  });

  it('goes into every backup, which is not made of one that was altered', async () => {
    const folder = temporaryFolder();
    const file = join(folder, 'plant.ledger');
    const storage = openSqlite(file, 'create');
    await keepNamed(storage);
    await storage.close();
    const backups = sqliteBackupFiles(file, { sha256 });
    outcomeValue(await backups.write(join(folder, 'one.backup'), () => '{}'));
    const copy = openSqlite(join(folder, 'one.backup'), 'existing');
    const found = await copy.attachments.read(attachment.sha256);
    expect(sha256(found?.content ?? new Uint8Array())).toBe(attachment.sha256);
    expect(outcomeValue(await verifyPlant({ ...copy, sha256 })).files).toBe(1);
    await copy.close();

    const database = new Database(file);
    const { sql } = database
      .prepare<[], { sql: string }>("SELECT sql FROM sqlite_schema WHERE name = 'attachment_is_never_changed'")
      .get() ?? { sql: '' };
    database.exec('DROP TRIGGER attachment_is_never_changed');
    database.exec("UPDATE attachment SET content = x'255044462d00'");
    database.exec(sql);
    database.close();
    expect(await backups.write(join(folder, 'two.backup'), () => '{}')).toMatchObject({
      ok: false,
      problem: { code: 'ledger-broken', where: 'entry 1', message: expect.stringContaining('was altered') },
    });
  });
});
