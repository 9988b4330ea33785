// Asks once more before what was typed is thrown away.

import { useEffect, useRef } from 'react';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './rules-editor.module.css';

interface ThrowAwayProps {
  readonly onThrowAway: () => void;
  readonly onKeep: () => void;
}

/** Takes the focus, since the button that asked for it is gone. */
export function ThrowAway({ onThrowAway, onKeep }: ThrowAwayProps) {
  const text = words.rules;
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  return (
    <div className={styles.stale} role="alert">
      <p>{text.throwAwayAsk}</p>
      <div className={styles.ways}>
        <Button ref={keep} onClick={onKeep}>
          {text.keepTyping}
        </Button>
        <Button look="grave" onClick={onThrowAway}>
          {text.throwAwayNow}
        </Button>
      </div>
    </div>
  );
}
