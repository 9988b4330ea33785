// The second factor of a person: a secret in an authenticator, enrolled, confirmed by its first one-time password, removed.
// It is optional, for quality and administrator. The passwords themselves are computed in one-time-password.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange, StoredSecondFactor } from '../storage/credential-store.ts';
import { oneTimePassword, readBase32, timeStepOf, writeBase32 } from './one-time-password.ts';
import { checkRole } from './perform-action.ts';
import type { Plant } from './plant.ts';
import type { Tries } from './sign-in.ts';
import { secondFactorOf } from './sign-in-throttle.ts';

/** Bytes of a secret. Source: RFC 4226 4, at least 128 bits and 160 recommended (from memory). */
const secretBytes = 20;

const utf8 = new TextEncoder();

export interface EnrolledSecret {
  /** In base 32, to be typed into an authenticator. */
  readonly secret: string;
  /** The same as an address an authenticator reads from a square code. */
  readonly address: string;
}

/** Begins with a new secret, shown this once; it asks for nothing until it is confirmed. Problems: `role-not-allowed`, `second-factor-set`. */
export async function enrolSecondFactor(plant: Plant, person: Person): Promise<Outcome<EnrolledSecret>> {
  const allowed = checkRole(person, 'set-second-factor', { own: true });
  if (!allowed.ok) return allowed;
  const earlier = await plant.credentials.secondFactor(person.id);
  if (earlier !== null && earlier.confirmedAt !== null) {
    return fail('second-factor-set', 'A second factor is in use; remove it before another is set.');
  }
  const secret = writeBase32(randomBytes(plant, secretBytes));
  const secondFactor = { person: person.id, secret, confirmedAt: null, lastStep: -1 };
  const set = await plant.credentials.change([{ change: 'set-second-factor', secondFactor }]);
  if (!set.ok) return set;
  const name = encodeURIComponent(`Jackledger:${person.id}`);
  return succeed({ secret, address: `otpauth://totp/${name}?secret=${secret}&issuer=Jackledger` });
}

/**
 * Takes the second factor into use, once the authenticator has shown that it holds the secret. Problems: `second-factor-needed`
 * where none waits, `sign-in-refused`, `too-many-tries`.
 */
export async function confirmSecondFactor(
  plant: Plant,
  person: Person,
  typed: string,
  tries: Tries,
): Promise<Outcome<null>> {
  const found = await plant.credentials.secondFactor(person.id);
  if (found === null)
    return fail('second-factor-needed', 'No second factor waits to be confirmed.', { where: 'oneTimePassword' });
  const use = tryOneTimePassword(plant, found, typed, tries);
  return use.ok ? plant.credentials.change([use.value]) : use;
}

/** Answers whether signing in asks a person for a second factor. */
export async function isSecondFactorInUse(plant: Plant, person: string): Promise<boolean> {
  const found = await plant.credentials.secondFactor(person);
  return found !== null && found.confirmedAt !== null;
}

export function removeSecondFactor(plant: Plant, person: string): Promise<Outcome<null>> {
  return plant.credentials.change([{ change: 'remove-second-factor', person }]);
}

/**
 * Answers the changes that use up a one-time password; none for a person without a second factor. Problems:
 * `second-factor-needed`, `sign-in-refused`, `too-many-tries`.
 */
export async function checkSecondFactor(
  plant: Plant,
  person: string,
  typed: string | null,
  tries: Tries,
): Promise<Outcome<readonly CredentialChange[]>> {
  const found = await plant.credentials.secondFactor(person);
  if (found === null || found.confirmedAt === null) return succeed([]);
  if (typed === null) {
    return fail('second-factor-needed', 'Give the six digits your authenticator shows now.', {
      where: 'oneTimePassword',
      needed: 'six digits',
    });
  }
  const use = tryOneTimePassword(plant, found, typed, tries);
  return use.ok ? succeed([use.value]) : use;
}

/** Answers the change that uses up a one-time password; a wrong one counts as a wrong password does. */
function tryOneTimePassword(
  plant: Plant,
  factor: StoredSecondFactor,
  typed: string,
  { throttle, address }: Tries,
): Outcome<CredentialChange> {
  const at = plant.clock();
  const attempt = throttle.begin({ account: secondFactorOf(factor.person), address }, at);
  if (!attempt.ok) return attempt;
  const step = stepOfPassword(plant, factor, typed);
  if (step === null) {
    return fail('sign-in-refused', 'The one-time password is wrong or was used before.', { where: 'oneTimePassword' });
  }
  attempt.value.succeeded();
  return succeed({ change: 'use-one-time-password', person: factor.person, step, at });
}

/** One step either side, for a clock that is off. Source: RFC 6238 5.2, one step of delay; the step ahead is a house rule. */
const stepsEitherSide = [0, -1, 1] as const;

function stepOfPassword(
  plant: Plant,
  { secret, lastStep }: { readonly secret: string; readonly lastStep: number },
  typed: string,
): number | null {
  const key = readBase32(secret);
  const now = timeStepOf(plant.clock());
  const digits = typed.replaceAll(/\s/g, '');
  const found = stepsEitherSide
    .map((aside) => now + aside)
    .find((step) => step > lastStep && oneTimePassword(key, step, plant.hmacSha1) === digits);
  return found ?? null;
}

/** Bytes as unguessable as the token they are drawn from. */
function randomBytes(plant: Plant, count: number): Uint8Array {
  return plant.hmacSha1(utf8.encode(plant.randomToken()), utf8.encode('secret of a second factor')).slice(0, count);
}
