// A code or secret that is shown this once: large, in letters that cannot be mistaken, with a way to copy it.

import { type ReactNode, useState } from 'react';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import styles from './shown-once.module.css';

interface ShownOnceProps {
  readonly title: string;
  readonly code: string;
  /** What to do with it, and until when. */
  readonly children: ReactNode;
}

export function ShownOnce({ title, code, children }: ShownOnceProps) {
  const [isCopied, setCopied] = useState(false);
  // Browsers give the clipboard to pages over TLS and to this machine's own alone.
  const canCopy = typeof navigator.clipboard?.writeText === 'function';
  const copy = () => navigator.clipboard.writeText(code).then(() => setCopied(true));
  return (
    <div className={styles.once} role="status">
      <p className={styles.title}>{title}</p>
      <p className={styles.code}>{code}</p>
      {canCopy ? <Button onClick={() => void copy()}>{isCopied ? words.app.copied : words.app.copy}</Button> : null}
      <div>{children}</div>
      <p className={styles.title}>{words.app.shownThisOnce}</p>
    </div>
  );
}
