// The calibrations that wait for a decision.

import { Link } from 'wouter';
import { useWaitingCalibrations } from '../../app/queries/use-calibrations.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './waiting-list.module.css';

export function WaitingList() {
  const { review } = words;
  const waiting = useWaitingCalibrations();
  const plant = usePlant();
  const person = useSession().data?.person ?? null;
  const nameOf = usePersonName();
  return (
    <>
      <PageHeading title={review.title} lead={review.lead} />
      {waiting.isPending ? <WaitingNote /> : null}
      {waiting.isError ? <ProblemNote error={waiting.error} onRetry={() => void waiting.refetch()} /> : null}
      {waiting.data?.calibrations.length === 0 ? (
        <div className={styles.none}>
          <p className={styles.noneTitle}>{review.none}</p>
          <p>{review.noneNext}</p>
        </div>
      ) : null}
      <ul className={styles.list}>
        {waiting.data?.calibrations.map((calibration) => (
          <li key={calibration.number}>
            <Link href={`/review/${encodeURIComponent(calibration.number)}`} className={styles.calibration}>
              <span className={styles.pair}>{calibration.pair}</span>
              <span className={styles.number}>{calibration.number}</span>
              <span className={styles.facts}>
                {review.calibratedOn(calibration.calibratedOn)}
                <br />
                {review.enteredBy(
                  nameOf(calibration.enteredBy),
                  writeMinute(calibration.enteredAt, plant.data?.timeZone),
                )}
                {calibration.enteredBy === person?.id ? <strong className={styles.own}>{review.own}</strong> : null}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </>
  );
}
