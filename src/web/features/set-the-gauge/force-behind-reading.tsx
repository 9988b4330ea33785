// The form that asks which force stands behind a reading. It is opened in force-behind-part.tsx.

import { useRef, useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { parseQuantity } from '../../../domain/units/quantity.ts';
import { Button } from '../../controls/button.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { problemSentence } from '../../controls/problem-sentence.ts';
import { TextField } from '../../controls/text-field.tsx';
import { lookUpOnDevice } from '../../offline/answer-on-device.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { words } from '../../words/words.ts';
import { ForceBehindAnswer } from './force-behind-answer.tsx';
import styles from './force-behind-reading.module.css';
import { problemErrorOf } from './problem-error-of.ts';

export interface ForceBehindReadingProps {
  readonly device: ReadyDevice;
  readonly line: PairLine;
}

export function ForceBehindReading({ device, line }: ForceBehindReadingProps) {
  const text = words.setTheGauge;
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const { snapshot, day } = device;
  const answer = asked === null ? null : lookUpOnDevice(snapshot, line.tag, { reading: asked }, day);
  const error = answer === null || answer.ok ? null : problemErrorOf(answer.problem);
  const field = useRef<HTMLInputElement>(null);
  const problemOfAnswer = problemForField(error, 'reading');
  const ask = () => {
    const reading = /[a-z]/i.test(typed) ? typed.trim() : `${typed.trim()} ${line.readingUnit}`;
    const read = parseQuantity(pressure, reading);
    const wrong = read.ok ? (read.value.value > 0 ? null : text.behindNotAboveZero) : problemSentence(read.problem);
    setProblem(wrong);
    setAsked(wrong === null ? reading : null);
    if (wrong !== null) field.current?.focus();
  };
  return (
    <>
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
      {answer === null || problemOfAnswer !== null ? null : (
        <ForceBehindAnswer answer={answer.ok ? answer.value : null} error={error} />
      )}
    </>
  );
}
