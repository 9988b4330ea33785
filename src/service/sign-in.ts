// Signing in: a password against its argon2id hash, then a one-time password where the person has a second factor.
// How a session lasts and ends is in session.ts, how often one may try in sign-in-throttle.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { Plant } from './plant.ts';
import { checkSecondFactor } from './second-factor.ts';
import { newSession, type Session } from './session.ts';
import { type Attempt, passwordOf, type SignInThrottle } from './sign-in-throttle.ts';

export interface SignedIn extends Session {
  readonly person: Person;
}

/** Where tries come from, and how often they may come. */
export interface Tries {
  readonly throttle: SignInThrottle;
  readonly address: string;
}

export interface SignInRequest {
  readonly person: string;
  readonly password: string;
  /** The one-time password of the second factor; null when none was given. */
  readonly oneTimePassword: string | null;
}

/**
 * Signs a person in. Problems: `sign-in-refused`, the same and after the same time for an unknown name, a barred person and
 * a wrong password; `second-factor-needed` once the password was right; `too-many-tries`.
 */
export async function signIn(plant: Plant, request: SignInRequest, tries: Tries): Promise<Outcome<SignedIn>> {
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  const checked = await checkPassword(plant, request.person, request.password, tries);
  if (!checked.ok) return checked;
  const { person, attempt } = checked.value;
  const second = await checkSecondFactor(plant, person.id, request.oneTimePassword, tries);
  if (!second.ok) {
    // What was wrong is counted there; the password was right, and forgets nothing before the whole is.
    attempt.takeBack();
    return second;
  }
  attempt.succeeded();
  const { token, expiresAt, changes } = newSession(plant, person.id);
  const added = await plant.credentials.change([...second.value, ...changes]);
  return added.ok ? succeed({ person, token, expiresAt }) : added;
}

/** Asks a person who is signed in for the password again. Problems: `sign-in-refused`, `too-many-tries`. */
export async function confirmPassword(
  plant: Plant,
  person: Person,
  password: string,
  tries: Tries,
): Promise<Outcome<void>> {
  const checked = await checkPassword(plant, person.id, password, tries);
  if (!checked.ok) return checked;
  checked.value.attempt.succeeded();
  return succeed(undefined);
}

/** Makes the hash an unknown name is checked against, once, so that it takes as long as a known one. */
export function hashForUnknownNames(plant: Plant): Promise<string> {
  return plant.once('hash for unknown names', () => plant.passwords.hash(plant.randomToken()));
}

async function checkPassword(
  plant: Plant,
  typedName: string,
  password: string,
  { throttle, address }: Tries,
): Promise<Outcome<{ readonly person: Person; readonly attempt: Attempt }>> {
  const id = typedName.trim().toLowerCase();
  const attempt = throttle.begin({ account: passwordOf(id), address }, plant.clock());
  if (!attempt.ok) return attempt;
  const person = plant.state.people.get(id);
  const known = person === undefined ? null : await plant.credentials.passwordHash(person.id);
  const isRight = await plant.passwords.verify(known ?? (await hashForUnknownNames(plant)), password);
  if (person === undefined || known === null || person.barred !== undefined || !isRight) {
    return fail('sign-in-refused', 'The name or the password is wrong.', { where: 'password' });
  }
  return succeed({ person, attempt: attempt.value });
}
