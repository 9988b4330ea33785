// Label above, hint and problem below: the frame TextField and SelectField share.

import type { ReactNode } from 'react';
import { words } from '../words/words.ts';
import styles from './field.module.css';

export interface FieldTexts {
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with what was typed; null or absent when nothing is. */
  readonly problem?: string | null | undefined;
  readonly isOptional?: boolean;
  readonly forGloves?: boolean;
}

/** Answers the attributes that tie an input to its hint and problem. */
export function fieldAttributes(id: string, { hint, problem }: FieldTexts) {
  const described = [hint ? `${id}-hint` : '', problem ? `${id}-problem` : ''].filter(Boolean).join(' ');
  return {
    id,
    className: styles.input,
    'aria-invalid': problem ? true : undefined,
    'aria-describedby': described === '' ? undefined : described,
  };
}

export function FieldFrame({ id, texts, children }: { id: string; texts: FieldTexts; children: ReactNode }) {
  const { label, hint, problem, isOptional = false, forGloves = false } = texts;
  return (
    <div className={forGloves ? `${styles.field} ${styles.gloves}` : styles.field}>
      <label className={styles.label} htmlFor={id}>
        {label}
        {isOptional ? <span className={styles.optional}> {words.app.optional}</span> : null}
      </label>
      {children}
      {hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      {problem ? (
        <p id={`${id}-problem`} className={styles.problem}>
          {problem}
        </p>
      ) : null}
    </div>
  );
}
