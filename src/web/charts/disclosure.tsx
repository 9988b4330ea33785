// A part of a page that opens on demand; what it holds is computed and drawn only while it is open.

import { type ReactNode, useState } from 'react';
import styles from './disclosure.module.css';

interface DisclosureProps {
  readonly title: string;
  /** The most important figure of what it holds, in words. */
  readonly gist?: string | undefined;
  readonly render: () => ReactNode;
}

export function Disclosure({ title, gist, render }: DisclosureProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className={styles.disclosure} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary className={styles.summary}>
        <svg className={styles.turn} viewBox="0 0 12 12" aria-hidden="true">
          <path d="M3 1l6 5-6 5z" />
        </svg>
        <span className={styles.title}>{title}</span>
        {gist === undefined ? null : <span className={styles.gist}>{gist}</span>}
      </summary>
      {isOpen ? <div className={styles.held}>{render()}</div> : null}
    </details>
  );
}
