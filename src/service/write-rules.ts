// A rule profile line by line in plant words: what is limited, the value with its unit, how it is known, its source.

import { ruleFields, ruleNames, writeRuleValue } from '../domain/rules/rule-fields.ts';
import type { Provenance, RuleName, RuleProfile } from '../domain/rules/rule-profile.ts';

const known: Readonly<Record<Provenance, string>> = {
  read: 'read',
  'second-hand': 'second-hand',
  memory: 'from memory',
  computed: 'computed',
  practice: 'common practice',
  house: 'house rule',
  plant: 'set by the plant',
};

export interface RuleLine {
  readonly name: RuleName;
  readonly meaning: string;
  readonly value: string;
  readonly known: string;
  readonly source: string;
}

/** A limit the profile leaves out is there with what that means: not judged, none, no. */
export function writeRules(profile: RuleProfile): readonly RuleLine[] {
  return ruleNames.map((name) => {
    const limit = profile[name];
    const { meaning, without } = ruleFields[name];
    if (limit === undefined) return { name, meaning, value: without ?? '-', known: '-', source: '-' };
    const value = writeRuleValue(name, limit.value);
    return { name, meaning, value, known: known[limit.provenance], source: limit.source };
  });
}
