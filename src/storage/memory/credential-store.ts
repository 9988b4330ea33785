// Credentials in memory, for tests and for trying things out. The twin on disk is sqlite/credential-store.ts.

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

export interface MemoryCredentialStore extends CredentialStore {
  /** Makes all changes or throws before the first. */
  readonly makeChanges: (changes: readonly CredentialChange[]) => void;
}

export function openMemoryCredentialStore(): MemoryCredentialStore {
  const passwordHashes = new Map<string, string>();
  const sessions = new Map<string, StoredSession>();
  const invitations = new Map<string, StoredInvitation>();
  const secondFactors = new Map<string, StoredSecondFactor>();
  const devicePasses = new Map<string, StoredDevicePass>();

  function removeSessions(isRemoved: (session: StoredSession) => boolean): void {
    for (const session of [...sessions.values()]) if (isRemoved(session)) sessions.delete(session.tokenHash);
  }

  function make(change: CredentialChange): void {
    switch (change.change) {
      case 'set-password':
        passwordHashes.set(change.person, change.hash);
        break;
      case 'add-session':
        sessions.set(change.session.tokenHash, { ...change.session });
        break;
      case 'use-session': {
        const session = sessions.get(change.tokenHash);
        if (session !== undefined) sessions.set(change.tokenHash, { ...session, lastUsedAt: change.at });
        break;
      }
      case 'remove-session':
        sessions.delete(change.tokenHash);
        break;
      case 'remove-sessions-of':
        removeSessions(({ person, tokenHash }) => person === change.person && tokenHash !== change.exceptTokenHash);
        break;
      case 'remove-sessions-past':
        removeSessions(
          ({ expiresAt, lastUsedAt }) => expiresAt <= change.expiredAt || lastUsedAt <= change.unusedSince,
        );
        break;
      case 'set-invitation':
        invitations.set(change.invitation.person, { ...change.invitation });
        break;
      case 'use-invitation':
      case 'remove-invitation':
        invitations.delete(change.person);
        break;
      case 'set-second-factor':
        secondFactors.set(change.secondFactor.person, { ...change.secondFactor });
        break;
      case 'use-one-time-password': {
        const factor = secondFactors.get(change.person);
        const { step, at } = change;
        if (factor !== undefined) {
          secondFactors.set(change.person, { ...factor, lastStep: step, confirmedAt: factor.confirmedAt ?? at });
        }
        break;
      }
      case 'remove-second-factor':
        secondFactors.delete(change.person);
        break;
      case 'set-device-pass':
        devicePasses.set(change.pass.device, { ...change.pass });
        break;
      case 'use-device-code': {
        const pass = devicePasses.get(change.device);
        if (pass !== undefined) {
          devicePasses.set(change.device, { ...pass, codeHash: null, tokenHash: change.tokenHash });
        }
        break;
      }
      case 'remove-device-pass':
        devicePasses.delete(change.device);
        break;
    }
  }

  function isUsed(change: CredentialChange): boolean {
    switch (change.change) {
      case 'use-invitation':
        return invitations.get(change.person)?.codeHash !== change.codeHash;
      case 'use-one-time-password':
        return (secondFactors.get(change.person)?.lastStep ?? Number.POSITIVE_INFINITY) >= change.step;
      case 'use-device-code':
        return devicePasses.get(change.device)?.codeHash !== change.codeHash;
      default:
        return false;
    }
  }

  function makeChanges(changes: readonly CredentialChange[]): void {
    for (const change of changes) {
      if (isUsed(change)) throw new CredentialUsedError();
      if (change.change === 'add-session' && sessions.has(change.session.tokenHash)) {
        throw new Error('A session with this token is already there.');
      }
    }
    for (const change of changes) make(change);
  }

  return {
    makeChanges,
    async passwordHash(person) {
      return passwordHashes.get(person) ?? null;
    },
    async session(tokenHash) {
      return sessions.get(tokenHash) ?? null;
    },
    async invitation(person) {
      return invitations.get(person) ?? null;
    },
    async secondFactor(person) {
      return secondFactors.get(person) ?? null;
    },
    async devicePass(device) {
      return devicePasses.get(device) ?? null;
    },
    async devicePassOfToken(tokenHash) {
      return [...devicePasses.values()].find((pass) => pass.tokenHash === tokenHash) ?? null;
    },
    async change(changes) {
      try {
        makeChanges(changes);
        return succeed(null);
      } catch (error) {
        if (error instanceof CredentialUsedError) return credentialUsed();
        throw error;
      }
    },
  };
}
