// The rules in force with who set them, the profiles that come with the program, and what each limit may be.

import type { RulesAnswer } from '../contract/rules.ts';
import { ruleFields, ruleNames } from '../domain/rules/rule-fields.ts';
import { shippedProfiles } from '../domain/rules/shipped-profiles.ts';
import type { Plant } from './plant.ts';

export function listRules({ state }: Plant): RulesAnswer {
  const { rules, rulesHash, rulesSet } = state;
  return {
    inForce: rules,
    rulesHash,
    entry: rulesSet?.seq ?? null,
    since: rulesSet?.at ?? null,
    by: rulesSet?.by ?? null,
    reason: rulesSet?.reason ?? null,
    waitingCalibrations: [...state.calibrations.values()].filter(({ status }) => status === 'submitted').length,
    shipped: [...shippedProfiles],
    fields: ruleNames.map((name) => ({ name, ...ruleFields[name] })),
  };
}
