// A table of ledger entries; on a narrow screen each entry becomes a block of its own.

import type { z } from 'zod';
import type { ledgerAnswer } from '../../../contract/plant.ts';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import styles from './entry-table.module.css';

type EntryLine = z.infer<typeof ledgerAnswer>['entries'][number];

const hashDigitsShown = 10;

/** "2026-11-25T13:05:22.123Z" as "2026-11-25 13:05"; the whole instant is the title of the cell. */
function minuteOf(instant: string): string {
  return instant.slice(0, 16).replace('T', ' ');
}

export function EntryTable({ entries, caption }: { readonly entries: readonly EntryLine[]; readonly caption: string }) {
  const { seq, when, who, what, subject, hash } = words.ledger;
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>{caption}</caption>
      <thead>
        <tr>
          {[seq, when, who, what, subject, hash].map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {entries.map((entry) => (
          <tr key={entry.seq}>
            <td className={`${styles.seq} ${styles.short}`}>{formatNumber(entry.seq, { rule: 'as-typed' })}</td>
            <td className={styles.short}>
              <time dateTime={entry.at} title={entry.at}>
                {minuteOf(entry.at)}
              </time>
            </td>
            <td>{entry.actor}</td>
            <td className={styles.what}>{entry.summary}</td>
            <td>{entry.subject}</td>
            <td className={styles.short}>
              <code title={entry.hash}>{entry.hash.slice(0, hashDigitsShown)}</code>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
