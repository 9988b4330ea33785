// What is pulled: the strand and its part of the breaking load, or a force.

import { Button } from '../../controls/button.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './plate.module.css';
import { writePercent } from './write-percent.ts';

interface TargetPlateProps {
  readonly target: Target | null;
  readonly onChange: () => void;
}

export function TargetPlate({ target, onChange }: TargetPlateProps) {
  const text = words.setTheGauge;
  if (target === null) {
    return (
      <section className={styles.plate} aria-label={text.target}>
        <p className={styles.ask}>{text.noTargetChosen}</p>
        <Button look="primary" forGloves onClick={onChange}>
          {text.chooseTarget}
        </Button>
      </section>
    );
  }
  return (
    <button type="button" className={styles.key} onClick={onChange}>
      <span>
        <span className={styles.small}>
          {target.by === 'strand' ? text.strandTarget(writePercent(target.fraction)) : text.force}{' '}
        </span>
        <span className={styles.below}>
          <strong className={styles.chosen}>{target.by === 'strand' ? target.strand : target.force}</strong>{' '}
          <span className={styles.change}>{text.changeTarget}</span>
        </span>
      </span>
    </button>
  );
}
