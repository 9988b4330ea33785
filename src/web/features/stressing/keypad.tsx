// Keys as large as a hand in a glove needs; the keyboard of a desk or a telephone works beside them.

import { words } from '../../words/desk-words.ts';
import styles from './keypad.module.css';
import type { PadKey } from './type-key.ts';

interface KeypadProps {
  /** What the key that writes the planned reading says; null where there is none. */
  readonly planned: string | null;
  readonly hasEighths: boolean;
  readonly onKey: (key: PadKey) => void;
  readonly onNext: () => void;
}

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

export function Keypad({ planned, hasEighths, onKey, onNext }: KeypadProps) {
  const text = words.stressing;
  const key = (name: PadKey, shown: string, label?: string) => (
    <button key={name} type="button" className={styles.key} aria-label={label} onClick={() => onKey(name)}>
      {shown}
    </button>
  );
  return (
    <fieldset className={styles.pad}>
      <legend className="for-screen-readers">{text.keypad}</legend>
      {digits.map((digit) => key(digit, digit))}
      {key('point', '.', text.point)}
      {key('0', '0')}
      {key('erase', '\u232b', text.erase)}
      {planned === null ? null : (
        <button type="button" className={`${styles.key} ${styles.wide}`} onClick={() => onKey('planned')}>
          {planned}
        </button>
      )}
      {hasEighths ? (
        <button type="button" className={`${styles.key} ${styles.wide}`} onClick={() => onKey('eighth')}>
          {text.eighth}
        </button>
      ) : null}
      <button
        type="button"
        className={`${styles.key} ${planned === null && !hasEighths ? styles.full : ''}`}
        onClick={onNext}
      >
        {text.nextField}
      </button>
    </fieldset>
  );
}
