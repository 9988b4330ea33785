// A force typed in any unit, and the strand whose stress ceiling it is checked against, where one is named.

import { useRef, useState } from 'react';
import type { StrandListAnswer } from '../../../contract/plant.ts';
import { type ForceUnit, force } from '../../../domain/units/force.ts';
import { parseQuantity } from '../../../domain/units/quantity.ts';
import { Button } from '../../controls/button.tsx';
import { problemSentence } from '../../controls/problem-sentence.ts';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './chooser.module.css';
import { orderStrands } from './order-strands.ts';
import { chooseUnit, fullText, startTyping, typeText } from './typed-force.ts';

interface ForceFormProps {
  readonly strands: StrandListAnswer['strands'];
  readonly target: Extract<Target, { by: 'force' }> | null;
  readonly onChoose: (target: Target) => void;
}

const units = Object.keys(force.factors) as ForceUnit[];

export function ForceForm({ strands, target, onChoose }: ForceFormProps) {
  const text = words.setTheGauge;
  const [entered, setEntered] = useState(() => startTyping(target?.force ?? null, 'kip'));
  const [strand, setStrand] = useState(target?.strand ?? '');
  const [problem, setProblem] = useState<string | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const refuse = (why: string) => {
    setProblem(why);
    field.current?.focus();
  };
  const choose = () => {
    const read = parseQuantity(force, fullText(entered));
    if (!read.ok) refuse(problemSentence(read.problem));
    else if (read.value.value <= 0) refuse(text.forceNotAboveZero);
    else onChoose({ by: 'force', force: `${read.value.value} ${read.value.unit}`, strand: strand || null });
  };
  const designations = orderStrands(strands).map(({ designation }) => designation);
  const named = strand === '' || designations.includes(strand) ? designations : [strand, ...designations];
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        choose();
      }}
      noValidate
    >
      <div className={styles.forceRow}>
        <TextField
          ref={field}
          label={text.forceLabel}
          hint={text.forceHint}
          inputMode="decimal"
          forGloves
          value={entered.typed}
          problem={problem}
          onChange={(event) => {
            setEntered(typeText(event.target.value, entered));
            setProblem(null);
          }}
        />
        <SelectField
          label={text.unit}
          forGloves
          value={entered.unit}
          options={units.map((name) => ({ value: name, text: name }))}
          onChange={(event) => {
            const unit = units.find((name) => name === event.target.value);
            if (unit !== undefined) setEntered(chooseUnit(unit, entered));
            setProblem(null);
          }}
        />
      </div>
      <SelectField
        label={text.forceStrand}
        isOptional
        forGloves
        value={strand}
        options={[{ value: '', text: text.noStrand }, ...named.map((name) => ({ value: name, text: name }))]}
        onChange={(event) => setStrand(event.target.value)}
      />
      <div className={styles.foot}>
        <Button look="primary" type="submit" forGloves disabled={entered.typed.trim() === ''}>
          {text.show}
        </Button>
      </div>
    </form>
  );
}
