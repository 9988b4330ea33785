// The rules a calibration is judged by: what was found, the limit, the verdict, and where the limit comes from.

import type { FitAnswer } from '../../contract/fit.ts';
import { formatNumber } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import styles from './acceptance-table.module.css';
import { VerdictMark } from './verdict-mark.tsx';

type Acceptance = FitAnswer['acceptance'][number];

const worstFirst = ['fail', 'conditional-fail', 'conditional-pass', 'not-judged', 'pass'] as const;

/** One block a rule, the worst first; the sentence says everything, the figures stand beside it for the eye. */
export function AcceptanceTable({ acceptance }: { readonly acceptance: readonly Acceptance[] }) {
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
                <span className={styles.limit}>{words.charts.limit(figure(result, result.limit))}</span>
              </p>
            ) : null}
            <p>{result.message}</p>
            <p className={styles.basis}>{words.charts.basis(result.basis)}</p>
          </li>
        ))}
      </ul>
      <p className={styles.basis}>{words.charts.rulesDecide}</p>
    </section>
  );
}

/** Rules whose figures are in % of force. */
const percentRules: readonly Acceptance['rule'][] = [
  'accuracy',
  'repeatability',
  'reversibility',
  'zero',
  'resolution',
];

/** A certificate is there or not, the loading was right or not: a count of one would say nothing. */
const isCounted = ({ rule }: Acceptance): boolean => rule !== 'certificate' && rule !== 'loading';

function figure({ rule }: Acceptance, value: number): string {
  const digits = formatNumber(Number(value.toPrecision(3)), { rule: 'as-typed' });
  return percentRules.includes(rule) ? words.charts.percent(digits) : digits;
}
