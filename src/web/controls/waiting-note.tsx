// Says that an answer is being waited for. It appears after a moment only, so that a quick answer does not flicker.

import { words } from '../words/words.ts';
import styles from './waiting-note.module.css';

export function WaitingNote({ text = words.app.waiting }: { readonly text?: string }) {
  return (
    <p className={styles.waiting} role="status">
      {text}
    </p>
  );
}
