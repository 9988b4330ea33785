// The rules a calibration is judged by: what was found, the limit, the verdict, and where the limit comes from.

import type { AcceptanceResult } from '../../domain/calibration/acceptance-result.ts';
import { formatNumber } from '../controls/format-number.ts';
import { inLanguageAtDesk } from '../words/desk-sentence.ts';
import { words } from '../words/desk-words.ts';
import styles from './acceptance-table.module.css';
import { ConditionalNote } from './conditional-note.tsx';
import { VerdictMark } from './verdict-mark.tsx';

const worstFirst = ['fail', 'conditional-fail', 'conditional-pass', 'not-judged', 'pass'] as const;

/** One block a rule, the worst first; the sentence says everything, the figures stand beside it for the eye. */
export function AcceptanceTable({ acceptance }: { readonly acceptance: readonly AcceptanceResult[] }) {
  const ordered = [...acceptance].sort(
    (one, other) => worstFirst.indexOf(one.verdict) - worstFirst.indexOf(other.verdict),
  );
  return (
    <section className={styles.rules}>
      <h2>{words.charts.acceptanceTitle}</h2>
      <ul className={styles.list}>
        {ordered.map((result) => (
          <li key={result.rule} className={styles.rule}>
            <p className={styles.head}>
              <span className={styles.name}>{words.charts.rule(result.rule)}</span>
              <VerdictMark verdict={result.verdict} text={words.charts.verdictOfRule(result.verdict)} />
            </p>
            {isCounted(result) ? (
              <p className={styles.figures}>
                <span className={styles.found}>
                  {result.value === null ? words.charts.nothingFound : figure(result, result.value)}
                </span>
                {furtherFigures(result).map((text) => (
                  <span key={text} className={styles.limit}>
                    {text}
                  </span>
                ))}
              </p>
            ) : null}
            <p>{inLanguageAtDesk(result.message)}</p>
            <ConditionalNote results={[result]} />
            <p className={styles.basis}>{words.charts.basis(result.basis)}</p>
          </li>
        ))}
      </ul>
      <p className={styles.basis}>{words.charts.rulesDecide}</p>
    </section>
  );
}

/** Rules whose figures are in % of force. */
const percentRules: readonly AcceptanceResult['rule'][] = [
  'accuracy',
  'repeatability',
  'reversibility',
  'zero',
  'resolution',
];

/** A certificate is there or not, the loading was right or not: a count of one would say nothing. */
const isCounted = ({ rule }: AcceptanceResult): boolean => rule !== 'certificate' && rule !== 'loading';

/** The limit, and of a value with an uncertainty U, the limit less the guard band, and the probability. */
function furtherFigures(result: AcceptanceResult): readonly string[] {
  const { charts } = words;
  const { limit, expandedUncertainty, guardedLimit, probability } = result;
  return [
    charts.limit(figure(result, limit)),
    ...(expandedUncertainty === null ? [] : [charts.uncertaintyOf(figure(result, expandedUncertainty))]),
    ...(guardedLimit === null ? [] : [charts.guardedLimit(figure(result, Math.max(0, guardedLimit)))]),
    ...(probability === null ? [] : [charts.probability(writeChance(probability))]),
  ];
}

/** Never 0 % or 100 %, which no measurement gives. */
function writeChance(probability: number): string {
  const { charts } = words;
  if (probability > 0.999) return charts.above(charts.percent('99.9'));
  if (probability < 0.001) return charts.below(charts.percent('0.1'));
  return charts.percent(formatNumber(100 * probability, { rule: 'decimals', decimals: 1 }));
}

/** A figure below this is zero for the eye: what is left is rounding of the computer, as 2e-14. */
const leastShown = 1e-9;

function figure({ rule }: AcceptanceResult, value: number): string {
  const digits = Math.abs(value) < leastShown ? '0' : formatNumber(Number(value.toPrecision(3)), { rule: 'as-typed' });
  return percentRules.includes(rule) ? words.charts.percent(digits) : digits;
}
