// A part of the page that is closed until it is wanted: seldom opened, so its script is not part of the crew's first load.

import { type ReactNode, Suspense, useState } from 'react';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import styles from './readings-part.module.css';

interface OpenedPartProps {
  readonly title: string;
  /** Rendered once it is open. */
  readonly children: ReactNode;
}

export function OpenedPart({ title, children }: OpenedPartProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className={styles.part} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen ? <Suspense fallback={<WaitingNote />}>{children}</Suspense> : null}
    </details>
  );
}
