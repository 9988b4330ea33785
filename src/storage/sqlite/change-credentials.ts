// Makes changes to the tables of credentials, within whatever transaction is open. Reading them is in credential-store.ts.

import type { Database, Statement } from 'better-sqlite3';
import type { CredentialChange } from '../credential-store.ts';
import { CredentialUsedError } from '../credential-used.ts';

export function credentialChanger(database: Database): (changes: readonly CredentialChange[]) => void {
  // A connection that only reads has these tables too; what it may not do it says when it is asked to.
  const statements: Readonly<Record<CredentialChange['change'], Statement>> = {
    'set-password': database.prepare(
      `INSERT INTO credential (person, password_hash) VALUES (@person, @hash)
       ON CONFLICT (person) DO UPDATE SET password_hash = excluded.password_hash`,
    ),
    'add-session': database.prepare(
      `INSERT INTO session (token_hash, person, created_at, expires_at, last_used_at)
       VALUES (@tokenHash, @person, @createdAt, @expiresAt, @lastUsedAt)`,
    ),
    'use-session': database.prepare('UPDATE session SET last_used_at = @at WHERE token_hash = @tokenHash'),
    'remove-session': database.prepare('DELETE FROM session WHERE token_hash = @tokenHash'),
    'remove-sessions-of': database.prepare(
      'DELETE FROM session WHERE person = @person AND token_hash IS NOT @exceptTokenHash',
    ),
    'remove-sessions-past': database.prepare(
      'DELETE FROM session WHERE expires_at <= @expiredAt OR last_used_at <= @unusedSince',
    ),
    'set-invitation': database.prepare(
      `INSERT INTO invitation (person, code_hash, expires_at) VALUES (@person, @codeHash, @expiresAt)
       ON CONFLICT (person) DO UPDATE SET code_hash = excluded.code_hash, expires_at = excluded.expires_at`,
    ),
    'use-invitation': database.prepare('DELETE FROM invitation WHERE person = @person AND code_hash = @codeHash'),
    'remove-invitation': database.prepare('DELETE FROM invitation WHERE person = @person'),
    'set-second-factor': database.prepare(
      `INSERT INTO second_factor (person, secret, confirmed_at, last_step)
       VALUES (@person, @secret, @confirmedAt, @lastStep)
       ON CONFLICT (person) DO UPDATE SET
         secret = excluded.secret, confirmed_at = excluded.confirmed_at, last_step = excluded.last_step`,
    ),
    'use-one-time-password': database.prepare(
      `UPDATE second_factor SET last_step = @step, confirmed_at = coalesce(confirmed_at, @at)
       WHERE person = @person AND last_step < @step`,
    ),
    'remove-second-factor': database.prepare('DELETE FROM second_factor WHERE person = @person'),
    'set-device-pass': database.prepare(
      `INSERT INTO device_pass (device, code_hash, code_expires_at, token_hash)
       VALUES (@device, @codeHash, @codeExpiresAt, @tokenHash)
       ON CONFLICT (device) DO UPDATE SET
         code_hash = excluded.code_hash, code_expires_at = excluded.code_expires_at, token_hash = excluded.token_hash`,
    ),
    'use-device-code': database.prepare(
      `UPDATE device_pass SET code_hash = NULL, token_hash = @tokenHash
       WHERE device = @device AND code_hash = @codeHash`,
    ),
    'remove-device-pass': database.prepare('DELETE FROM device_pass WHERE device = @device'),
  };
  return (changes) => {
    for (const change of changes) {
      const { changes: rows } = statements[change.change].run(parametersOf(change));
      if (rows === 0 && isGoodOnce(change)) throw new CredentialUsedError();
    }
  };
}

function isGoodOnce({ change }: CredentialChange): boolean {
  return change === 'use-invitation' || change === 'use-one-time-password' || change === 'use-device-code';
}

function parametersOf(change: CredentialChange): object {
  switch (change.change) {
    case 'add-session':
      return change.session;
    case 'set-invitation':
      return change.invitation;
    case 'set-second-factor':
      return change.secondFactor;
    case 'set-device-pass':
      return change.pass;
    default:
      return change;
  }
}
