// Storage in memory: gone when the process ends. The twin on disk is sqlite/open-storage.ts.

import type { Sha256 } from '../../ledger/hash-chain.ts';
import type { Storage } from '../storage.ts';
import { openMemoryAttachmentStore } from './attachment-store.ts';
import { openMemoryCredentialStore } from './credential-store.ts';
import { openMemoryLedgerStore } from './ledger-store.ts';

export function openMemoryStorage(options: { readonly sha256: Sha256 }): Storage {
  const credentials = openMemoryCredentialStore();
  const ledger = openMemoryLedgerStore({ ...options, makeChanges: credentials.makeChanges });
  const attachments = openMemoryAttachmentStore();
  return { ledger, rows: ledger, credentials, attachments, close: () => ledger.close() };
}
