// What an empty list says, and what can be done then.

import { Link } from 'wouter';
import { words } from '../../words/desk-words.ts';
import styles from './nothing-due.module.css';

export function NothingDue({ within }: { readonly within: number | null }) {
  const { whatsDue } = words;
  return (
    <div className={styles.nothing}>
      <p className={styles.title}>{within === null ? whatsDue.nonePairs : whatsDue.noneDue(within)}</p>
      <p>
        {within === null ? (
          <Link href="/equipment">{whatsDue.formPair}</Link>
        ) : (
          <Link href="/due?within=all">{whatsDue.showAll}</Link>
        )}
      </p>
    </div>
  );
}
