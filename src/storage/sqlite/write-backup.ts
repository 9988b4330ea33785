// A copy of a ledger file while others work with it: made under another name, verified, put in place in one step.
// Putting one back is in stage-restore.ts.

import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { type Outcome, succeed } from '../../domain/problem.ts';
import type { Sha256 } from '../../ledger/hash-chain.ts';
import { replayRows } from '../../ledger/replay.ts';
import { verifyLedger } from '../../ledger/verify.ts';
import type { BackupFacts, BackupFiles } from '../ledger-backup.ts';
import { openSqliteAttachmentStore } from './attachment-store.ts';
import { checkIntegrity } from './check-integrity.ts';
import { fingerprint, syncToDisk } from './durable-file.ts';
import { fileExists, fileProblem } from './file-problem.ts';
import { openSqliteLedgerStore } from './ledger-store.ts';
import { openDatabase } from './open-database.ts';
import { putInPlace } from './put-in-place.ts';
import { sweepLeftovers, workFolderNames } from './sweep-leftovers.ts';

const manifestOf = (file: string): string => `${file}.json`;

/** The backups of one ledger file. */
export function sqliteBackupFiles(ledger: string, { sha256 }: { readonly sha256: Sha256 }): BackupFiles {
  return {
    write: (target, describe) => writeBackup(ledger, resolve(target), describe, sha256),
    list: (folder, nameStart) =>
      readdirSync(folder)
        .filter((name) => name.startsWith(nameStart) && !name.endsWith('.json'))
        .sort()
        .map((name) => join(folder, name)),
    remove(file) {
      rmSync(file, { force: true });
      rmSync(manifestOf(file), { force: true });
    },
  };
}

async function writeBackup(
  ledger: string,
  target: string,
  describe: (facts: BackupFacts) => string,
  sha256: Sha256,
): Promise<Outcome<BackupFacts>> {
  for (const path of [target, manifestOf(target)]) if (existsSync(path)) return fileExists(path);
  const folder = dirname(target);
  let workFolder: string | undefined;
  try {
    sweepLeftovers(folder, new Date());
    workFolder = mkdtempSync(join(folder, workFolderNames.backup));
    const made = join(workFolder, basename(target));
    const copied = await copyLedger(ledger, made);
    if (!copied.ok) return copied;
    const head = await verifiedHead(made, target, sha256);
    if (!head.ok) return head;
    const facts = { head: head.value, ...(await fingerprint(made)) };
    writeFileSync(manifestOf(made), describe(facts), { mode: 0o600 });
    for (const path of [made, manifestOf(made)]) syncToDisk(path);
    if (!putInPlace(made, target)) return fileExists(target);
    putInPlace(manifestOf(made), manifestOf(target));
    syncToDisk(folder);
    return succeed(facts);
  } catch (error) {
    return fileProblem(error, target);
  } finally {
    if (workFolder !== undefined) rmSync(workFolder, { recursive: true, force: true });
  }
}

async function copyLedger(ledger: string, made: string): Promise<Outcome<null>> {
  const source = openDatabase(ledger, { mode: 'read-only' });
  if (!source.ok) return source;
  try {
    // Within one reading transaction every page is of the same moment, whoever writes meanwhile.
    source.value.exec('BEGIN');
    source.value.prepare('SELECT max(seq) FROM entry').get();
    await source.value.backup(made);
  } finally {
    source.value.close();
  }
  chmodSync(made, 0o600);
  const copy = new Database(made);
  try {
    copy.pragma('journal_mode = WAL');
  } finally {
    // Closing leaves one file that needs no log beside it.
    copy.close();
  }
  return succeed(null);
}

/** `name` is what the copy will be called. */
async function verifiedHead(file: string, name: string, sha256: Sha256): Promise<Outcome<BackupFacts['head']>> {
  // As a restored ledger will be opened: with every table and trigger in its place.
  const database = openDatabase(file, { mode: 'existing' });
  if (!database.ok) return database;
  try {
    const sound = checkIntegrity(database.value, name);
    if (!sound.ok) return sound;
    const attachments = openSqliteAttachmentStore(database.value);
    const rows = openSqliteLedgerStore(database.value, { sha256 });
    const verified = await verifyLedger(
      rows.readStoredRows(0),
      sha256,
      null,
      async (attached) => (await attachments.read(attached))?.content ?? null,
    );
    if (!verified.ok) return verified;
    const replayed = await replayRows(rows.readStoredRows(0));
    return replayed.ok ? succeed(verified.value.head) : replayed;
  } finally {
    database.value.close();
  }
}
