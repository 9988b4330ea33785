// The page of one pair: how it stands and why, the curve in force with the earlier ones, what it rests on, every entry.

import { Link, useParams } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { ButtonLink } from '../../controls/button-link.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import { CalibrationList } from './calibration-list.tsx';
import { CheckList } from './check-list.tsx';
import { CurrentCalibration } from './current-calibration.tsx';
import { DriftPart } from './drift-part.tsx';
import { EntryList } from './entry-list.tsx';
import { EventList } from './event-list.tsx';
import { PairActions } from './pair-actions.tsx';
import { PairDoubts } from './pair-doubts.tsx';
import { PairFacts } from './pair-facts.tsx';
import styles from './pair-page.module.css';
import { TraceabilityPart } from './traceability-part.tsx';
import { usePairPage } from './use-pair-page.ts';

export function PairPage() {
  const { pair: tag = '' } = useParams<{ pair: string }>();
  const page = usePairPage(tag);
  return (
    <>
      <PageHeading title={words.equipment.pairTitle(page.data?.line.tag ?? tag)}>
        <Link href="/equipment">{words.equipment.allEquipment}</Link>
      </PageHeading>
      {page.isPending ? <WaitingNote /> : null}
      {page.isError ? <ProblemNote error={page.error} onRetry={() => void page.refetch()} /> : null}
      {page.data === undefined ? null : <PairShown page={page.data} />}
    </>
  );
}

function PairShown({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const { line, parted, calibrations } = page;
  const isPast = useAsOfDay() !== null;
  const waiting = calibrations.filter(({ status }) => status === 'submitted');
  const asked = encodeURIComponent(line.tag);
  return (
    <div className={styles.page}>
      <section className={styles.standing} data-standing={line.standing}>
        <StandingMark standing={line.standing} size="large" />
        <p>{inLanguage(line.because)}</p>
        {parted === null && !isPast ? (
          <div className={styles.ways}>
            <ButtonLink href={`/?pair=${asked}`} look="primary">
              {equipment.setTheGauge}
            </ButtonLink>
            <ButtonLink href={`/calibrate?pair=${asked}`}>{equipment.calibrate}</ButtonLink>
            {waiting.map(({ number }) => (
              <ButtonLink key={number} href={`/review/${encodeURIComponent(number)}`}>
                {equipment.review(number)}
              </ButtonLink>
            ))}
          </div>
        ) : null}
      </section>
      <PairDoubts page={page} />
      <PairFacts page={page} />
      <CurrentCalibration page={page} />
      {page.current === null || isPast ? null : <DriftPart tag={line.tag} />}
      <TraceabilityPart page={page} />
      <CalibrationList page={page} />
      <EventList page={page} />
      <CheckList page={page} />
      {parted === null ? <PairActions page={page} /> : null}
      <EntryList entries={page.entries} />
    </div>
  );
}
