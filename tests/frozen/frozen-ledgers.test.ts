// Every ledger that was ever frozen opens, verifies and replays to what was written down when it was made.

import { copyFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { entryKinds } from '../../src/ledger/entry.ts';
import { createReplay } from '../../src/ledger/replay.ts';
import { entryOfRow } from '../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { stateDigests } from '../state-digests.ts';
import { collect } from '../storage/collect.ts';
import { holdPlaced } from '../storage/plant-entries.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';

interface FrozenRecord {
  readonly version: string;
  readonly entries: number;
  readonly head: { readonly seq: number; readonly hash: string };
  readonly digests: Readonly<Record<string, string>>;
}

const folder = import.meta.dirname;
const records = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as FrozenRecord);

describe('a frozen ledger', () => {
  it('is there for this version, with every kind of entry', async () => {
    const { version } = JSON.parse(readFileSync(join(folder, '../../package.json'), 'utf8'));
    expect(records.map((record) => record.version)).toContain(version);
    const copy = join(temporaryFolder(), 'plant.ledger');
    copyFileSync(join(folder, `${version}.ledger`), copy);
    const storage = outcomeValue(openSqliteStorage(copy, { sha256, mode: 'existing' }));
    const kinds = (await collect(storage.rows.readStoredRows(0))).map(({ kind }) => kind);
    await storage.close();
    expect([...new Set(kinds)].sort()).toEqual([...entryKinds].sort());
  });

  it.each(records)('of version $version verifies and replays to the same plant', async (record) => {
    const copy = join(temporaryFolder(), 'plant.ledger');
    copyFileSync(join(folder, `${record.version}.ledger`), copy);
    const storage = outcomeValue(openSqliteStorage(copy, { sha256, mode: 'existing' }));
    const rows = await collect(storage.rows.readStoredRows(0));
    expect(outcomeValue(await verifyLedger(rows, sha256))).toMatchObject({
      entries: record.entries,
      head: record.head,
    });
    const { state, apply } = createReplay();
    for (const row of rows) apply(entryOfRow(row));
    expect(stateDigests(state)).toMatchObject(record.digests);
    // It is written to as any other.
    const entries = [holdPlaced(0, 'after the frost', 'P-1')];
    outcomeValue(await storage.ledger.append({ entries, expectedSeq: record.head.seq }));
    expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({ ok: true });
    await storage.close();
  });
});
