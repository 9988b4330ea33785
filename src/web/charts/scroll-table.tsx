// A table of numbers that scrolls inside its own box where the screen is narrow, never the page.

import { type ReactNode, useId } from 'react';
import styles from './scroll-table.module.css';

interface ScrollTableProps {
  readonly title: string;
  /** 3 where the table stands under a heading of its own section. */
  readonly headingLevel?: 2 | 3;
  readonly columns: readonly string[];
  /** Columns from this one on hold numbers and are set to the right. */
  readonly numbersFrom?: number;
  readonly children: ReactNode;
}

export function ScrollTable({ title, headingLevel = 2, columns, numbersFrom = 1, children }: ScrollTableProps) {
  const titleId = useId();
  const Heading = headingLevel === 2 ? 'h2' : 'h3';
  return (
    <div className={styles.frame}>
      <Heading id={titleId}>{title}</Heading>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reached by keyboard */}
      <section className={styles.box} aria-labelledby={titleId} tabIndex={0}>
        <table className={styles.table} aria-labelledby={titleId}>
          <thead>
            <tr>
              {columns.map((column, index) => (
                <th key={column} scope="col" data-number={index >= numbersFrom}>
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>{children}</tbody>
        </table>
      </section>
    </div>
  );
}

export function NumberCell({ children }: { readonly children: ReactNode }) {
  return <td data-number="true">{children}</td>;
}
