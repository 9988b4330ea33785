// The weight of a warning: a shape, a word and a colour, each telling it alone.

import type { WarningWeight } from '../../domain/lookup/warning.ts';
import { words } from '../words/words.ts';
import styles from './warning-mark.module.css';

const shapes: Readonly<Record<WarningWeight, string>> = {
  // Disc struck through.
  refuse: 'M10 1a9 9 0 1 1 0 18a9 9 0 1 1 0-18z M4.200 8.300v3.400h11.600V8.300z',
  // Octagon with an upright bar and a dot.
  stop: 'M6.200 1h7.600L19 6.200v7.600L13.800 19H6.200L1 13.800V6.200z M8.600 4.500v7h2.800v-7z M8.600 13v2.800h2.800V13z',
  // Triangle with an upright bar and a dot.
  caution: 'M10 1 19.600 18.500H.4z M8.700 7v5.700h2.600V7z M8.700 14v2.500h2.600V14z',
  // A leaf of paper with lines.
  note: 'M3 1h14v18H3z M6 5.200v1.800h8V5.200z M6 9.100v1.800h8V9.100z M6 13v1.800h5V13z',
};

export function WarningMark({ weight }: { readonly weight: WarningWeight }) {
  return (
    <span className={styles.mark} data-weight={weight}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[weight]} fillRule="evenodd" />
      </svg>
      <span>{words.app.weights[weight]}</span>
    </span>
  );
}
