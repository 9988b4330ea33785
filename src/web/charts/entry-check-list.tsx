// What looks wrong in a run sheet: each check with its weight by shape and word, and a link to its cell where there is one.

import type { ReactNode } from 'react';
import type { FitAnswer } from '../../contract/fit.ts';
import { words } from '../words/desk-words.ts';
import styles from './entry-check-list.module.css';

type EntryCheck = FitAnswer['checks'][number];

interface EntryCheckListProps {
  readonly checks: readonly EntryCheck[];
  /** What leads to the place a check names; nothing where it names none on this page. */
  readonly linkTo?: (where: string) => ReactNode;
}

const shapes: Readonly<Record<EntryCheck['weight'], string>> = {
  error: 'M1.500 1.500h17v17h-17z M8.600 4.500v7h2.800v-7z M8.600 13v2.800h2.800V13z',
  doubt: 'M10 .8 19.200 10 10 19.200.8 10z M8.700 5.500v6h2.600v-6z M8.700 12.800v2.400h2.600v-2.400z',
};

export function EntryCheckList({ checks, linkTo }: EntryCheckListProps) {
  return (
    <section className={styles.checks}>
      <h2>{words.charts.checksTitle}</h2>
      {checks.length === 0 ? <p className={styles.none}>{words.charts.noChecks}</p> : null}
      <ul className={styles.list}>
        {checks.map((check) => (
          <li key={`${check.code} ${check.where} ${check.message}`} className={styles.check}>
            <span className={styles.weight} data-weight={check.weight}>
              <svg viewBox="0 0 20 20" aria-hidden="true">
                <path d={shapes[check.weight]} fillRule="evenodd" />
              </svg>
              {words.charts.weight(check.weight)}
            </span>
            <p>
              {check.message} {linkTo?.(check.where)}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
