// Credentials in tables beside the ledger. The twin in memory is memory/credential-store.ts.

import type { Database } from 'better-sqlite3';
import { succeed } from '../../domain/problem.ts';
import type {
  CredentialChange,
  CredentialStore,
  StoredDevicePass,
  StoredInvitation,
  StoredSecondFactor,
  StoredSession,
} from '../credential-store.ts';
import { CredentialUsedError, credentialUsed } from '../credential-used.ts';
import { credentialChanger } from './change-credentials.ts';
import { sqliteProblem } from './sqlite-problem.ts';

const passColumns =
  'device, code_hash AS codeHash, code_expires_at AS codeExpiresAt, token_hash AS tokenHash FROM device_pass';

export function openSqliteCredentialStore(database: Database): CredentialStore {
  const readPassword = database
    .prepare<[string], string>('SELECT password_hash FROM credential WHERE person = ?')
    .pluck();
  const readSession = database.prepare<[string], StoredSession>(
    `SELECT token_hash AS tokenHash, person, created_at AS createdAt, expires_at AS expiresAt, last_used_at AS lastUsedAt
     FROM session WHERE token_hash = ?`,
  );
  const readInvitation = database.prepare<[string], StoredInvitation>(
    'SELECT person, code_hash AS codeHash, expires_at AS expiresAt FROM invitation WHERE person = ?',
  );
  const readSecondFactor = database.prepare<[string], StoredSecondFactor>(
    `SELECT person, secret, confirmed_at AS confirmedAt, last_step AS lastStep
     FROM second_factor WHERE person = ?`,
  );
  const readPass = database.prepare<[string], StoredDevicePass>(`SELECT ${passColumns} WHERE device = ?`);
  const readPassOfToken = database.prepare<[string], StoredDevicePass>(`SELECT ${passColumns} WHERE token_hash = ?`);
  const makeChanges = credentialChanger(database);
  const change = database.transaction((changes: readonly CredentialChange[]) => makeChanges(changes));

  return {
    async passwordHash(person) {
      return readPassword.get(person) ?? null;
    },
    async session(tokenHash) {
      return readSession.get(tokenHash) ?? null;
    },
    async invitation(person) {
      return readInvitation.get(person) ?? null;
    },
    async secondFactor(person) {
      return readSecondFactor.get(person) ?? null;
    },
    async devicePass(device) {
      return readPass.get(device) ?? null;
    },
    async devicePassOfToken(tokenHash) {
      return readPassOfToken.get(tokenHash) ?? null;
    },
    async change(changes) {
      try {
        change.immediate(changes);
        return succeed(null);
      } catch (error) {
        if (error instanceof CredentialUsedError) return credentialUsed();
        return sqliteProblem(error, database.name);
      }
    },
  };
}
