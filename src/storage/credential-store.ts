// The port for what signing in needs: passwords, sessions, invitations, second factors and device passes. Kept beside the
// ledger, never in its entries; every code and token as its SHA-256 alone.

import type { Outcome } from '../domain/problem.ts';

export interface StoredSession {
  readonly tokenHash: string;
  readonly person: string;
  readonly createdAt: string;
  readonly expiresAt: string;
  readonly lastUsedAt: string;
}

export interface StoredInvitation {
  readonly person: string;
  readonly codeHash: string;
  readonly expiresAt: string;
}

export interface StoredSecondFactor {
  readonly person: string;
  /** The secret itself, in base 32: a one-time password cannot be computed from a hash of it. */
  readonly secret: string;
  /** null until its first one-time password was given. */
  readonly confirmedAt: string | null;
  /** The newest time step whose one-time password was used; -1 before the first. */
  readonly lastStep: number;
}

export interface StoredDevicePass {
  readonly device: string;
  /** The one-time code that gets the pass onto the device; null once it was used. */
  readonly codeHash: string | null;
  readonly codeExpiresAt: string;
  readonly tokenHash: string | null;
}

/**
 * One change; a list of them is made whole or not at all. Removing what is not there does nothing; using a code or step that
 * is there no longer is `sign-in-refused`.
 */
export type CredentialChange =
  | { readonly change: 'set-password'; readonly person: string; readonly hash: string }
  | { readonly change: 'add-session'; readonly session: StoredSession }
  | { readonly change: 'use-session'; readonly tokenHash: string; readonly at: string }
  | { readonly change: 'remove-session'; readonly tokenHash: string }
  | { readonly change: 'remove-sessions-of'; readonly person: string; readonly exceptTokenHash: string | null }
  | { readonly change: 'remove-sessions-past'; readonly expiredAt: string; readonly unusedSince: string }
  | { readonly change: 'set-invitation'; readonly invitation: StoredInvitation }
  | { readonly change: 'use-invitation'; readonly person: string; readonly codeHash: string }
  | { readonly change: 'remove-invitation'; readonly person: string }
  | { readonly change: 'set-second-factor'; readonly secondFactor: StoredSecondFactor }
  | { readonly change: 'use-one-time-password'; readonly person: string; readonly step: number; readonly at: string }
  | { readonly change: 'remove-second-factor'; readonly person: string }
  | { readonly change: 'set-device-pass'; readonly pass: StoredDevicePass }
  | {
      readonly change: 'use-device-code';
      readonly device: string;
      readonly codeHash: string;
      readonly tokenHash: string;
    }
  | { readonly change: 'remove-device-pass'; readonly device: string };

export interface CredentialStore {
  passwordHash(person: string): Promise<string | null>;
  session(tokenHash: string): Promise<StoredSession | null>;
  invitation(person: string): Promise<StoredInvitation | null>;
  secondFactor(person: string): Promise<StoredSecondFactor | null>;
  devicePass(device: string): Promise<StoredDevicePass | null>;
  devicePassOfToken(tokenHash: string): Promise<StoredDevicePass | null>;
  /** Problems: `sign-in-refused` for a code used before; `ledger-locked`, `ledger-write-failed`. With entries: `AppendRequest.besides`. */
  change(changes: readonly CredentialChange[]): Promise<Outcome<null>>;
}
