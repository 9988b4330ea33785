// Every calibration of the pair, newest day first, with its verdict and what became of it.

import { Link } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { VerdictMark } from '../../charts/verdict-mark.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './calibration-list.module.css';

export function CalibrationList({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const nameOf = usePersonName();
  return (
    <section className={styles.calibrations} aria-labelledby="calibrations-title">
      <h2 id="calibrations-title">{equipment.calibrationsTitle}</h2>
      {page.calibrations.length === 0 ? <p>{equipment.noCalibrations}</p> : null}
      <ul className={styles.list}>
        {page.calibrations.map((calibration) => (
          <li key={calibration.number} className={styles.calibration}>
            <Link href={`/review/${encodeURIComponent(calibration.number)}`} className={styles.name}>
              {equipment.calibration(calibration.number, calibration.calibratedOn)}
            </Link>
            <VerdictMark verdict={calibration.fit.verdict} />
            <p className={styles.status}>
              {calibration.number === page.current ? equipment.inForce : equipment.status(calibration.status)}
            </p>
            <p className={styles.who}>
              {equipment.enteredBy(nameOf(calibration.enteredBy))}
              {calibration.decidedBy === null ? null : `, ${equipment.decidedBy(nameOf(calibration.decidedBy))}`}
              {calibration.asFound === null ? null : <span className={styles.note}>{calibration.asFound.message}</span>}
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
