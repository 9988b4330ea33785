// What every chart has around it: a title, a sentence that tells it without sight, and a legend in words and shapes.

import { type ReactNode, useId } from 'react';
import { words } from '../words/desk-words.ts';
import styles from './chart.module.css';
import { pathOfCycle } from './point-shape.tsx';

interface ChartFrameProps {
  readonly title: string;
  /** Told to who cannot see the drawing. */
  readonly summary: string;
  readonly cycles: readonly number[];
  readonly earlier?: readonly string[];
  readonly hasBand: boolean;
  readonly hasCurve: boolean;
  readonly children: ReactNode;
}

export function ChartFrame({ title, summary, cycles, earlier = [], hasBand, hasCurve, children }: ChartFrameProps) {
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
        {hasCurve ? (
          <li>
            <svg viewBox="0 0 26 14" aria-hidden="true">
              <path d="M1 7h24" className={styles.curve} />
            </svg>
            {words.charts.curve}
          </li>
        ) : null}
        {hasBand ? (
          <li>
            <svg viewBox="0 0 26 14" aria-hidden="true">
              <path d="M1 2h24v10h-24z" className={styles.band} />
            </svg>
            {words.charts.band}
          </li>
        ) : null}
        {earlier.map((day, index) => (
          <li key={day}>
            <svg viewBox="0 0 26 14" aria-hidden="true">
              <path d="M1 7h24" className={styles.earlier} strokeDasharray={dashOfEarlier(index)} />
            </svg>
            {words.charts.earlier(day)}
          </li>
        ))}
      </ul>
    </figure>
  );
}

/** The dashes get shorter the older a curve is. */
export function dashOfEarlier(index: number): string {
  return ['9 4', '5 4', '2 4', '1 5'][Math.min(index, 3)] ?? '1 5';
}
