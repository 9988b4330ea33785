// Changing one's own password. Who lost it is invited anew (invite-person.ts).

import type { Outcome } from '../domain/problem.ts';
import type { Person } from '../ledger/plant-state.ts';
import { checkNewPassword } from './new-password.ts';
import { checkRole } from './perform-action.ts';
import type { Plant } from './plant.ts';
import { hashOfToken } from './session.ts';
import { confirmPassword, type Tries } from './sign-in.ts';

/**
 * Sets a new password for the one who knows the old one. Every other session of the person ends; `token` is the one that
 * stays. Problems: `field-invalid`, `sign-in-refused`, `too-many-tries`.
 */
export async function changePassword(
  plant: Plant,
  person: Person,
  request: { readonly password: string; readonly newPassword: string; readonly token: string },
  tries: Tries,
): Promise<Outcome<null>> {
  const allowed = checkRole(person, 'change-password', { own: true });
  if (!allowed.ok) return allowed;
  const acceptable = checkNewPassword(request.newPassword, 'newPassword');
  if (!acceptable.ok) return acceptable;
  const confirmed = await confirmPassword(plant, person, request.password, tries);
  if (!confirmed.ok) return confirmed;
  return plant.credentials.change([
    { change: 'set-password', person: person.id, hash: await plant.passwords.hash(request.newPassword) },
    { change: 'remove-sessions-of', person: person.id, exceptTokenHash: hashOfToken(plant, request.token) },
    { change: 'remove-invitation', person: person.id },
  ]);
}
