// Changing the name or role of a person, barring one and letting one in again. Never oneself, never the last administrator.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Action, Role } from '../domain/rules/role.ts';
import type { NewEntry } from '../ledger/entry.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

interface By {
  readonly actor: Actor;
  readonly retry: Retry | null;
}

/** Answers a person of the ledger. Problem: `unknown-person`. */
export function findPerson(plant: Plant, id: string): Outcome<Person> {
  const person = plant.state.people.get(id);
  return person === undefined
    ? fail('unknown-person', `No person "${id}" works with this ledger.`, { where: 'id', given: id })
    : succeed(person);
}

/** Problems: `unknown-person`, `own-account`, `last-administrator`, `role-not-allowed`. */
export function changePerson(
  plant: Plant,
  id: string,
  to: { readonly name: string; readonly role: Role; readonly reason: string },
  by: By,
): Promise<Outcome<Person>> {
  return changeAccount(plant, id, by, {
    action: 'change-person',
    decide: (person, at) =>
      leavesAdministrator(plant, person, to.role, {
        at,
        actor: by.actor.id,
        kind: 'person-changed/1',
        subject: id,
        body: { ...to },
      }),
  });
}

/** Bars a person: no sign-in, no session, no invitation from now on. Problems: as `changePerson`, and `already-barred`. */
export function barPerson(plant: Plant, id: string, reason: string, by: By): Promise<Outcome<Person>> {
  return changeAccount(plant, id, by, {
    action: 'bar-person',
    besides: [
      { change: 'remove-sessions-of', person: id, exceptTokenHash: null },
      { change: 'remove-invitation', person: id },
    ],
    decide: (person, at) =>
      person.barred === undefined
        ? leavesAdministrator(plant, person, null, {
            at,
            actor: by.actor.id,
            kind: 'person-barred/1',
            subject: id,
            body: { reason },
          })
        : fail('already-barred', `${id} is barred already.`, { given: id }),
  });
}

/** Lets a barred person sign in again, with the password there was. Problems: as `changePerson`, and `already-barred`. */
export function readmitPerson(plant: Plant, id: string, reason: string, by: By): Promise<Outcome<Person>> {
  return changeAccount(plant, id, by, {
    action: 'bar-person',
    decide: (person, at) =>
      person.barred === undefined
        ? fail('already-barred', `${id} is not barred.`, { given: id })
        : succeed([{ at, actor: by.actor.id, kind: 'person-readmitted/1', subject: id, body: { reason } }]),
  });
}

interface AccountChange {
  readonly action: Action;
  readonly besides?: readonly CredentialChange[];
  readonly decide: (person: Person, at: string) => Outcome<readonly NewEntry[]>;
}

function changeAccount(plant: Plant, id: string, by: By, { action, besides, decide }: AccountChange) {
  return performAction<Person>(plant, {
    action,
    actor: by.actor,
    own: by.actor.id === id,
    retry: by.retry,
    ...(besides === undefined ? {} : { besides }),
    decide(at) {
      const person = findPerson(plant, id);
      return person.ok ? decide(person.value, at) : person;
    },
    answer: () => findPerson(plant, id),
  });
}

/** Lets an entry through unless it takes the last administrator away; `role` is the new one, null for none. */
function leavesAdministrator(
  plant: Plant,
  person: Person,
  role: Role | null,
  entry: NewEntry,
): Outcome<readonly NewEntry[]> {
  const others = [...plant.state.people.values()].filter(
    (other) => other.id !== person.id && other.role === 'administrator' && other.barred === undefined,
  );
  if (role !== 'administrator' && person.role === 'administrator' && others.length === 0) {
    return fail('last-administrator', `${person.id} is the last administrator.`, { given: person.id });
  }
  return succeed([entry]);
}
