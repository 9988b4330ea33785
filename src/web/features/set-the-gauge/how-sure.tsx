// How far the number can be trusted: the last valid day, the force interval, the uncertainty, and what rounding did.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/words.ts';
import styles from './how-sure.module.css';
import { writeForce, writeLevel } from './rounding.ts';

export function HowSure({ answer }: { readonly answer: LookupAnswer }) {
  const text = words.setTheGauge;
  const { dueDate, standing, forceInterval, uncertainty, reading, forceAtReadingToSet } = answer;
  const facts: readonly (readonly [string, string | null])[] = [
    [
      text.interval,
      forceInterval === null
        ? text.noInterval
        : text.intervalText(
            writeLevel(forceInterval.level),
            writeForce({ value: forceInterval.low, unit: forceInterval.unit }),
            writeForce({ value: forceInterval.high, unit: forceInterval.unit }),
          ),
    ],
    [
      text.uncertainty,
      uncertainty === null
        ? null
        : text.uncertaintyText(
            formatQuantity(
              { value: uncertainty.expanded, unit: uncertainty.unit },
              { rule: 'significant-digits', digits: 2 },
            ),
            formatNumber(uncertainty.k, { rule: 'significant-digits', digits: 3 }),
          ),
    ],
    [text.unrounded, reading === null ? null : formatQuantity(reading, { rule: 'significant-digits', digits: 6 })],
    [text.asSet, forceAtReadingToSet === null ? null : writeForce(forceAtReadingToSet)],
  ];
  return (
    <section className={styles.sure}>
      <Figure label={standing === 'overdue' ? text.dueDatePassed : text.dueDate} value={dueDate ?? text.noDueDate} />
      <dl className={styles.facts}>
        {facts.map(([name, value]) =>
          value === null ? null : (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ),
        )}
      </dl>
    </section>
  );
}
