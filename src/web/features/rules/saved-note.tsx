// What was put in force just now, as the ledger holds it, and where to go from there.

import { useEffect, useRef } from 'react';
import type { RulesAnswer } from '../../../contract/rules.ts';
import { ButtonLink } from '../../controls/button-link.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './saved-note.module.css';
import { writeDigits } from './write-limit.ts';

/** Takes the focus, since the form that had it is gone. */
export function SavedNote({ rules }: { readonly rules: RulesAnswer }) {
  const text = words.rules;
  const note = useRef<HTMLDivElement>(null);
  useEffect(() => note.current?.focus(), []);
  return (
    <div ref={note} className={styles.saved} role="status" tabIndex={-1}>
      <p className={styles.entry}>{text.saved(writeDigits(rules.entry ?? 0), rules.inForce.title)}</p>
      {rules.waitingCalibrations === 0 ? null : <p>{text.savedWaiting(rules.waitingCalibrations)}</p>}
      <div className={styles.ways}>
        {rules.waitingCalibrations === 0 ? null : <ButtonLink href="/review">{text.toReview}</ButtonLink>}
        <ButtonLink href="/ledger">{text.toLedger}</ButtonLink>
      </div>
    </div>
  );
}
