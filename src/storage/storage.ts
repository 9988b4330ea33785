// Everything one place of storage offers, opened and closed together. Each port is described in its own file.

import type { AttachmentStore } from './attachment-store.ts';
import type { CredentialStore } from './credential-store.ts';
import type { LedgerStore } from './ledger-store.ts';
import type { StoredRows } from './stored-rows.ts';

export interface Storage {
  readonly ledger: LedgerStore;
  readonly credentials: CredentialStore;
  readonly rows: StoredRows;
  readonly attachments: AttachmentStore;
  /** Closes all of it; a second time does nothing. */
  close(): Promise<void>;
}
