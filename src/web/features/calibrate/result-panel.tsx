// What the sheet says so far, verdict first: verdict, what looks wrong, points and curve, residuals.

import type { ReactNode } from 'react';
import { setQuantity } from '../../../domain/calibration/fit-calibration.ts';
import type { EntryCheck } from '../../charts/check-mark.tsx';
import { ConditionalNote } from '../../charts/conditional-note.tsx';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { EntryCheckList } from '../../charts/entry-check-list.tsx';
import { ResidualChart } from '../../charts/residual-chart.tsx';
import { VerdictBlock } from '../../charts/verdict-block.tsx';
import { inLanguageAtDesk } from '../../words/desk-sentence.ts';
import { words } from '../../words/desk-words.ts';
import { CellLink } from './bad-cell-list.tsx';
import { cellOfCheck } from './cell-of-check.ts';
import { cellOfRepair } from './cell-of-repair.ts';
import type { JudgedDraft } from './judge-draft.ts';
import { RepairButtons } from './repair-buttons.tsx';
import styles from './result-panel.module.css';
import { type CellPlace, cellId, isUntouched, type RunGrid } from './run-grid.ts';

interface ResultPanelProps {
  readonly judged: JudgedDraft;
  readonly grid: RunGrid;
  /** A person chose the repair an entry check proposes. */
  readonly onRepair: (place: CellPlace, text: string) => void;
}

export function ResultPanel({ judged, grid, onRepair }: ResultPanelProps) {
  const { calibrate, charts } = words;
  const { fit, figures, points, checks } = judged;
  const acceptance = figures?.acceptance ?? [];
  const leftOut = points.badCells.length;
  // Without a curve the verdict says so already.
  const further = fit.ok ? checks : checks.filter(({ code }) => code !== 'too-few-points');
  // The errors stand with the verdict; without a verdict all stand below.
  const below = fit.ok ? further.filter(({ weight }) => weight !== 'error') : further;
  const reasons = acceptance.filter((result) => result.verdict !== 'pass' && result.verdict !== 'not-judged');
  const linkTo = (where: string): ReactNode => {
    const place = cellOfCheck(where, points);
    return place === null ? null : <CellLink to={cellId(place)} text={calibrate.goThere} />;
  };
  const repairOf = ({ where, fits }: EntryCheck): ReactNode => {
    const set = setQuantity(judged.sheet);
    const place = fits === undefined ? null : cellOfRepair(where, fits.field, { grid, set, points });
    if (fits === undefined || place === null) return null;
    return <RepairButtons fits={fits} onChoose={(value) => onRepair(place, String(value))} />;
  };
  return (
    <section className={styles.result} aria-labelledby="verdict-title">
      <h2 id="verdict-title">{calibrate.resultTitle}</h2>
      <VerdictBlock
        verdict={fit.ok ? (figures?.verdict ?? 'not-judged') : null}
        checks={further}
        linkTo={linkTo}
        repairOf={repairOf}
        withoutVerdict={calibrate.notYet}
      >
        {fit.ok ? null : <p>{inLanguageAtDesk(fit.problem.message, fit.problem.code)}</p>}
        {leftOut === 0 ? null : <p>{calibrate.pending(leftOut)}</p>}
        {reasons.length === 0 ? null : (
          <ul className={styles.reasons}>
            {reasons.map((result) => (
              <li key={result.rule}>{inLanguageAtDesk(result.message)}</li>
            ))}
          </ul>
        )}
        <ConditionalNote results={acceptance.filter((result) => result.verdict === figures?.verdict)} />
      </VerdictBlock>
      {fit.ok ? (
        <>
          <CurveChart fit={fit.value} />
          <ResidualChart fit={fit.value} />
        </>
      ) : null}
      {below.length === 0 && further.length > 0 ? null : (
        <EntryCheckList
          checks={below}
          linkTo={linkTo}
          repairOf={repairOf}
          {...(isUntouched(grid) ? { none: charts.nothingToCheck } : {})}
        />
      )}
    </section>
  );
}
