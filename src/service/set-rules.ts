// Setting the rules of the plant: a profile that comes with the program or the one in force, with limits of the plant's own.

import { inForce, type RulesAnswer, type RulesInput } from '../contract/rules.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { editProfile } from '../domain/rules/edit-profile.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { findProfile } from './find-profile.ts';
import { listRules } from './list-rules.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/**
 * Puts rules in force. Due days, standings, acceptance and warnings follow at the next reading, and every review under way
 * begins anew. Problems: `ledger-conflict` when the rules are no longer those the person read, `field-invalid` for a
 * profile there is not and for rules equal to those in force, and those of `editProfile`.
 */
export function setRules(
  plant: Plant,
  input: RulesInput,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<RulesAnswer>> {
  return performAction(plant, {
    ...by,
    action: 'set-rules',
    decide: (at) => {
      const { rules, rulesHash } = plant.state;
      if (input.rulesHash !== rulesHash) {
        return fail('ledger-conflict', 'The rules were changed since you read them; read them again.', {
          where: 'rulesHash',
          needed: rulesHash ?? 'null',
          given: input.rulesHash ?? 'null',
        });
      }
      const from = input.from === inForce ? succeed(rules) : findProfile(input.from, 'from');
      if (!from.ok) return from;
      const profile = editProfile(from.value, input);
      if (!profile.ok) return profile;
      if (canonicalText(profile.value) === canonicalText(rules)) {
        return fail('field-invalid', 'These are the rules in force already; there is nothing to change.', {
          where: 'changes',
          needed: 'at least one limit or the title other than in the rules in force',
        });
      }
      const body = { profile: profile.value, reason: input.reason };
      return succeed([{ at, actor: by.actor.id, kind: 'rules-set/4', subject: profile.value.name, body }]);
    },
    answer: () => succeed(listRules(plant)),
  });
}
