// A shipped rule profile by its name.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { shippedProfiles } from '../domain/rules/shipped-profiles.ts';

/** Answers the shipped profile of a name; `where` says what held it. Problem: `field-invalid` with the names there are. */
export function findProfile(name: string, where: string): Outcome<RuleProfile> {
  const wanted = name.trim().toLowerCase();
  const found = shippedProfiles.find((profile) => profile.name === wanted);
  if (found !== undefined) return succeed(found);
  return fail('field-invalid', `No rule profile "${name}" comes with the program.`, {
    where,
    needed: `one of ${shippedProfiles.map((profile) => profile.name).join(', ')}`,
    given: name,
  });
}
