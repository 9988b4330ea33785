// The table of readings of a pair over its range, opened on demand, for printing or for looking one force up after another.

import { lazy, Suspense, useState } from 'react';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/words.ts';
import styles from './readings-part.module.css';
import type { ReadingsTableProps } from './readings-table.tsx';

// Seldom opened, so its script is not part of the crew's first load.
const ReadingsTable = lazy(async () => ({ default: (await import('./readings-table.tsx')).ReadingsTable }));

export function ReadingsPart({ device, line }: ReadingsTableProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className={styles.part} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{words.setTheGauge.readingsTitle(line.tag)}</summary>
      {isOpen ? (
        <Suspense fallback={<WaitingNote />}>
          <ReadingsTable device={device} line={line} />
        </Suspense>
      ) : null}
    </details>
  );
}
