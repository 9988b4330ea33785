// A verdict of acceptance: a shape, a word and a colour, each telling it alone.

import type { Verdict } from '../../domain/calibration/acceptance-result.ts';
import { words } from '../words/desk-words.ts';
import styles from './verdict-mark.module.css';

const shapes: Readonly<Record<Verdict, string>> = {
  // Disc with a tick cut out of it.
  pass: 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18z M4.600 10.200l3.800 4 7-7.800-1.700-1.500-5.400 6-2.100-2.200z',
  // Triangle with a stroke cut out of it.
  'conditional-fail': 'M10 1.500 19 18.500H1z M9 7h2v6H9z M9 14.500h2v2H9z',
  // Half disc in a ring.
  'conditional-pass': 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18z M10 3.500a6.500 6.500 0 0 1 0 13z',
  // Square with a cross cut out of it.
  fail: 'M1.500 1.500h17v17h-17z M6.300 4.800 4.800 6.300 8.500 10l-3.700 3.700 1.500 1.500L10 11.500l3.700 3.700 1.500-1.500L11.500 10l3.700-3.700-1.500-1.500L10 8.500z',
  // Open ring.
  'not-judged': 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18z M10 4a6 6 0 1 0 0 12a6 6 0 1 0 0-12z',
};

interface VerdictMarkProps {
  readonly verdict: Verdict;
  readonly size?: 'plain' | 'large';
  /** The word beside the shape; that of the whole calibration where none is given. */
  readonly text?: string;
}

export function VerdictMark({ verdict, size = 'plain', text = words.charts.verdict(verdict) }: VerdictMarkProps) {
  return (
    <span className={styles.mark} data-verdict={verdict} data-size={size}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[verdict]} fillRule="evenodd" />
      </svg>
      <span>{text}</span>
    </span>
  );
}
