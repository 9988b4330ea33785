// The readings a pull stops at, opened on demand: preload, equal steps, final.

import { lazy, Suspense, useState } from 'react';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/words.ts';
import styles from './readings-part.module.css';
import type { StepListProps } from './step-list.tsx';

const StepList = lazy(async () => ({ default: (await import('./step-list.tsx')).StepList }));

export function StepsPart({ device, answer }: StepListProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className={styles.part} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{words.setTheGauge.stepsTitle}</summary>
      {isOpen ? (
        <Suspense fallback={<WaitingNote />}>
          <StepList device={device} answer={answer} />
        </Suspense>
      ) : null}
    </details>
  );
}
