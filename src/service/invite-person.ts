// Inviting a person: an administrator gets a one-time code, and whoever brings it sets the password, so that nobody else
// ever knows it. Adding a person together with a password is in add-person.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Role } from '../domain/rules/role.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import { enterPerson } from './add-person.ts';
import { findPerson } from './change-person.ts';
import { checkNewPassword } from './new-password.ts';
import { daysFromNow, hashOfCode, newOneTimeCode } from './one-time-code.ts';
import { type Actor, checkRole, performAction } from './perform-action.ts';
import type { Plant } from './plant.ts';
import type { Tries } from './sign-in.ts';
import { passwordOf, secondFactorOf } from './sign-in-throttle.ts';

/** How long an invitation holds, in days. House rule: a week off. */
const invitationDays = 7;

export interface Invitation {
  readonly person: Person;
  /** Shown this once. */
  readonly code: string;
  readonly expiresAt: string;
}

/**
 * Invites a person who is new, or once more one who has not set a password yet; the earlier code is void then.
 * Problems: `tag-taken`, `field-invalid`, `role-not-allowed`.
 */
export async function invitePerson(
  plant: Plant,
  invited: { readonly id: string; readonly name: string; readonly role: Role },
  { actor }: { readonly actor: Actor },
): Promise<Outcome<Invitation>> {
  const { code, expiresAt, change } = newInvitation(plant, invited.id);
  const known = plant.state.people.get(invited.id);
  if (known !== undefined && (await plant.credentials.passwordHash(invited.id)) === null) {
    if (known.name === invited.name && known.role === invited.role && known.barred === undefined) {
      const allowed = checkRole(actor, 'add-person');
      if (!allowed.ok) return allowed;
      const set = await plant.credentials.change([change]);
      return set.ok ? succeed({ person: known, code, expiresAt }) : set;
    }
  }
  const entered = await enterPerson(plant, invited, { actor, retry: null, besides: [change] });
  return entered.ok ? succeed({ person: entered.value, code, expiresAt }) : entered;
}

/**
 * Invites a person anew who lost the password or the second factor. It leaves an entry, because who holds the code can act in
 * that person's name. Problems: `unknown-person`, `own-account`, `already-barred`, `role-not-allowed`.
 */
export async function inviteAnew(
  plant: Plant,
  id: string,
  reason: string,
  { actor }: { readonly actor: Actor },
): Promise<Outcome<Invitation>> {
  const { code, expiresAt, change } = newInvitation(plant, id);
  return performAction<Invitation>(plant, {
    action: 'change-person',
    actor,
    own: actor.id === id,
    retry: null,
    besides: [change],
    decide(at) {
      const person = findPerson(plant, id);
      if (!person.ok) return person;
      if (person.value.barred !== undefined) {
        return fail('already-barred', `${id} is barred; readmit first.`, { given: id });
      }
      const { name, role } = person.value;
      const body = { name, role, reason: `Invited to set a new password: ${reason}` };
      return succeed([{ at, actor: actor.id, kind: 'person-changed/1', subject: id, body }]);
    },
    answer() {
      const person = findPerson(plant, id);
      return person.ok ? succeed({ person: person.value, code, expiresAt }) : person;
    },
  });
}

/**
 * Sets the password of an invited person. Sessions end and a second factor is removed: who lost it starts anew.
 * Problems: `sign-in-refused`, the same for an unknown name, a wrong code and one that is past; `field-invalid`; `too-many-tries`.
 */
export async function acceptInvitation(
  plant: Plant,
  { id, code, password }: { readonly id: string; readonly code: string; readonly password: string },
  { throttle, address }: Tries,
): Promise<Outcome<Person>> {
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  const acceptable = checkNewPassword(password, 'password');
  if (!acceptable.ok) return acceptable;
  const attempt = throttle.begin({ account: null, address }, plant.clock());
  if (!attempt.ok) return attempt;
  const codeHash = hashOfCode(plant, code);
  const hash = await plant.passwords.hash(password);
  const invitation = await plant.credentials.invitation(id);
  const person = plant.state.people.get(id);
  const isOpen = invitation !== null && invitation.codeHash === codeHash && invitation.expiresAt > plant.clock();
  if (person === undefined || person.barred !== undefined || !isOpen) {
    return fail('sign-in-refused', 'The name or the code is wrong, or the code is past.', { where: 'code' });
  }
  const changes: readonly CredentialChange[] = [
    { change: 'use-invitation', person: id, codeHash },
    { change: 'set-password', person: id, hash },
    { change: 'remove-sessions-of', person: id, exceptTokenHash: null },
    { change: 'remove-second-factor', person: id },
  ];
  const set = await plant.credentials.change(changes);
  if (!set.ok) return set;
  attempt.value.succeeded();
  throttle.forget(passwordOf(id));
  throttle.forget(secondFactorOf(id));
  return succeed(person);
}

function newInvitation(plant: Plant, person: string) {
  const code = newOneTimeCode(plant);
  const expiresAt = daysFromNow(plant, invitationDays);
  const change: CredentialChange = {
    change: 'set-invitation',
    invitation: { person, codeHash: hashOfCode(plant, code), expiresAt },
  };
  return { code, expiresAt, change };
}
