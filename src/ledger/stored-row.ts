// An entry as a store keeps it: the columns of the table, the body as its canonical JSON text.
// How a row is made is in hash-chain.ts; what reads rows back without trusting them is verify.ts.

import type { AnyLedgerEntry } from './entry.ts';

export interface StoredRow {
  readonly seq: number;
  readonly at: string;
  readonly actor: string;
  readonly kind: string;
  readonly subject: string;
  /** RFC 8785 text of the body, so that the stored text itself is what was hashed. */
  readonly body: string;
  readonly previousHash: string;
  readonly hash: string;
}

/** Answers the entry a row holds. The row is trusted: an unknown kind is found by replay.ts, a changed row by verify.ts. */
export function entryOfRow(row: StoredRow): AnyLedgerEntry {
  const body: unknown = JSON.parse(row.body);
  return { ...row, body } as AnyLedgerEntry;
}
