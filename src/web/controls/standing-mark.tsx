// How a pair stands: a shape, a word and a colour, each telling it alone.

import type { Standing } from '../../domain/lookup/standing.ts';
import { words } from '../words/words.ts';
import styles from './standing-mark.module.css';

const shapes: Readonly<Record<Standing, string>> = {
  // Full disc.
  ready: 'M10 1.5a8.5 8.5 0 1 1 0 17a8.5 8.5 0 1 1 0-17z',
  // Ring filled below: most of the time has run.
  'due-soon': 'M10 1.5a8.5 8.5 0 1 1 0 17a8.5 8.5 0 1 1 0-17z M10 4a6 6 0 0 0-6 6h12a6 6 0 0 0-6-6z',
  // Octagon with a bar across.
  overdue: 'M6.2 1h7.6L19 6.2v7.6L13.8 19H6.2L1 13.8V6.2z M5 8.2v3.6h10V8.2z',
  // Lozenge leaning off its axis.
  drifting: 'M3.5 3.5 19 1l-2.500 15.500L1 19z M7 7l-2 8 8-2 2-8z',
  // Triangle on its point, with a slot and a dot.
  'in-doubt': 'M0.800 2h18.400L10 18.800z M8.800 4.600h2.400v5.800H8.800z M8.800 11.600h2.400v2.400H8.800z',
  // Square with two upright slots.
  'on-hold': 'M1.500 1.500h17v17h-17z M5.800 5v10h2.800V5z M11.400 5v10h2.800V5z',
  // Open cross.
  'not-calibrated': 'M4 1.200 10 7.200l6-6L18.800 4l-6 6 6 6L16 18.800l-6-6-6 6L1.200 16l6-6-6-6z',
};

interface StandingMarkProps {
  readonly standing: Standing;
  readonly size?: 'plain' | 'large';
}

export function StandingMark({ standing, size = 'plain' }: StandingMarkProps) {
  return (
    <span className={styles.mark} data-standing={standing} data-size={size}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[standing]} fillRule="evenodd" />
      </svg>
      <span>{words.app.standings[standing]}</span>
    </span>
  );
}
