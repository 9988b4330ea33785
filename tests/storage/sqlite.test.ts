import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { ledgerStoreContract } from './ledger-store.contract.ts';

const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
let files = 0;

afterAll(() => rmSync(folder, { recursive: true, force: true }));

ledgerStoreContract('in a SQLite file', () => {
  files += 1;
  return outcomeValue(openSqliteStorage(join(folder, `plant-${files}.ledger`), { sha256, mode: 'create' }));
});
