// Replaying a prefix gives the state as it was at that time; stores agree; what is written once reads the same for ever.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { createReplay, replay } from '../../src/ledger/replay.ts';
import { entryOfRow } from '../../src/ledger/stored-row.ts';
import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { ledgerHistory, rowsOfHistory } from './ledger-history.ts';

describe('replay', () => {
  it('of a prefix is the state the plant had then', () => {
    fc.assert(
      fc.property(ledgerHistory(25), (history) => {
        const entries = rowsOfHistory(history).map(entryOfRow);
        const live = createReplay();
        for (const [index, entry] of entries.entries()) {
          live.apply(entry);
          const then = structuredClone(live.state);
          expect(replay(entries.slice(0, index + 1))).toEqual(then);
        }
      }),
      { numRuns: 50 },
    );
  });

  it('may stop anywhere and go on from there, leaving the earlier state as it was', () => {
    fc.assert(
      fc.property(ledgerHistory(25), fc.nat(), (history, stop) => {
        const entries = rowsOfHistory(history).map(entryOfRow);
        const cut = stop % (entries.length + 1);
        const earlier = replay(entries.slice(0, cut));
        const then = structuredClone(earlier);
        expect(replay(entries.slice(cut), earlier)).toEqual(replay(entries));
        expect(earlier).toEqual(then);
      }),
    );
  });
});

describe('the stores', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  let files = 0;

  it('give identical entries, heads and states for the same history', async () => {
    await fc.assert(
      fc.asyncProperty(ledgerHistory(25), async (entries) => {
        files += 1;
        const file = join(folder, `${files}.ledger`);
        const onDisk = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
        const inMemory = openMemoryStorage({ sha256 });
        const appended = outcomeValue(await onDisk.ledger.append({ entries, expectedSeq: 0 }));
        expect(outcomeValue(await inMemory.ledger.append({ entries, expectedSeq: 0 }))).toStrictEqual(appended);
        expect(await onDisk.ledger.head()).toEqual(await inMemory.ledger.head());
        const read = await collect(onDisk.ledger.readEntries(0));
        expect(read).toStrictEqual(appended);
        expect(replay(read)).toEqual(replay(await collect(inMemory.ledger.readEntries(0))));
        await onDisk.close();
      }),
      { numRuns: 40 },
    );
  });
});
