// What both stores say when a code that is good once was used already, so that nothing of the change is made.

import { fail, type Outcome } from '../domain/problem.ts';

export class CredentialUsedError extends Error {
  override readonly name = 'CredentialUsedError';
}

export function credentialUsed(): Outcome<never> {
  return fail('sign-in-refused', 'The code is wrong or was used before.', { where: 'code' });
}
