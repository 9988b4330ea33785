// Choosing what is pulled: a strand size with a part of its breaking load, a force in any unit, or a bed of this device with its
// pair.

import { type RefObject, useState } from 'react';
import type { StrandListAnswer } from '../../../contract/plant.ts';
import { FullDialog } from '../../controls/full-dialog.tsx';
import { words } from '../../words/words.ts';
import { BedKeys } from './bed-keys.tsx';
import type { Choice, Target } from './choice.ts';
import styles from './chooser.module.css';
import { ForceForm } from './force-form.tsx';
import type { KeptBed } from './kept-beds.ts';
import { StrandForm } from './strand-form.tsx';

interface TargetChooserProps {
  readonly target: Target | null;
  readonly strands: StrandListAnswer['strands'];
  readonly beds: readonly KeptBed[];
  readonly keepBeds: (beds: readonly KeptBed[]) => boolean;
  readonly onChoose: (target: Target) => void;
  readonly onChooseBed: (choice: Choice) => void;
  /** Takes the focus when the key pressed to open this is gone. */
  readonly focusAfter: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
}

export function TargetChooser(props: TargetChooserProps) {
  const { target, strands, beds, keepBeds, onChoose, onChooseBed, focusAfter, onClose } = props;
  const text = words.setTheGauge;
  const [by, setBy] = useState<Target['by'] | 'bed'>(target?.by ?? 'strand');
  return (
    <FullDialog title={text.chooseTarget} focusAfter={focusAfter} onClose={onClose}>
      <div className={styles.form}>
        <div className={styles.three}>
          <button type="button" className={styles.key} aria-pressed={by === 'strand'} onClick={() => setBy('strand')}>
            {text.byStrand}
          </button>
          <button type="button" className={styles.key} aria-pressed={by === 'force'} onClick={() => setBy('force')}>
            {text.byForce}
          </button>
          <button type="button" className={styles.key} aria-pressed={by === 'bed'} onClick={() => setBy('bed')}>
            {text.byBed}
          </button>
        </div>
        {by === 'strand' ? (
          <StrandForm strands={strands} target={target?.by === 'strand' ? target : null} onChoose={onChoose} />
        ) : null}
        {by === 'force' ? (
          <ForceForm strands={strands} target={target?.by === 'force' ? target : null} onChoose={onChoose} />
        ) : null}
        {by === 'bed' ? <BedKeys beds={beds} keep={keepBeds} onChoose={onChooseBed} /> : null}
      </div>
    </FullDialog>
  );
}
