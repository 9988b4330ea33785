// No number: why, and what to do.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { words } from '../../words/words.ts';
import styles from './stop-panel.module.css';

const advice: Readonly<Record<string, string>> = words.setTheGauge.whatToDo;

export function RefusedPanel({ answer }: { readonly answer: LookupAnswer }) {
  const text = words.setTheGauge;
  const reasons = answer.warnings.filter(({ weight }) => weight === 'refuse');
  const steps = [...new Set(reasons.flatMap(({ code }) => advice[code] ?? []))];
  return (
    <section className={styles.panel} aria-label={text.refusedTitle}>
      <WarningMark weight="refuse" />
      <h2 className={styles.title}>{text.refusedTitle}</h2>
      {reasons.map(({ code, message }) => (
        <p key={code} className={styles.reason}>
          {message}
        </p>
      ))}
      {steps.length === 0 ? null : (
        <div>
          <h3>{text.whatToDoTitle}</h3>
          {steps.map((step) => (
            <p key={step}>{step}</p>
          ))}
        </div>
      )}
    </section>
  );
}
