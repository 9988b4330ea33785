// The weight of an entry check: a shape, a word and a colour, each telling it alone.

import type { FitAnswer } from '../../contract/fit.ts';
import { words } from '../words/desk-words.ts';
import styles from './check-mark.module.css';

export type EntryCheck = FitAnswer['checks'][number];
type Weight = EntryCheck['weight'];

const shapes: Readonly<Record<Weight, string>> = {
  error: 'M1.500 1.500h17v17h-17z M8.600 4.500v7h2.800v-7z M8.600 13v2.800h2.800V13z',
  doubt: 'M10 .8 19.200 10 10 19.200.8 10z M8.700 5.500v6h2.600v-6z M8.700 12.800v2.400h2.600v-2.400z',
};

interface CheckMarkProps {
  readonly weight: Weight;
  readonly size?: 'plain' | 'large';
  /** The word beside the shape; that of the weight where none is given. */
  readonly text?: string;
}

export function CheckMark({ weight, size = 'plain', text = words.charts.weight(weight) }: CheckMarkProps) {
  return (
    <span className={styles.mark} data-weight={weight} data-size={size}>
      <svg viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[weight]} fillRule="evenodd" />
      </svg>
      <span>{text}</span>
    </span>
  );
}
