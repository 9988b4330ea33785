// One large tabular number with its unit and the words it stands for.

import type { ReactNode } from 'react';
import styles from './figure.module.css';

interface FigureProps {
  readonly label: string;
  readonly value: string;
  readonly unit?: string;
  readonly size?: 'plain' | 'large';
  readonly note?: ReactNode;
}

export function Figure({ label, value, unit, size = 'plain', note }: FigureProps) {
  return (
    <div className={styles.figure}>
      <p className={styles.label}>{label}</p>
      <p className={size === 'large' ? `${styles.value} ${styles.large}` : styles.value}>
        <span className={styles.number}>{value}</span>
        {unit === undefined ? null : <span className={styles.unit}>{` ${unit}`}</span>}
      </p>
      {note === undefined ? null : <div className={styles.note}>{note}</div>}
    </div>
  );
}
