// Makes a new, empty ledger file. Several processes may try at once and any may be killed: the file is there whole or not.
// Opening a file is in open-database.ts, its tables in schema.ts.

import { chmodSync, constants, copyFileSync, linkSync, mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { schema } from './schema.ts';
import { sqliteProblem } from './sqlite-problem.ts';

/**
 * Makes the file beside its place and puts it there in one step, unless another process was first. Only its owner may
 * read it, because it holds password hashes. Problems: `file-not-found` (the folder), `ledger-write-failed`.
 */
export function makeLedgerFile(path: string): Outcome<null> {
  let workFolder: string | undefined;
  try {
    workFolder = mkdtempSync(join(dirname(path), '.new-ledger-'));
    const made = join(workFolder, 'ledger');
    const database = new Database(made);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    database.exec(`BEGIN; ${schema} COMMIT;`);
    // Closing moves everything from the log into the file.
    database.close();
    chmodSync(made, 0o600);
    putInPlace(made, path);
    return succeed(null);
  } catch (error) {
    const code = systemCode(error);
    if (code === undefined) return sqliteProblem(error, path);
    if (code === 'ENOENT' || code === 'ENOTDIR') {
      return fail('file-not-found', `The folder for ${path} does not exist.`, { given: path });
    }
    return fail('ledger-write-failed', `${path} cannot be made here (${code}); choose another folder.`, {
      given: code,
    });
  } finally {
    if (workFolder !== undefined) rmSync(workFolder, { recursive: true, force: true });
  }
}

/** A link appears whole or not at all and never replaces a file; a disk that knows no links gets an exclusive copy. */
function putInPlace(made: string, path: string): void {
  try {
    linkSync(made, path);
  } catch (error) {
    const code = systemCode(error);
    if (code === 'EEXIST') return;
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'ENOSYS') throw error;
    copyFileSync(made, path, constants.COPYFILE_EXCL);
  }
}

/** The name of an error of the operating system; undefined for any other error. */
function systemCode(error: unknown): string | undefined {
  const isSystemError = error instanceof Error && 'syscall' in error && 'code' in error;
  return isSystemError ? String(error.code) : undefined;
}
