// The figures every pull of a bed is set to, and on demand how each was reckoned.

import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatQuantity, formatUnit } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import type { BedPlan } from './plan-bed.ts';
import styles from './plan-part.module.css';

const fourDigits = { rule: 'significant-digits', digits: 4 } as const;
const asTyped = { rule: 'as-typed' } as const;

export function PlanPart({ plan }: { readonly plan: BedPlan }) {
  const text = words.stressing;
  const { answer, basis, elongation, travel } = plan;
  const { preload, readingToSet, doNotExceed } = answer;
  if (readingToSet === null) return null;
  const hasAllowance = travel.value !== elongation.value;
  return (
    <section className={styles.plan} aria-label={text.planTitle}>
      <div className={styles.figures}>
        <Figure
          label={text.setTo}
          value={formatNumber(readingToSet.value, asTyped)}
          unit={formatUnit(readingToSet.unit)}
          size="large"
          note={text.forForce(formatQuantity(basis.theoreticalForce, fourDigits))}
        />
        {preload === null ? (
          <Figure
            label={text.preloadTo}
            value={formatNumber(basis.preload.value, fourDigits)}
            unit={formatUnit(basis.preload.unit)}
            size="large"
            note={text.preloadNotOnCurve}
          />
        ) : (
          <Figure
            label={text.preloadTo}
            value={formatNumber(preload.readingToSet.value, asTyped)}
            unit={formatUnit(preload.readingToSet.unit)}
            size="large"
            note={text.forForce(formatQuantity(basis.preload, fourDigits))}
          />
        )}
        {doNotExceed === null ? null : (
          <Figure
            label={text.neverAbove}
            value={formatNumber(doNotExceed.reading.value, fourDigits)}
            unit={formatUnit(doNotExceed.reading.unit)}
            size="large"
          />
        )}
        <Figure
          label={text.expectedElongation}
          value={formatNumber(elongation.value, fourDigits)}
          unit={formatUnit(elongation.unit)}
          size="large"
          note={text.fromMark}
        />
        {hasAllowance ? (
          <Figure
            label={text.travel}
            value={formatNumber(travel.value, fourDigits)}
            unit={formatUnit(travel.unit)}
            size="large"
            note={text.allowed}
          />
        ) : null}
      </div>
      <p>{text.windowNote(formatNumber(basis.window.percent, asTyped), basis.window.source)}</p>
      <details className={styles.steps}>
        <summary>{text.stepsTitle}</summary>
        <ol>
          {plan.steps.map(({ code, formula, numbers, result }) => (
            <li key={code}>
              <strong>{text.steps[code]}</strong>
              <code>{formula}</code>
              <span>{numbers.map(({ symbol, quantity }) => `${symbol} = ${writeNumber(quantity)}`).join('; ')}</span>
              <span className={styles.result}>
                {result.symbol} = {writeNumber(result.quantity)}
              </span>
            </li>
          ))}
        </ol>
      </details>
    </section>
  );
}

function writeNumber({ value, unit }: { readonly value: number; readonly unit: string }): string {
  const number = formatNumber(value, { rule: 'significant-digits', digits: 6 });
  return unit === '' ? number : `${number} ${formatUnit(unit)}`;
}
