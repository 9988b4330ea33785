// One limit: its name, value, how it is known and its source, and room for what can be done with it.

import type { ReactNode } from 'react';
import type { Limit, RuleName } from '../../../domain/rules/rule-profile.ts';
import { words } from '../../words/desk-words.ts';
import { KnownMark } from './known-mark.tsx';
import styles from './rule-row.module.css';
import { writeLimit } from './write-limit.ts';

interface RuleRowProps {
  readonly name: RuleName;
  readonly limit: Limit | undefined;
  readonly children?: ReactNode;
}

export function RuleRow({ name, limit, children }: RuleRowProps) {
  const { rules } = words;
  return (
    <li className={styles.row} data-rule={name}>
      <div>
        <h3>{rules.limits[name].name}</h3>
        <p className={styles.what}>{rules.limits[name].what}</p>
      </div>
      <p className={styles.value} data-absent={limit === undefined}>
        {writeLimit(name, limit)}
      </p>
      {limit === undefined ? (
        <p className={styles.source}>{rules.noSource}</p>
      ) : (
        <div>
          <KnownMark provenance={limit.provenance} />
          <p className={styles.source}>{rules.basis(limit.provenance, limit.source)}</p>
        </div>
      )}
      {children === undefined ? null : <div className={styles.doing}>{children}</div>}
    </li>
  );
}
