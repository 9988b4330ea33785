// Choosing what is pulled: a strand size with a part of its breaking load, or a force in any unit.

import { type RefObject, useState } from 'react';
import type { StrandListAnswer } from '../../../contract/plant.ts';
import { FullDialog } from '../../controls/full-dialog.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './chooser.module.css';
import { ForceForm } from './force-form.tsx';
import { StrandForm } from './strand-form.tsx';

interface TargetChooserProps {
  readonly target: Target | null;
  readonly strands: StrandListAnswer['strands'];
  readonly onChoose: (target: Target) => void;
  /** Takes the focus when the key pressed to open this is gone. */
  readonly focusAfter: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
}

export function TargetChooser({ target, strands, onChoose, focusAfter, onClose }: TargetChooserProps) {
  const text = words.setTheGauge;
  const [by, setBy] = useState<Target['by']>(target?.by ?? 'strand');
  return (
    <FullDialog title={text.chooseTarget} focusAfter={focusAfter} onClose={onClose}>
      <div className={styles.form}>
        <div className={styles.two}>
          <button type="button" className={styles.key} aria-pressed={by === 'strand'} onClick={() => setBy('strand')}>
            {text.byStrand}
          </button>
          <button type="button" className={styles.key} aria-pressed={by === 'force'} onClick={() => setBy('force')}>
            {text.byForce}
          </button>
        </div>
        {by === 'strand' ? (
          <StrandForm strands={strands} target={target?.by === 'strand' ? target : null} onChoose={onChoose} />
        ) : (
          <ForceForm strands={strands} target={target?.by === 'force' ? target : null} onChoose={onChoose} />
        )}
      </div>
    </FullDialog>
  );
}
