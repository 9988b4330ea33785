// The one way a user action reaches the ledger: role, retry, decision, one transaction, answer.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { type Action, mayDo, ordinary, rolesFor, type Situation } from '../domain/rules/role.ts';
import type { NewEntry } from '../ledger/entry.ts';
import type { Person } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import type { Plant, Retry } from './plant.ts';

/** Who acts: a person of the ledger, or the command line of the machine the ledger lies on. */
export type Actor = Person | { readonly id: `command-line:${string}`; readonly role: 'operating-system-user' };

/** The user of the operating system, as the one who wrote from the command line. */
export function commandLineActor(userName: string): Actor {
  return { id: `command-line:${userName}` as const, role: 'operating-system-user' };
}

export interface ActionRequest<T> {
  readonly action: Action;
  readonly actor: Actor;
  readonly retry: Retry | null;
  /** Whether it is one's own run sheet or one's own entry as a person that is acted on. */
  readonly own?: boolean;
  /** Decides on the state as it is now; is asked again when another entry came first. */
  readonly decide: (at: string) => Outcome<readonly NewEntry[]>;
  /** Changes of credentials in the same transaction. */
  readonly besides?: readonly CredentialChange[];
  /** What to answer, from the state after the entries; `subject` is the subject of the first of them. */
  readonly answer: (subject: string) => Outcome<T>;
}

const mostTries = 5;

/** Answers whether the actor may do the action. Who can write the file may do through the command line what it offers. */
export function checkRole(actor: Actor, action: Action, situation: Partial<Situation> = {}): Outcome<void> {
  if (actor.role === 'operating-system-user') return succeed(undefined);
  const barred = actor.barred !== undefined;
  if (mayDo(actor.role, action, { ...ordinary, barred, ...situation })) return succeed(undefined);
  if (barred) return fail('role-not-allowed', `${actor.id} was barred and may do nothing.`, { given: actor.id });
  if (situation.own === true && mayDo(actor.role, action)) {
    return fail('own-account', `Nobody may do this to their own account (${action}).`, { given: actor.id });
  }
  const needed = rolesFor(action).join(', ');
  return fail('role-not-allowed', `The role ${actor.role} may not do this (${action}); it needs: ${needed}.`, {
    needed,
    given: actor.role,
  });
}

/** Performs one action: nothing is stored unless all of its entries are. */
export async function performAction<T>(plant: Plant, request: ActionRequest<T>): Promise<Outcome<T>> {
  const { action, own = false } = request;
  for (let attempt = 1; ; attempt += 1) {
    const refreshed = await plant.refresh();
    if (!refreshed.ok) return refreshed;
    // As the ledger knows the actor now: somebody may have been barred since the request came in.
    const actor = plant.state.people.get(request.actor.id) ?? request.actor;
    const allowed = checkRole(actor, action, { own, plantOpen: plant.state.plant !== null });
    if (!allowed.ok) return allowed;
    if (request.retry !== null) {
      const earlier = await plant.earlierTry(request.retry);
      if (!earlier.ok) return earlier;
      if (earlier.value !== null) return request.answer(earlier.value);
    }
    const decided = request.decide(plant.clock());
    if (!decided.ok) return decided;
    const appended = await plant.append(decided.value, request.retry, request.besides);
    if (appended.ok) return request.answer(appended.value[0]?.subject ?? '');
    if (appended.problem.code !== 'ledger-conflict' || attempt >= mostTries) return appended;
  }
}
