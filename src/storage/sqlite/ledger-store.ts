// The ledger in a SQLite file. The tables and triggers are in schema.ts, the settings in open-database.ts.
// The twin in memory is memory/ledger-store.ts.

import type { Database } from 'better-sqlite3';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import type { AnyLedgerEntry } from '../../ledger/entry.ts';
import { genesisHash, type Sha256 } from '../../ledger/hash-chain.ts';
import { sealRows } from '../../ledger/seal-rows.ts';
import { entryOfRow, type StoredRow } from '../../ledger/stored-row.ts';
import { CredentialUsedError, credentialUsed } from '../credential-used.ts';
import type { AppendRequest, LedgerHead, LedgerStore } from '../ledger-store.ts';
import type { StoredRows } from '../stored-rows.ts';
import { credentialChanger } from './change-credentials.ts';
import { sqliteProblem } from './sqlite-problem.ts';

interface AnsweredRequest {
  readonly requestHash: string;
  readonly answer: string;
  readonly firstSeq: number;
  readonly lastSeq: number;
}

/** Rows fetched at a time: a reader never holds the whole ledger, nor a transaction open between pages. */
const pageSize = 500;

/** How a row gets into the table, whoever brings it. */
export const insertEntrySql = `INSERT INTO entry (seq, at, actor, kind, subject, body, previous_hash, hash)
  VALUES (@seq, @at, @actor, @kind, @subject, @body, @previousHash, @hash)`;

const columns = 'seq, at, actor, kind, subject, body, previous_hash AS previousHash, hash';

export function openSqliteLedgerStore(
  database: Database,
  { sha256 }: { readonly sha256: Sha256 },
): LedgerStore & StoredRows {
  const readHead = database.prepare<[], LedgerHead>('SELECT seq, hash FROM entry ORDER BY seq DESC LIMIT 1');
  const readPage = database.prepare<[number, number], StoredRow>(
    `SELECT ${columns} FROM entry WHERE seq > ? ORDER BY seq LIMIT ?`,
  );
  const readRange = database.prepare<[number, number], StoredRow>(
    `SELECT ${columns} FROM entry WHERE seq BETWEEN ? AND ? ORDER BY seq`,
  );
  const readAnswered = database.prepare<[string], AnsweredRequest>(
    `SELECT request_hash AS requestHash, answer, first_seq AS firstSeq, last_seq AS lastSeq
     FROM answered_request WHERE key = ?`,
  );
  const insertEntry = database.prepare<[StoredRow]>(insertEntrySql);
  const insertAnswered = database.prepare<[AnsweredRequest & { readonly key: string }]>(
    `INSERT INTO answered_request (key, request_hash, answer, first_seq, last_seq)
     VALUES (@key, @requestHash, @answer, @firstSeq, @lastSeq)`,
  );

  // Prepared with the first change: the ledger of an older version is read before it has these tables.
  let makeChanges: ReturnType<typeof credentialChanger> | undefined;

  const head = (): LedgerHead => readHead.get() ?? { seq: 0, hash: genesisHash };

  async function* readStoredRows(afterSeq: number): AsyncGenerator<StoredRow> {
    let last = afterSeq;
    for (;;) {
      const page = readPage.all(last, pageSize);
      yield* page;
      if (page.length < pageSize) return;
      last = page.at(-1)?.seq ?? last;
    }
  }

  async function* readEntries(afterSeq: number): AsyncGenerator<AnyLedgerEntry> {
    for await (const row of readStoredRows(afterSeq)) yield entryOfRow(row);
  }

  const append = database.transaction((request: AppendRequest): Outcome<readonly AnyLedgerEntry[]> => {
    const { idempotency, expectedSeq } = request;
    const answered = idempotency === undefined ? undefined : readAnswered.get(idempotency.key);
    if (idempotency !== undefined && answered !== undefined) {
      if (answered.requestHash !== idempotency.requestHash) return keyReused(idempotency.key);
      return succeed(readRange.all(answered.firstSeq, answered.lastSeq).map(entryOfRow));
    }
    const before = head();
    if (before.seq !== expectedSeq) {
      return fail('ledger-conflict', `The ledger is at entry ${before.seq}, not at ${expectedSeq}; read again.`);
    }
    const sealed = sealRows(request.entries, before, sha256);
    if (!sealed.ok) return sealed;
    for (const row of sealed.value) insertEntry.run(row);
    if (request.besides !== undefined) {
      makeChanges ??= credentialChanger(database);
      makeChanges(request.besides);
    }
    const entries = sealed.value.map(entryOfRow);
    if (idempotency !== undefined) {
      const { key, requestHash } = idempotency;
      const answer = idempotency.answer(entries);
      insertAnswered.run({ key, requestHash, answer, firstSeq: before.seq + 1, lastSeq: before.seq + entries.length });
    }
    return succeed(entries);
  });

  return {
    readStoredRows,
    readEntries,
    async head() {
      return head();
    },
    async append(request) {
      try {
        return append.immediate(request);
      } catch (error) {
        if (error instanceof CredentialUsedError) return credentialUsed();
        return sqliteProblem(error, database.name);
      }
    },
    async rememberedAnswer({ key, requestHash }) {
      const answered = readAnswered.get(key);
      if (answered === undefined) return succeed(null);
      return answered.requestHash === requestHash ? succeed(answered.answer) : keyReused(key);
    },
    async close() {
      database.close();
    },
  };
}

function keyReused(key: string): Outcome<never> {
  return fail('key-reused', 'This idempotency key was used before, for another request.', { given: key });
}
