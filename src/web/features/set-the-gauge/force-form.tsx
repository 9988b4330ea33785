// A force typed in any unit. What is typed is sent as typed; a number without a unit takes the unit chosen beside it.

import { useState } from 'react';
import { force } from '../../../domain/units/force.ts';
import { parseQuantity } from '../../../domain/units/quantity.ts';
import { Button } from '../../controls/button.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './chooser.module.css';

interface ForceFormProps {
  readonly target: Extract<Target, { by: 'force' }> | null;
  readonly onChoose: (target: Target) => void;
}

const units = Object.keys(force.factors);

function withUnit(text: string, unit: string): string {
  return /[a-z]/i.test(text.replace(/e[+-]?\d+/i, '')) ? text.trim() : `${text.trim()} ${unit}`;
}

export function ForceForm({ target, onChoose }: ForceFormProps) {
  const text = words.setTheGauge;
  const [number = '', ...rest] = target?.force.split(' ') ?? [];
  const [typed, setTyped] = useState(number);
  const [unit, setUnit] = useState(rest.join(' ') || 'kip');
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        const asked = withUnit(typed, unit);
        const read = parseQuantity(force, asked);
        if (!read.ok) setProblem(read.problem.message);
        else if (read.value.value <= 0) setProblem(text.forceNotAboveZero);
        else onChoose({ by: 'force', force: asked });
      }}
      noValidate
    >
      <div className={styles.forceRow}>
        <TextField
          label={text.forceLabel}
          hint={text.forceHint}
          inputMode="decimal"
          forGloves
          value={typed}
          problem={problem}
          onChange={(event) => {
            setTyped(event.target.value);
            setProblem(null);
          }}
        />
        <SelectField
          label={text.unit}
          forGloves
          value={units.includes(unit) ? unit : 'kip'}
          options={units.map((name) => ({ value: name, text: name }))}
          onChange={(event) => setUnit(event.target.value)}
        />
      </div>
      <div className={styles.foot}>
        <Button look="primary" type="submit" forGloves disabled={typed.trim() === ''}>
          {text.show}
        </Button>
      </div>
    </form>
  );
}
