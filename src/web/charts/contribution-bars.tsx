// The contributions of a budget as bars, told apart by their words and the type by its pattern.

import { useId } from 'react';
import { words } from '../words/desk-words.ts';
import styles from './contribution-bars.module.css';
import { threeDigits } from './figure-words.ts';
import type { ShownBudget } from './shown-fit.ts';

/** Length of a bar is its share of the variance, so that all together are whole. */
export function ContributionBars({ budget }: { readonly budget: ShownBudget }) {
  const { figures } = words;
  const titleId = useId();
  const shares = sharesOf(budget);
  return (
    <figure className={styles.frame} aria-labelledby={titleId}>
      <figcaption id={titleId} className={styles.title}>
        {figures.barsTitle}
      </figcaption>
      <ul className={styles.bars}>
        {budget.contributions.map(({ source, type }, index) => {
          const percent = 100 * (shares[index] ?? 0);
          return (
            <li key={source} className={styles.line}>
              <span>{figures.sourceName(source)}</span>
              <span className={styles.track} aria-hidden="true">
                <span className={styles.bar} data-type={type} style={{ width: `${percent}%` }} />
              </span>
              <span className={styles.share}>{figures.share(threeDigits(Number(percent.toFixed(1))))}</span>
            </li>
          );
        })}
      </ul>
      <p className={styles.kinds}>{figures.barKinds}</p>
    </figure>
  );
}

/** The part of the combined variance each contribution makes, in their order; all zero where nothing is uncertain. */
export function sharesOf({
  combined,
  contributions,
}: Pick<ShownBudget, 'combined' | 'contributions'>): readonly number[] {
  return contributions.map(({ standardUncertainty }) => (combined > 0 ? (standardUncertainty / combined) ** 2 : 0));
}
