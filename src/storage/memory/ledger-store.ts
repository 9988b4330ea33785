// The ledger in memory, kept as the same rows the table holds. The twin on disk is sqlite/ledger-store.ts.

import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import type { AnyLedgerEntry } from '../../ledger/entry.ts';
import { genesisHash, type Sha256 } from '../../ledger/hash-chain.ts';
import { sealRows } from '../../ledger/seal-rows.ts';
import { entryOfRow, type StoredRow } from '../../ledger/stored-row.ts';
import { CredentialUsedError, credentialUsed } from '../credential-used.ts';
import type { AppendRequest, LedgerHead, LedgerStore } from '../ledger-store.ts';
import type { StoredRows } from '../stored-rows.ts';
import type { MemoryCredentialStore } from './credential-store.ts';

interface AnsweredRequest {
  readonly requestHash: string;
  readonly answer: string;
  readonly firstSeq: number;
  readonly lastSeq: number;
}

interface MemoryLedgerOptions extends Pick<MemoryCredentialStore, 'makeChanges'> {
  readonly sha256: Sha256;
}

export function openMemoryLedgerStore({ sha256, makeChanges }: MemoryLedgerOptions): LedgerStore & StoredRows {
  const rows: StoredRow[] = [];
  const answeredRequests = new Map<string, AnsweredRequest>();

  const head = (): LedgerHead => {
    const last = rows.at(-1);
    return last === undefined ? { seq: 0, hash: genesisHash } : { seq: last.seq, hash: last.hash };
  };

  async function* readStoredRows(afterSeq: number): AsyncGenerator<StoredRow> {
    for (let index = afterSeq; index < rows.length; index += 1) yield rows[index]!;
  }

  async function* readEntries(afterSeq: number): AsyncGenerator<AnyLedgerEntry> {
    for await (const row of readStoredRows(afterSeq)) yield entryOfRow(row);
  }

  function append(request: AppendRequest): Outcome<readonly AnyLedgerEntry[]> {
    const { idempotency, expectedSeq } = request;
    const answered = idempotency === undefined ? undefined : answeredRequests.get(idempotency.key);
    if (idempotency !== undefined && answered !== undefined) {
      if (answered.requestHash !== idempotency.requestHash) return keyReused(idempotency.key);
      return succeed(rows.slice(answered.firstSeq - 1, answered.lastSeq).map(entryOfRow));
    }
    const before = head();
    if (before.seq !== expectedSeq) {
      return fail('ledger-conflict', `The ledger is at entry ${before.seq}, not at ${expectedSeq}; read again.`);
    }
    const sealed = sealRows(request.entries, before, sha256);
    if (!sealed.ok) return sealed;
    const newRows = sealed.value;
    if (newRows.some((row) => approvesOwnRun(row, rows) || approvesOwnRun(row, newRows))) {
      return fail('approver-is-enterer', 'A calibration is never approved by the person who entered it.');
    }
    const entries = newRows.map(entryOfRow);
    const answer = idempotency?.answer(entries);
    makeChanges(request.besides ?? []);
    rows.push(...newRows);
    if (idempotency !== undefined && answer !== undefined) {
      const { key, requestHash } = idempotency;
      answeredRequests.set(key, {
        requestHash,
        answer,
        firstSeq: before.seq + 1,
        lastSeq: before.seq + entries.length,
      });
    }
    return succeed(entries);
  }

  return {
    readStoredRows,
    readEntries,
    async head() {
      return head();
    },
    async append(request) {
      try {
        return append(request);
      } catch (error) {
        if (error instanceof CredentialUsedError) return credentialUsed();
        throw error;
      }
    },
    async rememberedAnswer({ key, requestHash }) {
      const answered = answeredRequests.get(key);
      if (answered === undefined) return succeed(null);
      return answered.requestHash === requestHash ? succeed(answered.answer) : keyReused(key);
    },
    async close() {},
  };
}

function approvesOwnRun(approval: StoredRow, rows: readonly StoredRow[]): boolean {
  if (!approval.kind.startsWith('calibration-approved/')) return false;
  return rows.some(
    (row) => row.kind.startsWith('run-recorded/') && row.subject === approval.subject && row.actor === approval.actor,
  );
}

function keyReused(key: string): Outcome<never> {
  return fail('key-reused', 'This idempotency key was used before, for another request.', { given: key });
}
