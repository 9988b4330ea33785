// Bodies and answers about people, invitations, passwords, second factors and devices. Signing in itself is in plant.ts.

import { z } from 'zod';
import { roles } from '../domain/rules/role.ts';
import { reasonBody } from './equipment.ts';
import { newPassword, personAnswer, personId, personName } from './plant.ts';
import { plainLine } from './typed-text.ts';

const role = z.enum(roles, 'One of the roles');
const code = z.string('The one-time code').min(1, 'The one-time code').max(80);
const password = z.string('The password').min(1, 'The password').max(200);
const oneTimePassword = z
  .string('The six digits of the authenticator')
  .regex(/^\s*\d{3}\s?\d{3}\s*$/, 'The six digits of the authenticator');

export const invitationBody = z.object({ id: personId, name: personName, role });
export const invitationAnswer = z.object({
  person: personAnswer,
  code: z.string().describe('Shown this once; whoever brings it sets the password'),
  expiresAt: z.string(),
});
export const acceptanceBody = z.object({ id: z.string('A sign-in name').max(60), code, password: newPassword });

export const personChangeBody = reasonBody.extend({ name: personName, role });
export const passwordBody = z.object({ password, newPassword });

export const secondFactorBody = z.object({ password });
export const secondFactorAnswer = z.object({
  secret: z.string().describe('In base 32, shown this once'),
  address: z.string().describe('The same for an authenticator that reads a square code'),
});
export const secondFactorStateAnswer = z.object({ isInUse: z.boolean() });
export const secondFactorConfirmationBody = z.object({ oneTimePassword });
export const secondFactorRemovalBody = z.object({ password, oneTimePassword: oneTimePassword.optional() });

export const deviceAnswer = z.object({
  id: z.string(),
  name: z.string(),
  admittedBy: z.string(),
  admittedAt: z.string(),
  barred: z.object({ by: z.string(), at: z.string(), reason: z.string() }).optional(),
});
export const deviceListAnswer = z.object({ devices: z.array(deviceAnswer) });
export const deviceBody = z.object({
  id: personId,
  name: plainLine('The name of the device', 80).min(2, 'The name of the device'),
});
export const admittedDeviceAnswer = z.object({
  device: deviceAnswer,
  code: z.string().describe('Shown this once; typed on the device it gets the pass'),
  expiresAt: z.string(),
});
export const devicePassBody = z.object({ id: z.string('The id of the device').max(60), code });

/** An answer that says no more than that it was done. */
export const doneAnswer = z.object({ done: z.literal(true) });
