// Storage in one SQLite file: the ledger, and beside it credentials and sessions. The twin is memory/open-storage.ts.

import { type Outcome, succeed } from '../../domain/problem.ts';
import type { Sha256 } from '../../ledger/hash-chain.ts';
import type { Storage } from '../storage.ts';
import { openSqliteAttachmentStore } from './attachment-store.ts';
import { openSqliteCredentialStore } from './credential-store.ts';
import { openSqliteLedgerStore } from './ledger-store.ts';
import { type OpenMode, openDatabase } from './open-database.ts';
import { sqliteProblem } from './sqlite-problem.ts';

/** Opens a ledger file. Problems: those of `openDatabase`. */
export function openSqliteStorage(
  file: string,
  { sha256, mode }: { readonly sha256: Sha256; readonly mode: OpenMode },
): Outcome<Storage> {
  const database = openDatabase(file, { mode });
  if (!database.ok) return database;
  try {
    const ledger = openSqliteLedgerStore(database.value, { sha256 });
    const credentials = openSqliteCredentialStore(database.value);
    const attachments = openSqliteAttachmentStore(database.value);
    return succeed({ ledger, rows: ledger, credentials, attachments, close: () => ledger.close() });
  } catch (error) {
    // The statements of the stores do not fit the tables: damage that got past the look at the header.
    database.value.close();
    return sqliteProblem(error, file);
  }
}
