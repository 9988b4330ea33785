// Asks SQLite whether every page and index of a file is sound: rows may read well while an index beside them lies.
// What the rows say is checked by ledger/verify.ts.

import type { Database } from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';

/** Answers whether a file is sound. Problem: `ledger-broken` with the first thing SQLite found. Source: sqlite.org/pragma.html#pragma_integrity_check. */
export function checkIntegrity(database: Database, file: string): Outcome<null> {
  const found: unknown = database.pragma('integrity_check(1)', { simple: true });
  if (found === 'ok') return succeed(null);
  return fail('ledger-broken', `${file} is damaged: ${String(found)}.`, { where: file, given: String(found) });
}
