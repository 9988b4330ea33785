// How far ahead to look and how to group what is found.

import { useState } from 'react';
import { Button } from '../../controls/button.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './due-choice.module.css';
import { type DueFilter, readDays } from './due-filter.ts';
import type { Grouping } from './due-groups.ts';

const usual: readonly (number | null)[] = [30, 60, 90, null];
const groupings: readonly (readonly [Grouping, string])[] = [
  ['date', words.whatsDue.byDate],
  ['standing', words.whatsDue.byStanding],
];

interface DueChoiceProps {
  readonly filter: DueFilter;
  readonly choose: (filter: DueFilter) => void;
}

export function DueChoice({ filter, choose }: DueChoiceProps) {
  const { whatsDue } = words;
  const [typed, setTyped] = useState(usual.includes(filter.within) ? '' : String(filter.within));
  const [problem, setProblem] = useState<string | null>(null);

  function chooseTyped(): void {
    const days = readDays(typed);
    if (days === null) setProblem(whatsDue.daysBad(typed));
    else choose({ ...filter, within: days });
  }

  return (
    <div className={styles.choice}>
      <fieldset className={styles.row}>
        <legend>{whatsDue.within}</legend>
        {usual.map((days) => (
          <label key={days} className={styles.option}>
            <input
              type="radio"
              name="within"
              checked={filter.within === days}
              onChange={() => choose({ ...filter, within: days })}
            />
            <span>{days === null ? whatsDue.everything : whatsDue.ofDays(days)}</span>
          </label>
        ))}
      </fieldset>
      <form
        className={styles.other}
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          chooseTyped();
        }}
      >
        <TextField
          label={whatsDue.otherDays}
          inputMode="numeric"
          value={typed}
          problem={problem}
          onChange={(event) => {
            setTyped(event.currentTarget.value);
            setProblem(null);
          }}
        />
        <Button type="submit">{whatsDue.show}</Button>
      </form>
      <fieldset className={styles.row}>
        <legend>{whatsDue.groupBy}</legend>
        {groupings.map(([by, text]) => (
          <label key={by} className={styles.option}>
            <input type="radio" name="by" checked={filter.by === by} onChange={() => choose({ ...filter, by })} />
            <span>{text}</span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
