// A backup copied beside the ledger it may take the place of, and the exchange of the two in one step.
// Whether it may is decided by service/restore.ts; making a backup is in write-backup.ts.

import {
  chmodSync,
  copyFileSync,
  existsSync,
  linkSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  renameSync,
  rmSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import type { Sha256 } from '../../ledger/hash-chain.ts';
import type { StagedRestore } from '../ledger-backup.ts';
import type { Storage } from '../storage.ts';
import { checkIntegrity } from './check-integrity.ts';
import { fingerprint, syncToDisk } from './durable-file.ts';
import { fileExists, fileProblem } from './file-problem.ts';
import { openSqliteLedgerStore } from './ledger-store.ts';
import { busyTimeoutMilliseconds, openDatabase } from './open-database.ts';
import { openSqliteStorage } from './open-storage.ts';
import { putInPlace } from './put-in-place.ts';
import { workFolderNames } from './sweep-leftovers.ts';

/** What SQLite keeps beside a file while it is open, or after its program was killed. */
const besides = ['-wal', '-shm'] as const;

/**
 * Copies the backup and takes hold of the ledger in place, so that nobody else can open it until the end.
 * Problems: `file-not-found`, `ledger-not-readable` and `ledger-broken` (the backup), `ledger-locked` (the ledger is open elsewhere), `ledger-write-failed`.
 */
export async function stageSqliteRestore(
  backup: string,
  ledger: string,
  { sha256 }: { readonly sha256: Sha256 },
): Promise<Outcome<StagedRestore>> {
  if (!existsSync(backup)) return fail('file-not-found', `There is no file ${backup}.`, { given: backup });
  const place = existsSync(ledger) ? realpathSync(ledger) : resolve(ledger);
  let workFolder: string | undefined;
  try {
    workFolder = mkdtempSync(join(dirname(place), workFolderNames.restore));
    const made = join(workFolder, 'ledger');
    copyFileSync(backup, made);
    chmodSync(made, 0o600);
    // A ledger copied by hand may have its newest entries in the log beside it.
    if (existsSync(`${backup}-wal`)) copyFileSync(`${backup}-wal`, `${made}-wal`);
    const found = await fingerprint(made);
    const copy = openSqliteStorage(made, { sha256, mode: 'existing' });
    if (!copy.ok) return discard(workFolder, copy);
    const sound = checkCopy(made, backup);
    if (!sound.ok) {
      await copy.value.close();
      return discard(workFolder, sound);
    }
    const held = existsSync(place) ? openDatabase(place, { mode: 'alone' }) : 'missing';
    if (held !== 'missing' && !held.ok && held.problem.code !== 'ledger-not-readable') {
      await copy.value.close();
      return discard(workFolder, held);
    }
    const database = held !== 'missing' && held.ok ? held.value : null;
    return succeed(staged({ backup, place, workFolder, made, found, copy: copy.value, held, database, sha256 }));
  } catch (error) {
    return discard(workFolder, fileProblem(error, place));
  }
}

function checkCopy(made: string, backup: string): Outcome<null> {
  const database = new Database(made, { readonly: true });
  try {
    return checkIntegrity(database, backup);
  } finally {
    database.close();
  }
}

interface Hold {
  readonly backup: string;
  readonly place: string;
  readonly workFolder: string;
  readonly made: string;
  readonly found: { readonly bytes: number; readonly sha256: string };
  readonly copy: Storage;
  readonly held: 'missing' | Outcome<Database.Database>;
  readonly database: Database.Database | null;
  readonly sha256: Sha256;
}

function staged({ backup, place, workFolder, made, found, copy, held, database, sha256 }: Hold): StagedRestore {
  const manifest = `${backup}.json`;

  async function finish(keptEnding: string): Promise<Outcome<string | null>> {
    const kept = held === 'missing' ? null : `${place}${keptEnding}`;
    try {
      await copy.close();
      // Who was signed in, invited or given a code when the backup was made may be none of these any more.
      const credentials = new Database(made);
      credentials.exec('DELETE FROM session; DELETE FROM invitation; UPDATE device_pass SET code_hash = NULL;');
      credentials.close();
      syncToDisk(made);
      if (kept === null) {
        if (!putInPlace(made, place)) return fileExists(place);
      } else {
        if (existsSync(kept)) return fileExists(kept);
        // From the log into the file, and no log any more that could be taken for one of the new file.
        database?.pragma('journal_mode = DELETE');
        linkSync(place, kept);
        for (const ending of besides) {
          if (existsSync(`${place}${ending}`)) renameSync(`${place}${ending}`, `${kept}${ending}`);
        }
        renameSync(made, place);
      }
      syncToDisk(dirname(place));
      if (database !== null && kept !== null) await letGo(database, kept);
      return succeed(kept);
    } catch (error) {
      return fileProblem(error, place);
    } finally {
      if (database?.open) database.close();
      rmSync(workFolder, { recursive: true, force: true });
    }
  }

  return {
    ...found,
    manifest: existsSync(manifest) ? readFileSync(manifest, 'utf8') : null,
    copy,
    inPlace:
      held === 'missing' ? 'missing' : database === null ? 'not readable' : openSqliteLedgerStore(database, { sha256 }),
    finish,
    async abandon() {
      await copy.close();
      database?.close();
      rmSync(workFolder, { recursive: true, force: true });
    },
  };
}

/** Who waits for the old file gives up before it is let go, and cannot write to it under the name of the new one. */
async function letGo(database: Database.Database, kept: string): Promise<void> {
  await delay(busyTimeoutMilliseconds + 200);
  database.close();
  const old = new Database(kept);
  old.pragma('journal_mode = WAL');
  old.close();
}

function discard(workFolder: string | undefined, problem: Outcome<never>): Outcome<never> {
  if (workFolder !== undefined) rmSync(workFolder, { recursive: true, force: true });
  return problem;
}
