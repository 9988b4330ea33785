// One calibration for its reviewer: verdict first, then everything it rests on, then the decision.

import { useMemo } from 'react';
import { Link } from 'wouter';
import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import { useCalibration } from '../../app/queries/use-calibrations.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { AcceptanceTable } from '../../charts/acceptance-table.tsx';
import { ConditionalNote } from '../../charts/conditional-note.tsx';
import { CurveChart } from '../../charts/curve-chart.tsx';
import { EntryCheckList } from '../../charts/entry-check-list.tsx';
import { FiguresBehind } from '../../charts/figures-behind.tsx';
import { redrawFit } from '../../charts/redraw-fit.ts';
import { ResidualChart } from '../../charts/residual-chart.tsx';
import { showFitAnswer } from '../../charts/show-fit.ts';
import { VerdictBlock } from '../../charts/verdict-block.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import { CalibrationFacts } from './calibration-facts.tsx';
import styles from './calibration-review.module.css';
import { Decision } from './decision.tsx';
import { SheetTable } from './sheet-table.tsx';
import { Withdrawal } from './withdrawal.tsx';

export function CalibrationReview({ number }: { readonly number: string }) {
  const { review } = words;
  const calibration = useCalibration(number);
  return (
    <>
      <PageHeading title={review.titleOf(number)}>
        <Link href="/review">{review.all}</Link>
      </PageHeading>
      {calibration.isPending ? <WaitingNote /> : null}
      {calibration.isError ? (
        <ProblemNote error={calibration.error} onRetry={() => void calibration.refetch()} />
      ) : null}
      {calibration.data === undefined ? null : (
        <Reviewed calibration={calibration.data} readAgain={() => void calibration.refetch()} />
      )}
    </>
  );
}

interface ReviewedProps {
  readonly calibration: CalibrationAnswer;
  readonly readAgain: () => void;
}

function Reviewed({ calibration, readAgain }: ReviewedProps) {
  const { review } = words;
  const { fit, sheet, status } = calibration;
  const drawn = useMemo(() => redrawFit(calibration), [calibration]);
  const shown = useMemo(() => showFitAnswer(fit), [fit]);
  const nameOf = usePersonName();
  const plant = usePlant();
  return (
    <div className={styles.review}>
      <VerdictBlock verdict={fit.verdict} checks={fit.checks}>
        <ConditionalNote results={fit.acceptance.filter((result) => result.verdict === fit.verdict)} />
        <p>
          {status === 'submitted'
            ? review.status(status)
            : review.decided(
                review.status(status === 'withdrawn' && calibration.decidedBy !== null ? 'approved' : status),
                nameOf(calibration.decidedBy ?? calibration.withdrawn?.by ?? ''),
                writeMinute(calibration.decidedAt ?? calibration.withdrawn?.at ?? '', plant.data?.timeZone),
              )}
        </p>
        {calibration.withdrawn === null ? null : (
          <p>
            <strong>
              {review.withdrawn(
                nameOf(calibration.withdrawn.by),
                writeMinute(calibration.withdrawn.at, plant.data?.timeZone),
                calibration.withdrawn.reason,
              )}
            </strong>
          </p>
        )}
        {calibration.decisionNote === null ? null : <p>{calibration.decisionNote}</p>}
        {status === 'submitted' ? <a href="#decision-title">{review.toDecision}</a> : null}
      </VerdictBlock>
      <CalibrationFacts
        calibration={calibration}
        enteredBy={nameOf(calibration.enteredBy)}
        enteredAt={writeMinute(calibration.enteredAt, plant.data?.timeZone)}
      />
      {drawn === null ? (
        <p>{review.noCurve}</p>
      ) : (
        <div className={styles.charts}>
          <CurveChart fit={drawn} />
          <ResidualChart fit={drawn} />
        </div>
      )}
      <EntryCheckList checks={fit.checks} />
      <AcceptanceTable acceptance={fit.acceptance} />
      <FiguresBehind fit={shown} drawn={drawn} />
      <SheetTable sheet={sheet} />
      {status === 'submitted' ? <Decision calibration={calibration} readAgain={readAgain} /> : null}
      <Withdrawal calibration={calibration} />
    </div>
  );
}
