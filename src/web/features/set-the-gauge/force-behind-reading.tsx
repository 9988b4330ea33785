// The other way round: which force stands behind a reading the gauge shows already. Closed until it is wanted.

import { useQuery } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { parseQuantity } from '../../../domain/units/quantity.ts';
import { useAskAgainWhenOffline } from '../../app/use-ask-again-when-offline.ts';
import { Button } from '../../controls/button.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { problemSentence } from '../../controls/problem-sentence.ts';
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
  useAskAgainWhenOffline(answer.refetch, asked !== null);
  const field = useRef<HTMLInputElement>(null);
  const problemOfAnswer = problemForField(answer.error, 'reading');
  const ask = () => {
    const reading = /[a-z]/i.test(typed) ? typed.trim() : `${typed.trim()} ${line.readingUnit}`;
    const read = parseQuantity(pressure, reading);
    const wrong = read.ok ? (read.value.value > 0 ? null : text.behindNotAboveZero) : problemSentence(read.problem);
    setProblem(wrong);
    setAsked(wrong === null ? reading : null);
    if (wrong !== null) field.current?.focus();
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
          ref={field}
          label={text.behindReading(line.readingUnit)}
          inputMode="decimal"
          forGloves
          value={typed}
          problem={problem ?? problemOfAnswer}
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
      {asked === null || problemOfAnswer !== null ? null : (
        <ForceBehindAnswer
          answer={answer.isSuccess ? answer.data : null}
          error={answer.error}
          onRetry={() => answer.refetch()}
        />
      )}
    </details>
  );
}
