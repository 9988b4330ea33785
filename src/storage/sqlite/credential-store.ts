// Passwords and sessions in tables beside the ledger. The twin in memory is memory/credential-store.ts.

import type { Database } from 'better-sqlite3';
import { type Outcome, succeed } from '../../domain/problem.ts';
import type { CredentialStore, StoredSession } from '../credential-store.ts';
import { sqliteProblem } from './sqlite-problem.ts';

export function openSqliteCredentialStore(database: Database): CredentialStore {
  const readPassword = database
    .prepare<[string], string>('SELECT password_hash FROM credential WHERE person = ?')
    .pluck();
  const readSession = database.prepare<[string], StoredSession>(
    `SELECT token_hash AS tokenHash, person, created_at AS createdAt, expires_at AS expiresAt
     FROM session WHERE token_hash = ?`,
  );
  // A connection that only reads has these tables too; what it may not do it says when it is asked to.
  const writePassword = database.prepare(
    `INSERT INTO credential (person, password_hash) VALUES (?, ?)
     ON CONFLICT (person) DO UPDATE SET password_hash = excluded.password_hash`,
  );
  const insertSession = database.prepare(
    'INSERT INTO session (token_hash, person, created_at, expires_at) VALUES (?, ?, ?, ?)',
  );
  const deleteSession = database.prepare('DELETE FROM session WHERE token_hash = ?');

  function write(run: () => unknown): Outcome<null> {
    try {
      run();
      return succeed(null);
    } catch (error) {
      return sqliteProblem(error, database.name);
    }
  }

  return {
    async passwordHash(person) {
      return readPassword.get(person) ?? null;
    },
    async setPasswordHash(person, hash) {
      return write(() => writePassword.run(person, hash));
    },
    async addSession({ tokenHash, person, createdAt, expiresAt }) {
      return write(() => insertSession.run(tokenHash, person, createdAt, expiresAt));
    },
    async session(tokenHash) {
      return readSession.get(tokenHash) ?? null;
    },
    async removeSession(tokenHash) {
      return write(() => deleteSession.run(tokenHash));
    },
  };
}
