// What the figures of a table mean: one line each, with where it is defined.

import { words } from '../words/desk-words.ts';
import type { FigureNote } from '../words/en-US/figures.ts';
import styles from './figure-notes.module.css';

export function FigureNotes({ notes }: { readonly notes: readonly FigureNote[] }) {
  const { figures } = words;
  return (
    <section className={styles.notes}>
      <h3>{figures.whatTheyMean}</h3>
      <dl className={styles.list}>
        {notes.map(({ name, means, source }) => (
          <div key={name} className={styles.note}>
            <dt>{name}</dt>
            <dd>
              {means} <span className={styles.source}>{figures.sourceOf(source)}</span>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
