// One server to a ledger file: a lock on a file beside it, which the operating system takes back when the process ends.
// Short commands need none: they and the server take turns by SQLite's own locks.

import { existsSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import Database from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { fileProblem } from './file-problem.ts';
import { systemCode } from './put-in-place.ts';

export interface Lease {
  release(): void;
}

/** On a full disk the lock still holds; only the words about its holder are missing. */
function note(file: string, holder: string): void {
  try {
    writeFileSync(file, `${holder}\n`, { mode: 0o600 });
  } catch (error) {
    if (systemCode(error) !== 'ENOSPC') throw error;
  }
}

/**
 * Takes the ledger for this process, in words that tell another one who has it. A process that was killed holds nothing.
 * Problems: `ledger-locked` naming the holder, or that the file has a second name, `ledger-write-failed` where the folder may not be written to.
 */
export function takeLease(ledger: string, holder: string): Outcome<Lease> {
  const file = existsSync(ledger) ? realpathSync(ledger) : resolve(ledger);
  const noted = `${file}.held-by`;
  // A second name has a log of its own: two programs would write past each other.
  const names = statSync(file, { throwIfNoEntry: false })?.nlink ?? 1;
  if (names > 1) {
    return fail('ledger-locked', `${ledger} has ${names} names on this disk (hard links); only one may be left.`, {
      where: ledger,
      needed: 'one name',
      given: `${names} names`,
    });
  }
  let lock: Database.Database | undefined;
  try {
    // The note is a file of its own: closing another handle on a locked file would give up the lock.
    lock = new Database(`${file}.lease`, { timeout: 0 });
    lock.exec('BEGIN EXCLUSIVE');
    note(noted, holder);
    const held = lock;
    return succeed({
      release() {
        if (!held.open) return;
        rmSync(noted, { force: true });
        held.close();
      },
    });
  } catch (error) {
    lock?.close();
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')) {
      const by = existsSync(noted) ? readFileSync(noted, 'utf8').trim() : 'another process';
      return fail('ledger-locked', `${ledger} is held by ${by}. Stop it first.`, { where: ledger, given: by });
    }
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_CANTOPEN')) {
      return fail('ledger-write-failed', `${ledger}: nothing can be written in its folder, so it cannot be held.`, {
        given: error.code,
      });
    }
    return fileProblem(error, ledger);
  }
}
