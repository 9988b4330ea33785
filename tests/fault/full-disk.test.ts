// A disk that is full: the action is refused in words, what was acknowledged stays, and work goes on once there is room.

import { join } from 'node:path';
import { expect, it } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteLedgerStore } from '../../src/storage/sqlite/ledger-store.ts';
import { openDatabase } from '../../src/storage/sqlite/open-database.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { holdPlaced, runRecorded } from '../storage/plant-entries.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';

it('refuses an action on a full disk as a whole, and takes it once there is room', async () => {
  const file = join(temporaryFolder(), 'plant.ledger');
  const database = outcomeValue(openDatabase(file, { mode: 'create' }));
  const ledger = openSqliteLedgerStore(database, { sha256 });
  const verified = () => verifyLedger(ledger.readStoredRows(0), sha256);
  // SQLite says the same as on a full disk when a file may not grow beyond so many pages.
  const pages = Number(database.pragma('page_count', { simple: true }));
  database.pragma(`max_page_count = ${pages + 12}`);
  const append = async (seq: number) => {
    const key = `action after ${seq}`;
    const entries = [holdPlaced(seq, 'before the run'), runRecorded(seq, `CAL-${seq}`)];
    const idempotency = { key, requestHash: key, answer: () => '"stored"' };
    return ledger.append({ entries, expectedSeq: seq, idempotency });
  };

  let acknowledged = 0;
  let last = await append(0);
  while (last.ok && acknowledged < 1000) {
    acknowledged += 2;
    last = await append(acknowledged);
  }
  expect(acknowledged).toBeGreaterThan(2);
  expect(last).toMatchObject({ ok: false, problem: { code: 'ledger-write-failed', given: 'SQLITE_FULL' } });
  expect(last.ok ? '' : last.problem.message).toContain('The disk is full; nothing was stored.');

  expect(await ledger.head()).toMatchObject({ seq: acknowledged });
  expect(await collect(ledger.readEntries(0))).toHaveLength(acknowledged);
  expect(await verified()).toMatchObject({ ok: true, value: { entries: acknowledged } });
  const key = `action after ${acknowledged}`;
  expect(await ledger.rememberedAnswer({ key, requestHash: key })).toEqual({ ok: true, value: null });

  database.pragma('max_page_count = 1000000');
  expect(await append(acknowledged)).toMatchObject({ ok: true });
  expect(await verified()).toMatchObject({ ok: true, value: { entries: acknowledged + 2 } });
  await ledger.close();
});
