// At the foot of a page: seeing it as it stood at the end of a day gone by.

import { type FormEvent, useId, useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { Button } from '../controls/button.tsx';
import { TextField } from '../controls/text-field.tsx';
import { words } from '../words/words.ts';
import styles from './as-of.module.css';
import { canBeDated, useAsOfDay } from './as-of-day.ts';
import { usePlant } from './queries/use-plant.ts';

export function AsOfChoice() {
  const shown = useAsOfDay();
  const [pathname, navigate] = useLocation();
  const search = useSearch();
  const today = usePlant().data?.today;
  const [day, setDay] = useState(shown ?? '');
  const [isMissing, setMissing] = useState(false);
  const titleId = useId();
  if (!canBeDated(pathname)) return null;
  const show = (event: FormEvent) => {
    event.preventDefault();
    setMissing(day === '');
    if (day === '') return;
    const asked = new URLSearchParams(search);
    asked.set('asOf', day);
    navigate(`${pathname}?${asked}`);
  };
  return (
    <form className={styles.choice} aria-labelledby={titleId} noValidate onSubmit={show}>
      <p id={titleId}>{words.app.asOfTitle}</p>
      <TextField
        label={words.app.asOfLabel}
        type="date"
        max={today}
        value={day}
        problem={isMissing ? words.app.fillIn : null}
        onChange={(event) => setDay(event.currentTarget.value)}
      />
      <Button type="submit">{words.app.asOfShow}</Button>
    </form>
  );
}
