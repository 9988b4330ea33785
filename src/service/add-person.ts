// Adding a person who works with the ledger, with a password that never enters it.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Role } from '../domain/rules/role.ts';
import type { Person } from '../ledger/plant-state.ts';
import { type Actor, checkRole, performAction } from './perform-action.ts';
import type { Plant } from './plant.ts';

/** Adds a person. Problems: `tag-taken`, `field-invalid` for an id that is not plain. */
export async function addPerson(
  plant: Plant,
  person: { readonly id: string; readonly name: string; readonly role: Role; readonly password: string },
  by: { readonly actor: Actor; readonly retryKey: string | null },
): Promise<Outcome<Person>> {
  const { id, name, role } = person;
  if (!/^[a-z][a-z0-9.-]{1,39}$/.test(id)) {
    return fail('field-invalid', `"${id}" cannot be a sign-in name.`, {
      where: 'id',
      needed: '2 to 40 lower-case letters, digits, dots or hyphens, starting with a letter',
      given: id,
    });
  }
  if (person.password.length < 8) {
    return fail('field-invalid', 'The password is too short.', { where: 'password', needed: 'at least 8 characters' });
  }
  const hash = await plant.passwords.hash(person.password);
  // A person without a password is one whose adding was cut off between the entry and the password: it goes on here.
  const known = plant.state.people.get(id);
  if (known?.name === name && known.role === role && (await plant.credentials.passwordHash(id)) === null) {
    const allowed = checkRole(by.actor, 'add-person');
    if (!allowed.ok) return allowed;
    const set = await plant.credentials.setPasswordHash(id, hash);
    return set.ok ? succeed(known) : set;
  }
  // The password stays out of what a retry is compared by, since a fast hash of that is kept.
  const retry = by.retryKey === null ? null : { key: by.retryKey, request: JSON.stringify([id, name, role]) };
  const added = await performAction<Person>(plant, {
    action: 'add-person',
    actor: by.actor,
    retry,
    decide: (at) =>
      plant.state.people.has(id)
        ? fail('tag-taken', `There is already a person "${id}".`, { where: 'id', given: id })
        : succeed([{ at, actor: by.actor.id, kind: 'person-added/1', subject: id, body: { name, role } }]),
    answer: () => succeed({ id, name, role }),
  });
  if (!added.ok) return added;
  const set = await plant.credentials.setPasswordHash(id, hash);
  return set.ok ? added : set;
}
