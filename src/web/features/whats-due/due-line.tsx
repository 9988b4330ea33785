// One pair of the list: tag, standing and the sentence behind it, and how long it has left. It leads to the pair.

import { Link } from 'wouter';
import type { PairLine } from '../../../contract/equipment.ts';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import styles from './due-line.module.css';

export function DueLine({ pair }: { readonly pair: PairLine }) {
  const { whatsDue } = words;
  const { tag, jack, gauge, standing, because, dueDate, daysLeft, waiting } = pair;
  return (
    <li className={styles.line}>
      <Link href={`/equipment/${encodeURIComponent(tag)}`} className={styles.pair}>
        {tag}
      </Link>
      <p className={styles.parts}>{whatsDue.parts(jack, gauge)}</p>
      <p className={styles.when}>
        {dueDate === null || daysLeft === null ? (
          whatsDue.never
        ) : (
          <>
            <span className={styles.left}>{whatsDue.left(daysLeft)}</span>
            <span className={styles.day}>{whatsDue.due(dueDate)}</span>
          </>
        )}
      </p>
      <div className={styles.why}>
        <StandingMark standing={standing} />
        <p>{inLanguage(because)}</p>
        {waiting === 0 ? null : <p className={styles.waiting}>{whatsDue.waiting(waiting)}</p>}
      </div>
    </li>
  );
}
