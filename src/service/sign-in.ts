// Signing in and out: a password against its argon2id hash, a session by a token of which only the hash is kept.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { Plant } from './plant.ts';

/** A session ends after this many hours whatever happens. House rule: one long shift. */
const sessionHours = 14;

const utf8 = new TextEncoder();

export interface SignedIn {
  readonly person: Person;
  readonly token: string;
  readonly expiresAt: string;
}

/** Signs a person in. Problem: `sign-in-refused`, the same for an unknown name and a wrong password. */
export async function signIn(plant: Plant, id: string, password: string): Promise<Outcome<SignedIn>> {
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  const person = plant.state.people.get(id.trim().toLowerCase());
  const hash = person === undefined ? null : await plant.credentials.passwordHash(person.id);
  if (person === undefined || hash === null || !(await plant.passwords.verify(hash, password))) {
    return fail('sign-in-refused', 'The name or the password is wrong.', { where: 'password' });
  }
  const token = plant.randomToken();
  const createdAt = plant.clock();
  const expiresAt = new Date(Date.parse(createdAt) + sessionHours * 3_600_000).toISOString();
  const added = await plant.credentials.addSession({
    tokenHash: hashToken(plant, token),
    person: person.id,
    createdAt,
    expiresAt,
  });
  if (!added.ok) return added;
  return succeed({ person, token, expiresAt });
}

/** Answers who a session token belongs to; null when nobody. */
export async function personOfSession(plant: Plant, token: string): Promise<Person | null> {
  const session = await plant.credentials.session(hashToken(plant, token));
  if (session === null || session.expiresAt <= plant.clock()) return null;
  return plant.state.people.get(session.person) ?? null;
}

export function signOut(plant: Plant, token: string): Promise<Outcome<null>> {
  return plant.credentials.removeSession(hashToken(plant, token));
}

function hashToken(plant: Plant, token: string): string {
  return plant.sha256(utf8.encode(token));
}
