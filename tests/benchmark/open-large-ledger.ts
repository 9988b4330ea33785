// A process of its own that opens, verifies and replays a ledger, then says how long it took and the most memory it had.
// Argument: the ledger file. The ledger is made by large-ledger.ts.

import { createReplay } from '../../src/ledger/replay.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';

const [file] = process.argv.slice(2);
if (file === undefined) throw new Error('The ledger file is missing.');
const start = performance.now();
const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'existing' }));
const { entries } = outcomeValue(await verifyLedger(storage.rows.readStoredRows(0), sha256));
const verified = performance.now();
const { state, apply } = createReplay();
for await (const entry of storage.ledger.readEntries(0)) apply(entry);
const end = performance.now();
if (state.head.seq !== entries) throw new Error('Replay and verification ended at different entries.');
console.log(
  JSON.stringify({
    entries,
    verifySeconds: (verified - start) / 1000,
    totalSeconds: (end - start) / 1000,
    // The kernel counts in units of 1024 bytes.
    mostMegabytes: (process.resourceUsage().maxRSS * 1024) / 1e6,
  }),
);
await storage.close();
