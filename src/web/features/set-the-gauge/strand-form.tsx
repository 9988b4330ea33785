// A strand of the table and the part of its breaking load to pull.

import { useState } from 'react';
import type { StrandListAnswer } from '../../../contract/plant.ts';
import { Button } from '../../controls/button.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './chooser.module.css';
import { orderStrands } from './order-strands.ts';
import { readPercent, writePercent } from './write-percent.ts';

type StrandTarget = Extract<Target, { by: 'strand' }>;

interface StrandFormProps {
  readonly strands: StrandListAnswer['strands'];
  readonly target: StrandTarget | null;
  readonly onChoose: (target: Target) => void;
}

/** The parts of the breaking load drawings ask for most. Common practice, no source; any other can be typed. */
const usualPercents = ['70', '72.5', '75', '80'] as const;
const firstPercent = '75';

export function StrandForm({ strands, target, onChoose }: StrandFormProps) {
  const text = words.setTheGauge;
  const [strand, setStrand] = useState(target?.strand ?? null);
  const [percent, setPercent] = useState(target === null ? firstPercent : writePercent(target.fraction));
  const fraction = readPercent(percent);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (strand !== null && fraction !== null) onChoose({ by: 'strand', strand, fraction });
      }}
    >
      <fieldset>
        <legend className={styles.legend}>{text.strand}</legend>
        <ul className={`${styles.keys} ${styles.strands}`}>
          {orderStrands(strands).map(({ designation, provenance }) => (
            <li key={designation}>
              <button
                type="button"
                className={styles.key}
                aria-pressed={designation === strand}
                onClick={() => setStrand(designation)}
              >
                {designation}
                {provenance === 'memory' ? <span className={styles.small}> {text.fromMemory}</span> : null}
              </button>
            </li>
          ))}
        </ul>
      </fieldset>
      <fieldset>
        <legend className={styles.legend}>{text.fraction}</legend>
        <div className={styles.row}>
          {usualPercents.map((usual) => (
            <button
              key={usual}
              type="button"
              className={styles.key}
              aria-pressed={fraction !== null && writePercent(fraction) === usual}
              onClick={() => setPercent(usual)}
            >
              {text.percent(usual)}
            </button>
          ))}
        </div>
      </fieldset>
      <TextField
        label={text.otherFraction}
        inputMode="decimal"
        forGloves
        value={percent}
        problem={fraction === null ? text.otherFractionProblem : null}
        onChange={(event) => setPercent(event.target.value)}
      />
      <div className={styles.foot}>
        <Button look="primary" type="submit" forGloves disabled={strand === null || fraction === null}>
          {strand === null || fraction === null ? text.show : text.showForStrand(strand, writePercent(fraction))}
        </Button>
      </div>
    </form>
  );
}
