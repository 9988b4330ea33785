// A process of its own that appends one action after another and says each sequence number once it is acknowledged.
// Argument: the ledger file. It ends when it is killed; the rounds are in kill-rounds.ts.

import { writeSync } from 'node:fs';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { holdPlaced, plantBeforeCalibration } from '../storage/plant-entries.ts';

const [file] = process.argv.slice(2);
if (file === undefined) throw new Error('The ledger file is missing.');
const { ledger } = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
let { seq } = await ledger.head();
if (seq === 0) {
  seq = outcomeValue(await ledger.append({ entries: plantBeforeCalibration(), expectedSeq: 0 })).length;
}
for (;;) {
  const parts = 1 + (seq % 3);
  const entries = Array.from(
    { length: parts },
    (_, part): NewEntry => holdPlaced(seq + part, `part ${part + 1} of ${parts}`),
  );
  const key = `action after ${seq}`;
  const appended = outcomeValue(
    await ledger.append({
      entries,
      expectedSeq: seq,
      idempotency: { key, requestHash: key, answer: (stored) => String(stored.at(-1)?.seq) },
    }),
  );
  seq += appended.length;
  writeSync(1, `${seq}\n`);
}
