// The repair an entry check proposes, as buttons: a person decides, nothing changes by itself.

import type { EntryCheck } from '../../charts/check-mark.tsx';
import { Button } from '../../controls/button.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import styles from './repair-buttons.module.css';

interface RepairButtonsProps {
  readonly fits: NonNullable<EntryCheck['fits']>;
  readonly onChoose: (value: number) => void;
}

export function RepairButtons({ fits, onChoose }: RepairButtonsProps) {
  const { calibrate } = words;
  const { value, alternatives = [] } = fits;
  const shown = (number: number) => formatNumber(number, { rule: 'as-typed' });
  return (
    <span className={styles.repairs}>
      <Button onClick={() => onChoose(value)}>{calibrate.putThere(shown(value))}</Button>
      {alternatives.map((other) => (
        <Button key={other} onClick={() => onChoose(other)}>
          {calibrate.putInstead(shown(other))}
        </Button>
      ))}
    </span>
  );
}
