// Which degree the curve has: automatic, or a person's choice with the reason.

import type { CalibrationFit } from '../../../domain/calibration/fit-calibration.ts';
import type { Degree } from '../../../domain/regression/fit-polynomial.ts';
import { writeProbability } from '../../charts/figure-words.ts';
import { formatQuantity } from '../../controls/format-number.ts';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import styles from './degree-choice.module.css';
import type { DraftFields } from './draft-state.ts';
import { isReasonMissing } from './sheet-of-draft.ts';

interface DegreeChoiceProps {
  readonly draft: CalibrationDraft;
  readonly fit: CalibrationFit | null;
  readonly set: (fields: Partial<DraftFields>) => void;
}

const degrees: readonly Degree[] = [1, 2, 3];

export function DegreeChoice({ draft, fit, set }: DegreeChoiceProps) {
  const { calibrate } = words;
  const automatic = draft.degree === 'auto' && fit !== null ? fit.curve.fit.degree : null;
  return (
    <section className={styles.choice}>
      <fieldset className={styles.degrees}>
        <legend>{calibrate.degree}</legend>
        <label className={styles.degree}>
          <input
            type="radio"
            name="degree"
            checked={draft.degree === 'auto'}
            onChange={() => set({ degree: 'auto' })}
          />
          <span className={styles.name}>{calibrate.degreeAuto(automatic)}</span>
        </label>
        {degrees.map((degree) => (
          <label key={degree} className={styles.degree}>
            <input type="radio" name="degree" checked={draft.degree === degree} onChange={() => set({ degree })} />
            <span className={styles.name}>{degree}</span>
            <span className={styles.facts}>{degreeFacts(degree, fit)}</span>
          </label>
        ))}
      </fieldset>
      {draft.degree === 'auto' ? null : (
        <TextField
          label={calibrate.degreeReason}
          maxLength={500}
          value={draft.degreeReason}
          problem={isReasonMissing(draft) ? calibrate.degreeReasonNeeded : null}
          onChange={(event) => set({ degreeReason: event.currentTarget.value })}
        />
      )}
    </section>
  );
}

function degreeFacts(degree: Degree, fit: CalibrationFit | null): string {
  if (fit === null) return '';
  const compared = fit.degrees.find((candidate) => candidate.degree === degree);
  if (compared === undefined) return words.calibrate.degreeMissing;
  const { curve } = fit;
  const unit = curve.response === 'reading' ? curve.units.reading : curve.units.force;
  const scatter = { value: compared.residualStandardDeviation, unit };
  return [
    words.calibrate.degreeScatter(formatQuantity(scatter, { rule: 'significant-digits', digits: 3 })),
    ...(compared.pValue === null ? [] : [writeProbability(compared.pValue)]),
    ...(compared.strictlyIncreasing ? [] : [words.calibrate.degreeFalls]),
  ].join(', ');
}
