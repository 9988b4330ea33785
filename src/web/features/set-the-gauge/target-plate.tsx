// What is pulled: the strand and its part of the breaking load, or a force.

import type { Ref } from 'react';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './plate.module.css';
import { writePercent } from './write-percent.ts';

interface TargetPlateProps {
  readonly target: Target | null;
  /** The key that opens the choice, to give the focus back to. */
  readonly keyRef: Ref<HTMLButtonElement>;
  readonly onChange: () => void;
}

function nameOf(target: Target): string {
  const text = words.setTheGauge;
  if (target.by === 'strand') return text.strandTarget(writePercent(target.fraction));
  return target.strand === null ? text.force : text.forceOnStrand(target.strand);
}

export function TargetPlate({ target, keyRef, onChange }: TargetPlateProps) {
  const text = words.setTheGauge;
  if (target === null) {
    return (
      <section className={styles.plate} aria-label={text.target}>
        <p className={styles.ask}>{text.noTargetChosen}</p>
        <Button ref={keyRef} look="primary" forGloves onClick={onChange}>
          {text.chooseTarget}
        </Button>
      </section>
    );
  }
  return (
    <button ref={keyRef} type="button" className={styles.key} onClick={onChange}>
      <span>
        <span className={styles.small}>{nameOf(target)} </span>
        <span className={styles.below}>
          <strong className={styles.chosen}>{target.by === 'strand' ? target.strand : target.force}</strong>{' '}
          <span className={styles.change}>{text.changeTarget}</span>
        </span>
      </span>
    </button>
  );
}
