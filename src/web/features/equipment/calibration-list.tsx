// Every calibration of the pair, newest day first, with its verdict and what became of it.

import { Link } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { VerdictMark } from '../../charts/verdict-mark.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import styles from './calibration-list.module.css';

export function CalibrationList({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const nameOf = usePersonName();
  const timeZone = usePlant().data?.timeZone;
  return (
    <section className={styles.calibrations} aria-labelledby="calibrations-title">
      <h2 id="calibrations-title">{equipment.calibrationsTitle}</h2>
      {page.calibrations.length === 0 ? <p>{equipment.noCalibrations}</p> : null}
      <ul className={styles.list}>
        {page.calibrations.map((calibration) => (
          <li key={calibration.number} className={styles.calibration}>
            <Link href={`/review/${encodeURIComponent(calibration.number)}`} className={styles.name}>
              <CalibrationName calibration={calibration} />
            </Link>
            <VerdictMark verdict={calibration.fit.verdict} />
            <p className={styles.status}>
              {calibration.number === page.current ? equipment.inForce : equipment.status(calibration.status)}
            </p>
            <p className={styles.who}>
              {equipment.enteredBy(nameOf(calibration.enteredBy))}
              {calibration.decidedBy === null ? null : `, ${equipment.decidedBy(nameOf(calibration.decidedBy))}`}
              {calibration.asFound === null ? null : (
                <span className={styles.note}>{inLanguage(calibration.asFound.message)}</span>
              )}
              {calibration.withdrawn === null ? null : (
                <span className={styles.note}>
                  {words.review.withdrawn(
                    nameOf(calibration.withdrawn.by),
                    writeMinute(calibration.withdrawn.at, timeZone),
                    calibration.withdrawn.reason,
                  )}
                </span>
              )}
              {calibration.decisionNote === null ? null : (
                <span className={styles.note}>{calibration.decisionNote}</span>
              )}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function CalibrationName({ calibration }: { readonly calibration: PairPageAnswer['calibrations'][number] }) {
  const name = words.equipment.calibration(calibration.number, calibration.calibratedOn);
  return calibration.withdrawn === null ? name : <del>{name}</del>;
}
