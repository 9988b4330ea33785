// No number: why, and what to do.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { WholeDates } from '../../controls/whole-dates.tsx';
import { inLanguage } from '../../words/sentence.ts';
import { words } from '../../words/words.ts';
import styles from './stop-panel.module.css';
import { WhatToDo } from './what-to-do.tsx';

export function RefusedPanel({ answer }: { readonly answer: LookupAnswer }) {
  const text = words.setTheGauge;
  const reasons = answer.warnings.filter(({ weight }) => weight === 'refuse');
  return (
    <section className={styles.panel} aria-label={text.refusedTitle}>
      <WarningMark weight="refuse" />
      <h2 className={styles.title}>{text.refusedTitle}</h2>
      {reasons.map(({ code, message }) => (
        <p key={code} className={styles.reason}>
          <WholeDates text={inLanguage(message)} />
        </p>
      ))}
      <WhatToDo warnings={reasons} />
    </section>
  );
}
