// The port for what signing in needs: password hashes and sessions. Kept beside the ledger, never in its entries.

import type { Outcome } from '../domain/problem.ts';

export interface StoredSession {
  readonly tokenHash: string;
  readonly person: string;
  readonly createdAt: string;
  readonly expiresAt: string;
}

export interface CredentialStore {
  passwordHash(person: string): Promise<string | null>;
  /** Writes fail as `LedgerStore.append` does: `ledger-locked`, `ledger-write-failed`. */
  setPasswordHash(person: string, hash: string): Promise<Outcome<null>>;
  addSession(session: StoredSession): Promise<Outcome<null>>;
  session(tokenHash: string): Promise<StoredSession | null>;
  removeSession(tokenHash: string): Promise<Outcome<null>>;
}
