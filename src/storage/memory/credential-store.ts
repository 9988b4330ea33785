// Passwords and sessions in memory, for tests and for trying things out. The twin on disk is sqlite/credential-store.ts.

import { succeed } from '../../domain/problem.ts';
import type { CredentialStore, StoredSession } from '../credential-store.ts';

export function openMemoryCredentialStore(): CredentialStore {
  const passwordHashes = new Map<string, string>();
  const sessions = new Map<string, StoredSession>();
  return {
    async passwordHash(person) {
      return passwordHashes.get(person) ?? null;
    },
    async setPasswordHash(person, hash) {
      passwordHashes.set(person, hash);
      return succeed(null);
    },
    async addSession(session) {
      if (sessions.has(session.tokenHash)) throw new Error('A session with this token is already there.');
      sessions.set(session.tokenHash, { ...session });
      return succeed(null);
    },
    async session(tokenHash) {
      return sessions.get(tokenHash) ?? null;
    },
    async removeSession(tokenHash) {
      sessions.delete(tokenHash);
      return succeed(null);
    },
  };
}
