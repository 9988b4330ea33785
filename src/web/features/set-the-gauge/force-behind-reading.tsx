// The other way round: which force stands behind a reading the gauge shows already. Closed until it is wanted.

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { parseQuantity } from '../../../domain/units/quantity.ts';
import { Button } from '../../controls/button.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import { ForceBehindAnswer } from './force-behind-answer.tsx';
import styles from './force-behind-reading.module.css';
import { askLookup } from './use-lookup.ts';

export function ForceBehindReading({ line }: { readonly line: PairLine }) {
  const text = words.setTheGauge;
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const answer = useQuery({
    queryKey: ['force behind', line.tag, asked],
    queryFn: () => askLookup(line.tag, new URLSearchParams({ reading: asked ?? '' })),
    enabled: asked !== null,
    gcTime: 0,
  });
  const ask = () => {
    const reading = /[a-z]/i.test(typed) ? typed.trim() : `${typed.trim()} ${line.readingUnit}`;
    const read = parseQuantity(pressure, reading);
    setProblem(read.ok ? null : read.problem.message);
    setAsked(read.ok ? reading : null);
  };
  return (
    <details className={styles.behind}>
      <summary className={styles.summary}>{text.behindTitle}</summary>
      <form
        className={styles.form}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          ask();
        }}
      >
        <p>{text.behindLead}</p>
        <TextField
          label={text.behindReading(line.readingUnit)}
          inputMode="decimal"
          forGloves
          value={typed}
          problem={problem}
          onChange={(event) => {
            setTyped(event.target.value);
            setAsked(null);
            setProblem(null);
          }}
        />
        <Button type="submit" forGloves disabled={typed.trim() === ''}>
          {text.behindButton}
        </Button>
      </form>
      {asked === null ? null : (
        <ForceBehindAnswer
          answer={answer.isSuccess ? answer.data : null}
          error={answer.error}
          onRetry={() => answer.refetch()}
        />
      )}
    </details>
  );
}
