// How a limit is known: a shape and words, since nothing here may look more certain than it is.

import type { Provenance } from '../../../domain/rules/rule-profile.ts';
import { words } from '../../words/desk-words.ts';
import styles from './known-mark.module.css';

const shapes: Readonly<Record<Provenance, string>> = {
  // An open book.
  read: 'M1 4c3-1 6-1 9 1c3-2 6-2 9-1v12c-3-1-6-1-9 1c-3-2-6-2-9-1z M9.200 7v8h1.600V7z',
  // Two sheets, one behind the other.
  'second-hand': 'M2 2h11v3H5v11H2z M7 7h11v11H7z',
  // A ring with a gap.
  memory: 'M10 1.500a8.500 8.500 0 1 0 8.500 8.500h-3a5.500 5.500 0 1 1-5.500-5.500z',
  // Two bars, as in an equation.
  computed: 'M2 5h16v3.500H2z M2 11.500h16V15H2z',
  // A wave.
  practice: 'M1 12c3-8 6-8 9-3s6 5 9-3v4c-3 8-6 8-9 3s-6-5-9 3z',
  // A house.
  house: 'M10 1.500 19 9.500h-2.500V18h-13V9.500H1z',
  // A filled square with a notch: the plant's own stamp.
  plant: 'M2 2h16v16H2z M6 9v2.500l3 3 5.500-6-1.800-1.800L9 11z',
};

export function KnownMark({ provenance }: { readonly provenance: Provenance }) {
  return (
    <span className={styles.mark} data-provenance={provenance}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path d={shapes[provenance]} fillRule="evenodd" />
      </svg>
      <span>{words.rules.known[provenance]}</span>
    </span>
  );
}
