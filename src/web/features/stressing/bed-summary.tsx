// What the pulls of a bed come to together.

import { Figure } from '../../controls/figure.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import styles from './plan-part.module.css';

interface BedSummaryProps {
  readonly meanRatio: number;
  readonly ratioStandardDeviation: number | null;
  readonly worst: { readonly number: number; readonly agreementPercent: number };
  readonly outOfWindow: number;
  readonly repulls: number;
}

export function BedSummary({ meanRatio, ratioStandardDeviation, worst, outOfWindow, repulls }: BedSummaryProps) {
  const text = words.stressing;
  const ratio = (value: number): string => formatNumber(value, { rule: 'decimals', decimals: 3 });
  return (
    <section className={styles.plan} aria-label={text.summaryTitle}>
      <h2>{text.summaryTitle}</h2>
      <div className={styles.figures}>
        <Figure label={text.meanRatio} value={ratio(meanRatio)} note={text.meanRatioNote} />
        {ratioStandardDeviation === null ? null : (
          <Figure label={text.ratioDeviation} value={ratio(ratioStandardDeviation)} />
        )}
        <Figure
          label={text.worst}
          value={formatNumber(worst.agreementPercent, { rule: 'decimals', decimals: 1 })}
          unit="%"
          note={text.worstPull(worst.number)}
        />
        <Figure label={text.outOfWindow} value={String(outOfWindow)} />
        <Figure label={text.repulls} value={String(repulls)} />
      </div>
    </section>
  );
}
