// What a calibration is of: pair, day, load cell with its certificate, how it was done, who entered it.

import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import styles from './calibration-facts.module.css';

interface CalibrationFactsProps {
  readonly calibration: CalibrationAnswer;
  readonly enteredBy: string;
  readonly enteredAt: string;
}

export function CalibrationFacts({ calibration, enteredBy, enteredAt }: CalibrationFactsProps) {
  const { review } = words;
  const { pair, calibratedOn, dueDate, loadCell, certificate, sheet, fit, degree, degreeReason } = calibration;
  const facts: readonly (readonly [string, ReactNode] | null)[] = [
    [
      review.pair,
      <Link key="pair" href={`/equipment/${encodeURIComponent(pair)}`}>
        {pair}
      </Link>,
    ],
    [review.day, calibratedOn],
    [review.due, dueDate],
    [review.loadCell, loadCell],
    [
      review.certificate,
      certificate === null
        ? review.noCertificate
        : `${review.certificateOf(certificate.number, certificate.laboratory, certificate.validUntil)}, ${review.traceable(certificate.traceableTo)}`,
    ],
    [review.enteredByLabel, `${enteredBy}, ${enteredAt}`],
    [review.setLabel, review.set[fit.curve.response === 'reading' ? 'force' : 'reading']],
    sheet.loading === undefined ? null : [review.loadingLabel, review.loading[sheet.loading]],
    sheet.condition === undefined ? null : [review.conditionLabel, review.condition[sheet.condition]],
    sheet.condition === undefined || sheet.condition === 'as-left'
      ? null
      : [
          review.asFoundLabel,
          calibration.asFound === null ? review.noAsFound : inLanguage(calibration.asFound.message),
        ],
    [
      review.degreeLabel,
      degree === 'auto'
        ? review.degreeAuto(fit.curve.degree)
        : review.degreeChosen(fit.curve.degree, degreeReason ?? review.noReason),
    ],
    sheet.temperatureCelsius === undefined ? null : [review.temperature, review.celsius(sheet.temperatureCelsius)],
    sheet.firstUseOn === undefined ? null : [review.firstUse, sheet.firstUseOn],
    sheet.note === undefined ? null : [review.note, sheet.note],
  ];
  return (
    <dl className={styles.facts}>
      {facts.map((fact) =>
        fact === null ? null : (
          <div key={fact[0]}>
            <dt>{fact[0]}</dt>
            <dd>{fact[1]}</dd>
          </div>
        ),
      )}
    </dl>
  );
}
