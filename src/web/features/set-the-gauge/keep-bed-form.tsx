// The form that keeps the pair and what is pulled under the name of a bed. It is opened in keep-bed.tsx.

import { useId, useState } from 'react';
import { Button } from '../../controls/button.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import type { Choice } from './choice.ts';
import { type KeptBed, keepBed, mostBeds } from './kept-beds.ts';
import styles from './readings-part.module.css';

export interface KeepBedProps {
  readonly choice: Choice;
  readonly beds: readonly KeptBed[];
  readonly keep: (beds: readonly KeptBed[]) => boolean;
}

export function KeepBedForm({ choice, beds, keep }: KeepBedProps) {
  const text = words.setTheGauge;
  const [name, setName] = useState('');
  const [said, setSaid] = useState<string | null>(null);
  const list = useId();
  const save = () => {
    const next = keepBed(beds, { name, choice });
    if (next === beds) setSaid(text.tooManyBeds(mostBeds));
    else if (!keep(next)) setSaid(text.bedNotKept);
    else {
      setSaid(text.bedKept(name.trim()));
      setName('');
    }
  };
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() !== '') save();
      }}
    >
      <TextField
        label={text.bedName}
        hint={text.bedNameHint}
        list={list}
        maxLength={40}
        forGloves
        value={name}
        onChange={(event) => {
          setName(event.target.value);
          setSaid(null);
        }}
      />
      <datalist id={list}>
        {beds.map((bed) => (
          <option key={bed.name} value={bed.name} />
        ))}
      </datalist>
      <Button type="submit" forGloves disabled={name.trim() === ''}>
        {text.keepBed}
      </Button>
      <p role="status">{said}</p>
    </form>
  );
}
