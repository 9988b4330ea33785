// The corrections of a bed: closed until they are wanted, with the engineer who decided. None is a default.

import type { ReactNode } from 'react';
import { strandExpansions } from '../../../domain/strand/strand-expansion.ts';
import { words } from '../../words/desk-words.ts';
import { correctionFields } from './bed-corrections.ts';
import type { BedSetup, SetupField } from './bed-draft.ts';
import styles from './setup-form.module.css';

interface CorrectionFieldsProps {
  readonly setup: BedSetup;
  readonly field: (name: SetupField, label: string, more?: { hint?: string; inputMode?: 'decimal' }) => ReactNode;
  readonly select: (name: SetupField, label: string, options: readonly { value: string; text: string }[]) => ReactNode;
}

export function CorrectionFields({ setup, field, select }: CorrectionFieldsProps) {
  const text = words.stressing;
  const isGiven = correctionFields.some((name) => setup[name].trim() !== '');
  const degrees = setup.forceUnit === 'kip' ? '\u00b0F' : '\u00b0C';
  const unit = setup.elongationUnit;
  const decimal = { inputMode: 'decimal' } as const;
  return (
    <details className={styles.corrections} open={isGiven}>
      <summary>{text.correctionsTitle}</summary>
      <div className={styles.row}>
        {field('engineer', text.engineer)}
        {field('liveEndSeating', text.liveEndSeating(unit), decimal)}
        {field('colder', text.colder(degrees), decimal)}
        {select('expansion', text.expansion, [
          { value: '', text: text.chooseExpansion },
          ...strandExpansions.map(({ coefficient, source }, index) => ({
            value: String(index),
            text: text.expansionOption(`${coefficient.value} ${coefficient.unit}`, source),
          })),
        ])}
        {field('deadEndSeating', text.travelOf(text.corrections['dead-end-seating'], unit), decimal)}
        {field('spliceSeating', text.travelOf(text.corrections['splice-seating'], unit), decimal)}
        {field('abutmentMovement', text.travelOf(text.corrections['abutment-movement'], unit), decimal)}
        {field('formShortening', text.travelOf(text.corrections['form-shortening'], unit), decimal)}
      </div>
    </details>
  );
}
