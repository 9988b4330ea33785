// Pairs with how they stand; each line leads to the pair's page.

import { Link } from 'wouter';
import type { PairLine } from '../../../contract/equipment.ts';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './pair-list.module.css';

interface PairListProps {
  readonly pairs: readonly PairLine[];
  /** Said where there is no pair. */
  readonly none: string;
}

export function PairList({ pairs, none }: PairListProps) {
  const { equipment } = words;
  if (pairs.length === 0) return <p>{none}</p>;
  return (
    <ul className={styles.list}>
      {pairs.map((pair) => (
        <li key={pair.tag}>
          <Link href={`/equipment/${encodeURIComponent(pair.tag)}`} className={styles.pair}>
            <span className={styles.tag}>{pair.tag}</span>
            <span className={styles.parts}>{equipment.parts(pair.jack, pair.gauge)}</span>
            <StandingMark standing={pair.standing} />
            <span className={styles.facts}>
              <span className={styles.due}>
                {pair.dueDate === null ? equipment.notDue : equipment.due(pair.dueDate)}
              </span>
              {pair.waiting === 0 ? null : <span className={styles.waiting}>{equipment.waiting(pair.waiting)}</span>}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
