// What looks wrong in a run sheet: each check with its weight by shape and word, and a link to its cell where there is one.

import type { ReactNode } from 'react';
import { inLanguageAtDesk } from '../words/desk-sentence.ts';
import { words } from '../words/desk-words.ts';
import { CheckMark, type EntryCheck } from './check-mark.tsx';
import styles from './entry-check-list.module.css';

interface EntryCheckListProps {
  readonly checks: readonly EntryCheck[];
  /** What leads to the place a check names; nothing where it names none on this page. */
  readonly linkTo?: (where: string) => ReactNode;
  /** What puts the repair a check proposes in place; nothing where it proposes none. */
  readonly repairOf?: (check: EntryCheck) => ReactNode;
  /** Said where there is no check; that nothing looks wrong where it is left out. */
  readonly none?: string;
}

export function EntryCheckList({ checks, linkTo, repairOf, none = words.charts.noChecks }: EntryCheckListProps) {
  return (
    <section className={styles.checks}>
      <h2>{words.charts.checksTitle}</h2>
      {checks.length === 0 ? <p className={styles.none}>{none}</p> : null}
      <ul className={styles.list}>
        {checks.map((check) => (
          <li key={`${check.code} ${check.where} ${check.message}`} className={styles.check}>
            <CheckMark weight={check.weight} />
            <p>
              {inLanguageAtDesk(check.message)} {linkTo?.(check.where)}
              {repairOf?.(check)}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
