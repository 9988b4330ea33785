// Sessions: how one begins, how long it lasts, how it ends. Of its token only the hash is kept. Who may begin one is
// decided by sign-in.ts.

import type { Outcome } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import type { Plant } from './plant.ts';

/** A session ends after this many hours whatever happens. House rule: one long shift. */
export const sessionHours = 14;

/** A session ends when nothing was asked for this many minutes. House rule: a desk left for a meal. */
export const idleMinutes = 60;

/** Its last use is written at most this often, so that reading pages does not write to the disk each time. House rule. */
const writtenEveryMilliseconds = 60_000;

const utf8 = new TextEncoder();

export interface Session {
  readonly token: string;
  readonly expiresAt: string;
}

/** The only form in which a token or one-time code is kept. */
export function hashOfToken(plant: Pick<Plant, 'sha256'>, token: string): string {
  return plant.sha256(utf8.encode(token));
}

const earlier = (instant: string, milliseconds: number): string =>
  new Date(Date.parse(instant) - milliseconds).toISOString();

/** Answers a new session for a person, and the changes that store it; sessions that are past are removed with it. */
export function newSession(plant: Plant, person: string): Session & { readonly changes: readonly CredentialChange[] } {
  const token = plant.randomToken();
  const createdAt = plant.clock();
  const expiresAt = earlier(createdAt, -sessionHours * 3_600_000);
  const session = { tokenHash: hashOfToken(plant, token), person, createdAt, expiresAt, lastUsedAt: createdAt };
  return {
    token,
    expiresAt,
    changes: [
      {
        change: 'remove-sessions-past',
        expiredAt: createdAt,
        unusedSince: earlier(createdAt, idleMinutes * 60_000),
      },
      { change: 'add-session', session },
    ],
  };
}

/** Answers who a session token belongs to, and notes that it was used; null when nobody, or somebody barred since. */
export async function personOfSession(plant: Plant, token: string): Promise<Person | null> {
  const session = await plant.credentials.session(hashOfToken(plant, token));
  if (session === null) return null;
  const now = plant.clock();
  if (session.expiresAt <= now || session.lastUsedAt <= earlier(now, idleMinutes * 60_000)) return null;
  const person = plant.state.people.get(session.person);
  if (person === undefined || person.barred !== undefined) return null;
  if (session.lastUsedAt <= earlier(now, writtenEveryMilliseconds)) {
    // Where the disk is full the session goes on being read; it ends by its last use that could be written.
    await plant.credentials.change([{ change: 'use-session', tokenHash: session.tokenHash, at: now }]);
  }
  return person;
}

export function signOut(plant: Plant, token: string): Promise<Outcome<null>> {
  return plant.credentials.change([{ change: 'remove-session', tokenHash: hashOfToken(plant, token) }]);
}

/** Ends every session of a person, on all devices. */
export function signOutEverywhere(plant: Plant, person: string): Promise<Outcome<null>> {
  return plant.credentials.change([{ change: 'remove-sessions-of', person, exceptTokenHash: null }]);
}
