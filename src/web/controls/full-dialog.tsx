// A choice that takes the whole telephone screen, a sheet in the middle of a wide one. The browser's own modal dialog.

import { type ReactNode, type RefObject, useEffect, useId, useRef } from 'react';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import styles from './full-dialog.module.css';

interface FullDialogProps {
  readonly title: string;
  /** Takes the focus afterwards when what had it before is gone from the page. */
  readonly focusAfter?: RefObject<HTMLElement | null>;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Open as long as it is rendered; Escape and the close key call `onClose`, and focus returns to where it was. */
export function FullDialog({ title, focusAfter, onClose, children }: FullDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();

  useEffect(() => {
    const element = dialog.current;
    const focusedBefore = document.activeElement;
    element?.showModal();
    return () => {
      element?.close();
      if (focusedBefore instanceof HTMLElement && focusedBefore.isConnected) focusedBefore.focus();
      else focusAfter?.current?.focus();
    };
  }, [focusAfter]);

  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className={styles.head}>
        <h2 id={titleId}>{title}</h2>
        <Button forGloves onClick={onClose}>
          {words.app.close}
        </Button>
      </div>
      <div className={styles.body}>{children}</div>
    </dialog>
  );
}
