// What the sheet says so far, verdict first: verdict, what looks wrong, points and curve, residuals.

import type { ReactNode } from 'react';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { EntryCheckList } from '../../charts/entry-check-list.tsx';
import { ResidualChart } from '../../charts/residual-chart.tsx';
import { VerdictMark } from '../../charts/verdict-mark.tsx';
import { words } from '../../words/desk-words.ts';
import { CellLink } from './bad-cell-list.tsx';
import { cellOfCheck } from './cell-of-check.ts';
import type { JudgedDraft } from './judge-draft.ts';
import styles from './result-panel.module.css';
import { cellId } from './run-grid.ts';

export function ResultPanel({ judged }: { readonly judged: JudgedDraft }) {
  const { calibrate } = words;
  const { fit, verdict, acceptance, points, checks } = judged;
  const leftOut = points.badCells.length;
  // Without a curve the verdict says so already.
  const further = fit.ok ? checks : checks.filter(({ code }) => code !== 'too-few-points');
  const reasons = acceptance.filter((result) => result.verdict === 'fail' || result.verdict === 'conditional');
  const linkTo = (where: string): ReactNode => {
    const place = cellOfCheck(where, points);
    return place === null ? null : <CellLink to={cellId(place)} text={calibrate.goThere} />;
  };
  return (
    <section className={styles.result} aria-labelledby="verdict-title">
      <h2 id="verdict-title">{calibrate.resultTitle}</h2>
      <div className={styles.verdict} data-verdict={fit.ok ? verdict : 'not-judged'}>
        <div role="status">
          <VerdictMark
            verdict={fit.ok ? verdict : 'not-judged'}
            size="large"
            {...(fit.ok ? {} : { text: calibrate.notYet })}
          />
        </div>
        {fit.ok ? null : <p>{fit.problem.message}</p>}
        {leftOut === 0 ? null : <p>{calibrate.pending(leftOut)}</p>}
        {reasons.length === 0 ? null : (
          <ul className={styles.reasons}>
            {reasons.map((result) => (
              <li key={result.rule}>{result.message}</li>
            ))}
          </ul>
        )}
      </div>
      {fit.ok ? (
        <>
          <CurveChart fit={fit.value} />
          <ResidualChart fit={fit.value} />
        </>
      ) : null}
      <EntryCheckList checks={further} linkTo={linkTo} />
    </section>
  );
}
