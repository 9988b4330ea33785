// What a password that is newly set must be. The hash of it is made by the port of passwords.

import { fail, type Outcome, succeed } from '../domain/problem.ts';

/** Fewest characters of a new password. Source: NIST SP 800-63B, 15 alone and 8 beside a second factor (from memory); 12 is a house rule between them. */
export const shortestPassword = 12;

/** Fewest different characters. House rule: "111111111111" and the like are tried first. */
const fewestDifferent = 5;

/** Answers whether a password may be set. Problem: `field-invalid`, which never repeats what was typed. */
export function checkNewPassword(password: string, where: string): Outcome<void> {
  const characters = [...password];
  if (characters.length < shortestPassword) {
    return fail('field-invalid', 'The password is too short.', {
      where,
      needed: `at least ${shortestPassword} characters`,
    });
  }
  if (new Set(characters).size < fewestDifferent) {
    return fail('field-invalid', 'The password repeats the same few characters.', {
      where,
      needed: `at least ${fewestDifferent} different characters`,
    });
  }
  return succeed(undefined);
}
