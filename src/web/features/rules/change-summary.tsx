// What would change against the rules in force, limit by limit, before anything is written.

import type { RulesAnswer } from '../../../contract/rules.ts';
import type { Limit, RuleName, RuleProfile } from '../../../domain/rules/rule-profile.ts';
import { words } from '../../words/desk-words.ts';
import styles from './change-summary.module.css';
import { KnownMark } from './known-mark.tsx';
import { differencesOf } from './rules-draft.ts';
import { writeLimit } from './write-limit.ts';

export function ChangeSummary({ profile, rules }: { readonly profile: RuleProfile; readonly rules: RulesAnswer }) {
  const text = words.rules;
  const differences = differencesOf(profile, rules);
  const isRenamed = profile.title !== rules.inForce.title;
  return (
    <section className={styles.summary} aria-labelledby="rules-summary">
      <h2 id="rules-summary">{text.summaryTitle}</h2>
      {differences.length === 0 && !isRenamed ? <p>{text.nothingChanges}</p> : null}
      {differences.length > 0 || isRenamed ? (
        <ul className={styles.list}>
          {isRenamed ? (
            <li className={styles.item}>
              <h3>{text.titleRow}</h3>
              <Side label={text.was}>{rules.inForce.title}</Side>
              <Side label={text.becomes}>{profile.title === '' ? text.titleToCome : profile.title}</Side>
            </li>
          ) : null}
          {differences.map(({ name, was, becomes }) => (
            <li key={name} className={styles.item} data-difference={name}>
              <h3>{text.limits[name].name}</h3>
              <LimitSide label={text.was} name={name} limit={was} />
              <LimitSide label={text.becomes} name={name} limit={becomes} />
            </li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}

function LimitSide({ label, name, limit }: { label: string; name: RuleName; limit: Limit | undefined }) {
  return (
    <div>
      <Side label={label}>{writeLimit(name, limit)}</Side>
      {limit === undefined ? null : (
        <p className={styles.source}>
          <KnownMark provenance={limit.provenance} />
          <br />
          {words.rules.basis(limit.provenance, limit.source)}
        </p>
      )}
    </div>
  );
}

function Side({ label, children }: { readonly label: string; readonly children: string }) {
  return (
    <p>
      <span className={styles.label}>{label}</span> <strong className={styles.value}>{children}</strong>
    </p>
  );
}
