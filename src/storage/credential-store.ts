// The port for what signing in needs: password hashes and sessions. Kept beside the ledger, never in its entries.

export interface StoredSession {
  readonly tokenHash: string;
  readonly person: string;
  readonly createdAt: string;
  readonly expiresAt: string;
}

export interface CredentialStore {
  passwordHash(person: string): Promise<string | null>;
  setPasswordHash(person: string, hash: string): Promise<void>;
  addSession(session: StoredSession): Promise<void>;
  session(tokenHash: string): Promise<StoredSession | null>;
  removeSession(tokenHash: string): Promise<void>;
}
