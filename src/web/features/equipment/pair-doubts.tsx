// What puts calibrations of this pair in doubt.

import { Link } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { DoubtItem } from '../../controls/doubt-item.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './pair-doubts.module.css';

export function PairDoubts({ page }: { readonly page: PairPageAnswer }) {
  const { doubt } = words;
  if (page.doubts.length === 0) return null;
  return (
    <section className={styles.doubts} aria-labelledby="doubts-title">
      <h2 id="doubts-title">{doubt.ofPairTitle}</h2>
      <ul>
        {page.doubts.map((item) => (
          <DoubtItem key={`${item.calibration} ${item.name}`} item={item} />
        ))}
      </ul>
      <p>
        <Link href="/in-doubt">{doubt.everyDoubt}</Link>
      </p>
    </section>
  );
}
