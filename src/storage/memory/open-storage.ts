// Storage in memory: gone when the process ends. The twin on disk is sqlite/open-storage.ts.

import type { Sha256 } from '../../ledger/hash-chain.ts';
import type { Storage } from '../storage.ts';
import { openMemoryCredentialStore } from './credential-store.ts';
import { openMemoryLedgerStore } from './ledger-store.ts';

export function openMemoryStorage(options: { readonly sha256: Sha256 }): Storage {
  const ledger = openMemoryLedgerStore(options);
  return { ledger, rows: ledger, credentials: openMemoryCredentialStore(), close: () => ledger.close() };
}
