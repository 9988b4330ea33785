// Says on every page of a day gone by which day it shows, and leads back to today.

import { useLocation, useSearch } from 'wouter';
import { words } from '../words/words.ts';
import styles from './as-of.module.css';
import { useAsOfDay } from './as-of-day.ts';

export function AsOfNote() {
  const day = useAsOfDay();
  const [pathname] = useLocation();
  const rest = new URLSearchParams(useSearch());
  if (day === null) return null;
  rest.delete('asOf');
  const search = rest.toString();
  return (
    <div className={styles.note} role="status">
      <p>
        <strong>{words.app.asOfNote(day)}</strong> {words.app.asOfReadOnly}
      </p>
      {/* A plain link: the router would take the day along. */}
      <a href={search === '' ? pathname : `${pathname}?${search}`}>{words.app.backToToday}</a>
    </div>
  );
}
