// Adding a person who works with the ledger, with a password that never enters it. Inviting one, who sets the password
// alone, is in invite-person.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Role } from '../domain/rules/role.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import { checkNewPassword } from './new-password.ts';
import { type Actor, checkRole, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';
import { programActor } from './program-actor.ts';

/** Adds a person. Problems: `tag-taken`, `field-invalid` for an id that is not plain or a password that will not do. */
export async function addPerson(
  plant: Plant,
  person: { readonly id: string; readonly name: string; readonly role: Role; readonly password: string },
  by: { readonly actor: Actor; readonly retryKey: string | null },
): Promise<Outcome<Person>> {
  const { id, name, role } = person;
  const acceptable = checkNewPassword(person.password, 'password');
  if (!acceptable.ok) return acceptable;
  const setPassword: readonly CredentialChange[] = [
    { change: 'set-password', person: id, hash: await plant.passwords.hash(person.password) },
    { change: 'remove-invitation', person: id },
  ];
  // A person without a password is one who was invited and has not come: it goes on here.
  const known = plant.state.people.get(id);
  if (known?.name === name && known.role === role && (await plant.credentials.passwordHash(id)) === null) {
    const allowed = checkRole(by.actor, 'add-person');
    if (!allowed.ok) return allowed;
    const set = await plant.credentials.change(setPassword);
    return set.ok ? succeed(known) : set;
  }
  // The password stays out of what a retry is compared by, since a fast hash of that is kept.
  const retry = by.retryKey === null ? null : { key: by.retryKey, request: JSON.stringify([id, name, role]) };
  return enterPerson(plant, { id, name, role }, { actor: by.actor, retry, besides: setPassword });
}

/** Enters a new person with the credentials that come with them. Problems: those of `addPerson`. */
export async function enterPerson(
  plant: Plant,
  { id, name, role }: { readonly id: string; readonly name: string; readonly role: Role },
  by: { readonly actor: Actor; readonly retry: Retry | null; readonly besides: readonly CredentialChange[] },
): Promise<Outcome<Person>> {
  const plain = checkPersonId(id, 'id');
  if (!plain.ok) return plain;
  return performAction<Person>(plant, {
    action: 'add-person',
    actor: by.actor,
    retry: by.retry,
    besides: by.besides,
    decide: (at) =>
      plant.state.people.has(id)
        ? fail('tag-taken', `There is already a person "${id}".`, { where: 'id', given: id })
        : succeed([{ at, actor: by.actor.id, kind: 'person-added/1', subject: id, body: { name, role } }]),
    answer: () => succeed({ id, name, role }),
  });
}

/** Answers whether a text can be the id of a new person; who reads an entry must see whether a person wrote it. Problem: `field-invalid`. */
export function checkPersonId(id: string, where: string): Outcome<void> {
  if (!id.startsWith(programActor)) return checkAccountId(id, 'a sign-in name', where);
  return fail('field-invalid', `"${id}" begins like the name under which the program itself writes.`, {
    where,
    needed: `a name that does not begin with "${programActor}"`,
    given: id,
  });
}

/** Answers whether a text can be the id of a person or device. Problem: `field-invalid`. */
export function checkAccountId(id: string, word: string, where = 'id'): Outcome<void> {
  if (/^[a-z][a-z0-9.-]{1,39}$/.test(id)) return succeed(undefined);
  return fail('field-invalid', `"${id}" cannot be ${word}.`, {
    where,
    needed: '2 to 40 lower-case letters, digits, dots or hyphens, starting with a letter',
    given: id,
  });
}
