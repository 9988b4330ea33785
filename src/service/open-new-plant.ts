// Opening a new ledger: the plant, the rules it starts with and its first administrator, by a one-time code.

import type { z } from 'zod';
import type { openingBody } from '../contract/plant.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import { checkPersonId } from './add-person.ts';
import { checkNewPassword } from './new-password.ts';
import type { Plant } from './plant.ts';
import { programActor } from './program-actor.ts';

/** A ledger waits for its one-time code until somebody administers it. */
export function hasAdministrator(plant: Plant): boolean {
  return [...plant.state.people.values()].some(({ role, barred }) => role === 'administrator' && barred === undefined);
}

/**
 * Opens the plant and adds its first administrator. `code` is the one printed in the terminal; null when none is out.
 * Problems: `sign-in-refused` for a wrong code, `ledger-conflict` when the plant is open already, `field-invalid`.
 */
export async function openNewPlant(
  plant: Plant,
  input: z.output<typeof openingBody>,
  code: string | null,
): Promise<Outcome<Person>> {
  if (code === null || input.code.trim().toUpperCase() !== code) {
    return fail('sign-in-refused', 'This is not the code printed in the terminal.', { where: 'code' });
  }
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  if (hasAdministrator(plant)) return fail('ledger-conflict', 'This plant is already open.');
  const at = plant.clock();
  const { id, name, password } = input.administrator;
  const plain = checkPersonId(id, 'administrator.id');
  if (!plain.ok) return plain;
  const acceptable = checkNewPassword(password, 'administrator.password');
  if (!acceptable.ok) return acceptable;
  const hash = await plant.passwords.hash(password);
  const appended = await plant.append(
    [
      {
        at,
        actor: programActor,
        kind: 'plant-opened/1',
        subject: 'plant',
        body: { name: input.plantName, timeZone: input.timeZone, sample: false },
      },
      {
        at,
        actor: programActor,
        kind: 'rules-set/4',
        subject: plant.state.rules.name,
        body: { profile: plant.state.rules, reason: 'the profile a new ledger starts with' },
      },
      { at, actor: programActor, kind: 'person-added/1', subject: id, body: { name, role: 'administrator' } },
    ],
    null,
    [{ change: 'set-password', person: id, hash }],
  );
  if (!appended.ok) return appended;
  return succeed({ id, name, role: 'administrator' });
}
