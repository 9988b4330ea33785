// All limits of a profile in their groups; `doing` adds to each what can be done with it.

import type { ReactNode } from 'react';
import type { RuleName, RuleProfile } from '../../../domain/rules/rule-profile.ts';
import { words } from '../../words/desk-words.ts';
import { groupNames, ruleGroups } from './rule-groups.ts';
import styles from './rule-list.module.css';
import { RuleRow } from './rule-row.tsx';

interface RuleListProps {
  readonly profile: RuleProfile;
  readonly doing?: (name: RuleName) => ReactNode;
}

export function RuleList({ profile, doing }: RuleListProps) {
  return groupNames.map((group) => (
    <section key={group} className={styles.group} aria-labelledby={`rules-${group}`}>
      <h2 id={`rules-${group}`}>{words.rules.groups[group]}</h2>
      <ul className={styles.list}>
        {ruleGroups[group].map((name) => (
          <RuleRow key={name} name={name} limit={profile[name]}>
            {doing?.(name)}
          </RuleRow>
        ))}
      </ul>
    </section>
  ));
}
