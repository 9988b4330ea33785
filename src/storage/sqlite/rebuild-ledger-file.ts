// A new ledger file from rows that were exported, each kept as it was. What the rows must be is checked by
// service/rebuild-ledger.ts and, as in every append, by the triggers of schema.ts.

import { mkdtempSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { type Outcome, succeed } from '../../domain/problem.ts';
import type { StoredRow } from '../../ledger/stored-row.ts';
import type { StoredAttachment } from '../attachment-store.ts';
import { insertAttachmentSql } from './attachment-store.ts';
import { syncToDisk } from './durable-file.ts';
import { fileExists, fileProblem } from './file-problem.ts';
import { insertEntrySql } from './ledger-store.ts';
import { openDatabase } from './open-database.ts';
import { putInPlace } from './put-in-place.ts';
import { workFolderNames } from './sweep-leftovers.ts';

/** Makes the file with these rows, or makes none. Problems: `file-exists`, `file-not-found`, `approver-is-enterer`, `ledger-write-failed`. */
export function rebuildLedgerFile(
  file: string,
  rows: readonly StoredRow[],
  attachments: readonly StoredAttachment[],
): Outcome<null> {
  const path = resolve(file);
  let workFolder: string | undefined;
  try {
    workFolder = mkdtempSync(join(dirname(path), workFolderNames.ledger));
    const made = join(workFolder, 'ledger');
    const database = openDatabase(made, { mode: 'create' });
    if (!database.ok) return database;
    try {
      const insert = database.value.prepare<[StoredRow]>(insertEntrySql);
      const keep = database.value.prepare<[StoredAttachment]>(insertAttachmentSql);
      database.value.transaction(() => {
        for (const attachment of attachments) keep.run(attachment);
        for (const row of rows) insert.run(row);
      })();
    } finally {
      database.value.close();
    }
    syncToDisk(made);
    if (!putInPlace(made, path)) return fileExists(path);
    syncToDisk(dirname(path));
    return succeed(null);
  } catch (error) {
    return fileProblem(error, path);
  } finally {
    if (workFolder !== undefined) rmSync(workFolder, { recursive: true, force: true });
  }
}
