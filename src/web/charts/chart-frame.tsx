// What every chart has around it: a title, a sentence that tells it without sight, and a legend in words and shapes.

import { type ReactNode, useId } from 'react';
import { words } from '../words/desk-words.ts';
import styles from './chart.module.css';
import { pathOfCycle } from './point-shape.tsx';

/** One thing of the legend besides the cycles. */
export interface ChartKey {
  readonly text: string;
  readonly look: 'curve' | 'band' | 'mean-band' | 'dashed';
  readonly dash?: string;
}

interface ChartFrameProps {
  readonly title: string;
  /** Told to who cannot see the drawing. */
  readonly summary: string;
  readonly cycles: readonly number[];
  readonly keys: readonly ChartKey[];
  /** Said under the legend. */
  readonly note?: string | null;
  readonly children: ReactNode;
}

export function ChartFrame({ title, summary, cycles, keys, note = null, children }: ChartFrameProps) {
  const titleId = useId();
  return (
    <figure className={styles.frame} aria-labelledby={titleId}>
      <figcaption id={titleId} className={styles.title}>
        {title}
      </figcaption>
      <p className="for-screen-readers">{summary}</p>
      <div className={styles.drawing} aria-hidden="true">
        {children}
      </div>
      <ul className={styles.legend}>
        {cycles.map((cycle) => (
          <li key={cycle}>
            <svg viewBox="-7 -7 14 14" aria-hidden="true">
              <path d={pathOfCycle(cycle)} className={styles.point} />
            </svg>
            {words.charts.cycle(cycle)}
          </li>
        ))}
        {keys.map(({ text, look, dash }) => (
          <li key={text}>
            <svg viewBox="0 0 26 14" aria-hidden="true">
              <path
                d={look === 'curve' || look === 'dashed' ? 'M1 7h24' : 'M1 2h24v10h-24z'}
                className={styles[look]}
                strokeDasharray={dash}
              />
            </svg>
            {text}
          </li>
        ))}
      </ul>
      {note === null ? null : <p className={styles.note}>{note}</p>}
    </figure>
  );
}

/** The keys of both bands, as plot.tsx draws them. */
export function bandKeys(): readonly ChartKey[] {
  return [
    { text: words.charts.band, look: 'band' },
    { text: words.charts.meanBand, look: 'mean-band', dash: '3 3' },
  ];
}
