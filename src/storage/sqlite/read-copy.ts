// A ledger in a folder that may not be written to, read from a copy in memory: SQLite needs to write beside a file it opens.
// Everything else is opened by open-database.ts.

import { accessSync, constants, copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';

/** Whether nothing can be made in the folder of a file: a read-only mount, or a folder of somebody else's. */
export function isInReadOnlyFolder(file: string): boolean {
  try {
    accessSync(dirname(file), constants.W_OK);
    return false;
  } catch {
    return true;
  }
}

/** Where the header of a database names the versions that may write and read it; 1 is without a log, 2 with one. Source: sqlite.org/fileformat.html 1.3.3. */
const versionsInHeader = [18, 19] as const;

/**
 * Answers a database in memory with what the file holds, the log beside it included. It can be read and not written.
 * What another machine writes meanwhile is in it or not; half of it does not pass the hashes of the entries.
 */
export function openReadCopy(file: string): Database.Database {
  const log = `${file}-wal`;
  const bytes = existsSync(log) && statSync(log).size > 0 ? mergedWithLog(file, log) : readFileSync(file);
  // A database in memory has no log; everything of it is in the bytes by now.
  for (const at of versionsInHeader) if (bytes.length > at && bytes.readUInt8(at) === 2) bytes.writeUInt8(1, at);
  return new Database(bytes, { readonly: true });
}

function mergedWithLog(file: string, log: string): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
  try {
    const copy = join(folder, 'ledger');
    copyFileSync(file, copy);
    copyFileSync(log, `${copy}-wal`);
    const database = new Database(copy);
    try {
      database.pragma('wal_checkpoint(TRUNCATE)');
    } finally {
      database.close();
    }
    return readFileSync(copy);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
