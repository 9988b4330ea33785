// The port every ledger store fulfils; memory/ and sqlite/ are its twins, PostgreSQL follows the same file names.
// Who people are for signing in is behind credential-store.ts, in tables of their own and never in entries.

import type { Outcome } from '../domain/problem.ts';
import type { AnyLedgerEntry, NewEntry } from '../ledger/entry.ts';
import type { CredentialChange } from './credential-store.ts';

export interface LedgerHead {
  readonly seq: number;
  readonly hash: string;
}

/** A retry carries the same key and gets the first answer; another body under the same key is `key-reused`. */
export interface IdempotencyKey {
  readonly key: string;
  /** SHA-256 of what was asked, in hexadecimal. */
  readonly requestHash: string;
}

export interface AppendRequest {
  readonly entries: readonly NewEntry[];
  /** The head the caller decided on; another head is `ledger-conflict`, so that no decision rests on an old state. */
  readonly expectedSeq: number;
  /** Changes of credentials in the same transaction; a retry under an answered key makes none. */
  readonly besides?: readonly CredentialChange[];
  readonly idempotency?: IdempotencyKey & {
    /** What to answer a retry with, given the entries as appended; JSON. */
    readonly answer: (entries: readonly AnyLedgerEntry[]) => string;
  };
}

export interface LedgerStore {
  /** Entries after a sequence number, oldest first, in pages. */
  readEntries(afterSeq: number): AsyncIterable<AnyLedgerEntry>;
  head(): Promise<LedgerHead>;
  /**
   * One user action in one transaction: all entries durable, or none. A retry under an answered key appends nothing and
   * gets the entries of the first time back, which may lie before the head the caller already knows.
   * Problems: `ledger-conflict`, `key-reused`, `approver-is-enterer`, `field-invalid`, `ledger-locked`, `ledger-write-failed`.
   */
  append(request: AppendRequest): Promise<Outcome<readonly AnyLedgerEntry[]>>;
  /** The answer given before under this key; null when the key is new; `key-reused` when the request differs. */
  rememberedAnswer(key: IdempotencyKey): Promise<Outcome<string | null>>;
  close(): Promise<void>;
}
