// How far the number can be trusted: the last valid day, the force interval, the uncertainty, and what rounding did.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import type { Quantity } from '../../../domain/units/quantity.ts';
import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/words.ts';
import styles from './how-sure.module.css';
import { writeForce, writeLevel } from './rounding.ts';
import { UncertaintyLines } from './uncertainty-lines.tsx';

export function HowSure({ answer }: { readonly answer: LookupAnswer }) {
  const text = words.setTheGauge;
  const { dueDate, standing, uncertainty, reading, forceAtReadingToSet } = answer;
  const interval = answer.settingInterval ?? answer.forceInterval;
  const facts: readonly (readonly [string, string | null])[] = [
    [
      text.interval,
      interval === null
        ? text.noInterval
        : text.intervalText(
            writeLevel(interval.level),
            writeForce({ value: interval.low, unit: interval.unit }),
            writeForce({ value: interval.high, unit: interval.unit }),
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
    [text.asSet, forceAtReadingToSet === null ? null : writeForceAsSet(forceAtReadingToSet, answer.roundingError)],
    [text.gaugeClass, writeGaugeClass(answer.gaugeAccuracy)],
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
      {uncertainty === null ? null : <UncertaintyLines uncertainty={uncertainty} />}
    </section>
  );
}

function writeForceAsSet(force: Quantity, error: LookupAnswer['roundingError']): string {
  if (error === null) return writeForce(force);
  const percent = formatNumber(error.percent, { rule: 'decimals', decimals: 2 });
  return words.setTheGauge.asSetText(writeForce(force), percent);
}

function writeGaugeClass(accuracy: LookupAnswer['gaugeAccuracy']): string | null {
  if (accuracy === null || accuracy.permittedError === null || accuracy.accuracyClass === null) return null;
  const { value, unit, percentOfReading } = accuracy.permittedError;
  return words.setTheGauge.gaugeClassText(
    accuracy.accuracyClass,
    formatQuantity({ value: Number(value.toPrecision(3)), unit }, { rule: 'as-typed' }),
    formatNumber(percentOfReading, { rule: 'significant-digits', digits: 2 }),
  );
}
