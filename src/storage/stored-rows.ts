// The port the verifier reads through: rows exactly as they are stored, nothing parsed, nothing trusted.

import type { StoredRow } from '../ledger/stored-row.ts';

export interface StoredRows {
  /** Rows after a sequence number, oldest first, in pages. Throws where the store cannot be read. */
  readStoredRows(afterSeq: number): AsyncIterable<StoredRow>;
}
