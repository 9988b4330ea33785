import { describe, expect, it } from 'vitest';
import type { NewEntry } from '../../../src/ledger/entry.ts';
import { genesisHash, sealRow } from '../../../src/ledger/hash-chain.ts';
import type { StoredRow } from '../../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../../src/ledger/verify.ts';
import { sha256 } from '../../../src/storage/sha256.ts';
import {
  approval,
  holdPlaced,
  instant,
  plantBeforeCalibration,
  plantWithEveryKind,
  runRecorded,
} from '../../storage/plant-entries.ts';

function rowsOf(newEntries: readonly NewEntry[]): readonly StoredRow[] {
  const rows: StoredRow[] = [];
  for (const [index, entry] of newEntries.entries()) {
    rows.push(sealRow({ ...entry, seq: index + 1 }, rows.at(-1)?.hash ?? genesisHash, sha256));
  }
  return rows;
}

/** Puts a changed row in and seals it and all after it anew, as somebody would who knows how the chain is made. */
function resealed(rows: readonly StoredRow[], change: (row: StoredRow) => Partial<StoredRow>): readonly StoredRow[] {
  const again: StoredRow[] = [];
  for (const row of rows) {
    const changed = { ...row, ...change(row) };
    const content = { ...changed, body: JSON.parse(changed.body) } as Parameters<typeof sealRow>[0];
    again.push({ ...sealRow(content, again.at(-1)?.hash ?? genesisHash, sha256), body: changed.body });
  }
  return again;
}

const before = plantBeforeCalibration();
const rows = rowsOf(plantWithEveryKind());

const brokenAt = (seq: number, why: string) => ({
  ok: false,
  problem: { code: 'ledger-broken', where: `entry ${seq}`, message: expect.stringContaining(why) },
});

describe('verifyLedger', () => {
  it('passes a ledger without entries', async () => {
    expect(await verifyLedger([], sha256)).toEqual({
      ok: true,
      value: { entries: 0, approvals: 0, files: null, head: { seq: 0, hash: genesisHash }, notes: [], found: null },
    });
  });

  it('passes what was written and says where it ends', async () => {
    expect(await verifyLedger(rows, sha256)).toEqual({
      ok: true,
      value: {
        entries: rows.length,
        approvals: rows.filter(({ kind }) => kind.startsWith('calibration-approved/')).length,
        files: null,
        head: { seq: rows.length, hash: rows.at(-1)?.hash },
        notes: [],
        found: null,
      },
    });
  });

  it('finds an entry that is missing at the beginning or in between', async () => {
    expect(await verifyLedger(rows.slice(1), sha256)).toMatchObject(brokenAt(1, 'entry 2 stands in its place'));
    expect(await verifyLedger(rows.toSpliced(4, 1), sha256)).toMatchObject(brokenAt(5, 'entry 6 stands in its place'));
  });

  it('finds an entry that is there twice, or out of its order', async () => {
    expect(await verifyLedger(rows.toSpliced(4, 0, rows[3]!), sha256)).toMatchObject(brokenAt(5, 'entry 4 stands'));
    const swapped = rows.toSpliced(4, 2, rows[5]!, rows[4]!);
    expect(await verifyLedger(swapped, sha256)).toMatchObject(brokenAt(5, 'entry 6 stands'));
  });

  it('finds an entry sealed anew without those after it', async () => {
    const changed = resealed(rows.slice(0, 6), (row) => (row.seq === 6 ? { body: '{"reason":"another"}' } : {}));
    expect(await verifyLedger([...changed, ...rows.slice(6)], sha256)).toMatchObject(brokenAt(7, 'previous hash'));
  });

  it('finds a body with the same meaning in another form, even when all hashes were made anew', async () => {
    const spaced = resealed(rows, (row) => (row.seq === 3 ? { body: row.body.replace(':', ': ') } : {}));
    expect(await verifyLedger(spaced, sha256)).toMatchObject(brokenAt(3, 'not in the form it was written in'));
    const doubled = resealed(rows, (row) => (row.seq === 3 ? { body: row.body.replace('{', '{"name":"x",') } : {}));
    expect(await verifyLedger(doubled, sha256)).toMatchObject(brokenAt(3, 'not in the form it was written in'));
  });

  it('finds a body that is not JSON', async () => {
    const torn = rows.with(2, { ...rows[2]!, body: rows[2]!.body.slice(0, -1) });
    expect(await verifyLedger(torn, sha256)).toMatchObject(brokenAt(3, 'not JSON'));
  });

  it('finds a hash in capitals', async () => {
    const capital = rows.with(2, { ...rows[2]!, hash: rows[2]!.hash.toUpperCase() });
    expect(await verifyLedger(capital, sha256)).toMatchObject(brokenAt(3, 'its hash'));
  });

  it('finds a kind nobody knows', async () => {
    const unknown = resealed(rows, (row) => (row.seq === 4 ? { kind: 'person-added/9' } : {}));
    expect(await verifyLedger(unknown, sha256)).toMatchObject(brokenAt(4, '"person-added/9" is not known'));
  });

  it('finds an approval by the person who entered the run', async () => {
    const runs = [runRecorded(10, 'CAL-1'), runRecorded(11, 'CAL-2', 'quinn')];
    const own = rowsOf([...before, ...runs, approval(12, 'CAL-2', 'quinn')]);
    expect(await verifyLedger(own, sha256)).toMatchObject(brokenAt(12, '"quinn" approves calibration "CAL-2"'));
  });

  it('passes an approval by a person who entered another run', async () => {
    const runs = [runRecorded(10, 'CAL-1'), runRecorded(11, 'CAL-2', 'quinn')];
    const fair = rowsOf([...before, ...runs, approval(12, 'CAL-1', 'quinn')]);
    expect(await verifyLedger(fair, sha256)).toMatchObject({ ok: true });
  });

  it('notes a clock that went backwards, which is no failure', async () => {
    const back = rowsOf([holdPlaced(10, 'a'), holdPlaced(5, 'b'), holdPlaced(7, 'c'), holdPlaced(10, 'd')]);
    expect(await verifyLedger(back, sha256)).toMatchObject({
      ok: true,
      value: {
        notes: [
          { seq: 2, message: expect.stringContaining(instant(5)) },
          { seq: 3, message: expect.stringContaining(instant(7)) },
        ],
      },
    });
  });

  it('notes a time that is none', async () => {
    const odd = rowsOf([{ ...holdPlaced(0, 'a'), at: 'noon' }, holdPlaced(5, 'b')]);
    expect(await verifyLedger(odd, sha256)).toMatchObject({
      ok: true,
      value: { notes: [{ seq: 1, message: '"noon" is not a time.' }] },
    });
  });

  it('says where a store failed while it was read', async () => {
    function* failing(): Generator<StoredRow> {
      yield* rows.slice(0, 3);
      throw new Error('database disk image is malformed');
    }
    expect(await verifyLedger(failing(), sha256)).toMatchObject(brokenAt(4, 'database disk image is malformed'));
  });
});
