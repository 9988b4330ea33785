// What the uncertainty of a reading is made of: one bar and one figure for each contribution, the largest first.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/words.ts';
import styles from './uncertainty-lines.module.css';

type Uncertainty = NonNullable<LookupAnswer['uncertainty']>;

/** The length of a bar is the standard uncertainty against the largest one; the figure beside it says the same. */
export function UncertaintyLines({ uncertainty }: { readonly uncertainty: Uncertainty }) {
  const text = words.setTheGauge;
  const lines = [...uncertainty.contributions].sort((a, b) => b.standardUncertainty - a.standardUncertainty);
  const largest = lines[0]?.standardUncertainty ?? 0;
  const write = (value: number): string =>
    formatQuantity({ value, unit: uncertainty.unit }, { rule: 'significant-digits', digits: 2 });
  return (
    <details className={styles.part}>
      <summary>{text.uncertaintyParts}</summary>
      <p className={styles.lead}>{text.uncertaintyPartsLead}</p>
      <ul className={styles.list}>
        {lines.map(({ source, standardUncertainty }) => (
          <li key={source}>
            <span>{text.uncertaintySource(source)}</span>
            <span className={styles.figure}>{write(standardUncertainty)}</span>
            <span
              className={styles.bar}
              style={{ inlineSize: `${largest > 0 ? (100 * standardUncertainty) / largest : 0}%` }}
              aria-hidden="true"
            />
          </li>
        ))}
        <li className={styles.sum}>
          <span>{text.uncertaintySum}</span>
          <span className={styles.figure}>{write(uncertainty.combined)}</span>
        </li>
      </ul>
    </details>
  );
}
