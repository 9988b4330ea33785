// Append, then verify passes; any byte flipped in any stored entry, and verify names that entry.

import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { NewEntry } from '../../src/ledger/entry.ts';
import type { StoredRow } from '../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { plantWithEveryKind } from '../storage/plant-entries.ts';
import { ledgerHistory, rowsOfHistory } from './ledger-history.ts';

const textColumns = ['at', 'actor', 'kind', 'subject', 'body', 'previousHash', 'hash'] as const;
type TextColumn = (typeof textColumns)[number];

/** Where to flip: an entry, one of its columns, a byte of it and a bit of that; each taken modulo what there is. */
const place = fc.record({ entry: fc.nat(), column: fc.constantFrom(...textColumns), byte: fc.nat(), bit: fc.nat(7) });

function flip(text: string, byte: number, bit: number): Buffer {
  const bytes = Buffer.from(text, 'utf8');
  const index = byte % bytes.length;
  bytes.writeUInt8(bytes.readUInt8(index) ^ (1 << bit), index);
  return bytes;
}

async function appendInParts(history: readonly NewEntry[], sizes: readonly number[]) {
  const storage = openMemoryStorage({ sha256 });
  let done = 0;
  for (let part = 0; done < history.length; part += 1) {
    const entries = history.slice(done, done + (sizes[part % sizes.length] ?? 1));
    outcomeValue(await storage.ledger.append({ entries, expectedSeq: done }));
    done += entries.length;
  }
  return storage;
}

describe('a ledger as it was appended', () => {
  it('verifies, whatever was said in it and in whichever portions', async () => {
    const sizes = fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(ledgerHistory(30), sizes, async (history, portions) => {
        const storage = await appendInParts(history, portions);
        expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({
          ok: true,
          value: { entries: history.length, head: await storage.ledger.head() },
        });
      }),
    );
  });
});

describe('verifying rows of which one was tampered with', () => {
  const named = (row: StoredRow) => ({ ok: false, problem: { code: 'ledger-broken', where: `entry ${row.seq}` } });

  it('names the entry in which any bit of any text was flipped', async () => {
    await fc.assert(
      fc.asyncProperty(ledgerHistory(20), place, async (history, { entry, column, byte, bit }) => {
        const rows = rowsOfHistory(history);
        const index = entry % rows.length;
        const row = rows[index]!;
        fc.pre(row[column] !== '');
        const tampered = rows.with(index, { ...row, [column]: flip(row[column], byte, bit).toString('utf8') });
        expect(await verifyLedger(tampered, sha256)).toMatchObject(named(row));
      }),
      { numRuns: 1000 },
    );
  });

  it('names the entry whose number was changed', async () => {
    await fc.assert(
      fc.asyncProperty(ledgerHistory(20), fc.nat(), fc.integer(), async (history, entry, number) => {
        const rows = rowsOfHistory(history);
        const row = rows[entry % rows.length]!;
        fc.pre(number !== row.seq);
        const tampered = rows.with(row.seq - 1, { ...row, seq: number });
        expect(await verifyLedger(tampered, sha256)).toMatchObject(named(row));
      }),
    );
  });

  it('names the place of an entry that was taken out anywhere but at the end', async () => {
    await fc.assert(
      fc.asyncProperty(ledgerHistory(20), fc.nat(), async (history, entry) => {
        const rows = rowsOfHistory(history);
        fc.pre(rows.length > 1);
        const row = rows[entry % (rows.length - 1)]!;
        expect(await verifyLedger(rows.toSpliced(row.seq - 1, 1), sha256)).toMatchObject(named(row));
      }),
    );
  });
});

describe('verifying a ledger file tampered with by somebody who removed the triggers', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
  const sound = join(folder, 'sound.ledger');
  const tampered = join(folder, 'tampered.ledger');
  const columnNames: Readonly<Record<TextColumn, string>> = {
    at: 'at',
    actor: 'actor',
    kind: 'kind',
    subject: 'subject',
    body: 'body',
    previousHash: 'previous_hash',
    hash: 'hash',
  };

  beforeAll(async () => {
    const storage = outcomeValue(openSqliteStorage(sound, { sha256, mode: 'create' }));
    outcomeValue(await storage.ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0 }));
    await storage.close();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  function tamper(seq: number, column: TextColumn, byte: number, bit: number): void {
    copyFileSync(sound, tampered);
    const database = new Database(tampered);
    database.exec('DROP TRIGGER entry_is_never_changed');
    database.pragma('ignore_check_constraints = ON');
    const name = columnNames[column];
    const text = database.prepare<[number], string>(`SELECT ${name} FROM entry WHERE seq = ?`).pluck().get(seq);
    const flipped = flip(text ?? '', byte, bit);
    database.prepare(`UPDATE entry SET ${name} = CAST(? AS TEXT) WHERE seq = ?`).run(flipped, seq);
    database.close();
  }

  it('names the entry in which any bit was flipped', async () => {
    await fc.assert(
      fc.asyncProperty(place, async ({ entry, column, byte, bit }) => {
        const seq = 1 + (entry % plantWithEveryKind().length);
        tamper(seq, column, byte, bit);
        const storage = outcomeValue(openSqliteStorage(tampered, { sha256, mode: 'read-only' }));
        expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({
          ok: false,
          problem: { code: 'ledger-broken', where: `entry ${seq}` },
        });
        await storage.close();
      }),
      { numRuns: 150 },
    );
  });
});
