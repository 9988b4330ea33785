import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { ledgerStoreContract } from './ledger-store.contract.ts';

ledgerStoreContract('in memory', () => openMemoryStorage({ sha256 }));
