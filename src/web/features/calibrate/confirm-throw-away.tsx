// Asks before a draft is thrown away. The browser's own modal dialog; the focus starts on the way back.

import { useEffect, useId, useRef } from 'react';
import { Button } from '../../controls/button.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './confirm-throw-away.module.css';

interface ConfirmThrowAwayProps {
  /** The draft in words. */
  readonly title: string;
  readonly onKeep: () => void;
  readonly onThrowAway: () => void;
}

export function ConfirmThrowAway({ title, onKeep, onThrowAway }: ConfirmThrowAwayProps) {
  const { calibrate } = words;
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();

  useEffect(() => {
    const element = dialog.current;
    element?.showModal();
    return () => element?.close();
  }, []);

  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onKeep();
      }}
    >
      <div className={styles.asked}>
        <h2 id={titleId}>{calibrate.throwAwayAsk}</h2>
        <p>{calibrate.throwAwayWhat(title)}</p>
        <div className={styles.ways}>
          <Button onClick={onKeep}>{calibrate.keepIt}</Button>
          <Button look="grave" onClick={onThrowAway}>
            {calibrate.throwAway}
          </Button>
        </div>
      </div>
    </dialog>
  );
}
