// Marks what could not be done: an arrow that turns back, and the word. Never the mark of a stop, which withholds a reading.

import { words } from '../words/words.ts';
import styles from './warning-mark.module.css';

export function NotDoneMark({ word = words.problems.notDone }: { readonly word?: string }) {
  return (
    <span className={styles.mark}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path d="M6.500 3.500V7H13a5.500 5.500 0 0 1 0 11H6v-3h7a2.500 2.500 0 0 0 0-5H6.500v3.500L.8 8.500z" />
      </svg>
      <span>{word}</span>
    </span>
  );
}
