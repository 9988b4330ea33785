// Makes a new, empty ledger file. Several processes may try at once and any may be killed: the file is there whole or not.
// Opening a file is in open-database.ts, its tables in schema.ts.

import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { putInPlace, systemCode } from './put-in-place.ts';
import { schemas, schemaVersion } from './schema.ts';
import { sqliteProblem } from './sqlite-problem.ts';
import { workFolderNames } from './sweep-leftovers.ts';

/**
 * Makes the file beside its place and puts it there in one step, unless another process was first. Only its owner may
 * read it, because it holds password hashes. Problems: `file-not-found` (the folder), `ledger-write-failed`.
 */
export function makeLedgerFile(path: string): Outcome<null> {
  let workFolder: string | undefined;
  try {
    workFolder = mkdtempSync(join(dirname(path), workFolderNames.ledger));
    const made = join(workFolder, 'ledger');
    const database = new Database(made);
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    database.exec(`BEGIN; ${schemas[schemaVersion]} COMMIT;`);
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
