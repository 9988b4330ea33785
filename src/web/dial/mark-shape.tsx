// The shape of each mark, the same on the round face, on the bar and in the legend. Drawn around 0/0, tip upwards.

import type { MarkKind } from './dial-face.ts';
import styles from './mark-shape.module.css';

/** Ring for the preload, solid arrowhead for the reading to set, two shut bars for the reading never to pass. */
export function MarkShape({ kind }: { readonly kind: MarkKind }) {
  switch (kind) {
    case 'preload':
      return <circle className={styles.preload} r="5.2" />;
    case 'set':
      return <path className={styles.set} d="M0-9 7 6.5H-7z" />;
    case 'limit':
      return <path className={styles.limit} d="M-4.2-9h3v18h-3zM1.2-9h3v18h-3z" />;
  }
}
