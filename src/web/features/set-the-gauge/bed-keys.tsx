// The beds of this device as keys: each sets the pair and what is pulled in one tap.

import { words } from '../../words/words.ts';
import styles from './bed-keys.module.css';
import type { Choice, Target } from './choice.ts';
import chooser from './chooser.module.css';
import { forgetBed, type KeptBed } from './kept-beds.ts';
import { writePercent } from './write-percent.ts';

interface BedKeysProps {
  readonly beds: readonly KeptBed[];
  readonly keep: (beds: readonly KeptBed[]) => boolean;
  readonly onChoose: (choice: Choice) => void;
}

function writeTarget(target: Target | null): string {
  const text = words.setTheGauge;
  if (target === null) return '';
  if (target.by === 'force') return target.force;
  return `${target.strand}, ${text.percent(writePercent(target.fraction))}`;
}

export function BedKeys({ beds, keep, onChoose }: BedKeysProps) {
  const text = words.setTheGauge;
  if (beds.length === 0) return <p>{text.noBeds}</p>;
  return (
    <ul className={chooser.keys}>
      {beds.map(({ name, choice }) => (
        <li key={name} className={styles.bed}>
          <button type="button" className={chooser.key} onClick={() => onChoose(choice)}>
            {name}
            <span className={chooser.small}>
              {[choice.pair, writeTarget(choice.target)].filter((part) => part !== null && part !== '').join(', ')}
            </span>
          </button>
          <button
            type="button"
            className={styles.forget}
            aria-label={text.forgetBed(name)}
            onClick={() => keep(forgetBed(beds, name))}
          >
            {text.forget}
          </button>
        </li>
      ))}
    </ul>
  );
}
