// A table of ledger entries; on a narrow screen each entry becomes a block of its own.

import type { z } from 'zod';
import type { ledgerAnswer } from '../../../contract/ledger.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { EntrySentence } from '../../controls/entry-sentence.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './entry-table.module.css';

type EntryLine = z.infer<typeof ledgerAnswer>['entries'][number];

const hashDigitsShown = 10;

const scrollThere = (row: HTMLElement | null) => row?.scrollIntoView({ block: 'center' });

interface EntryTableProps {
  readonly entries: readonly EntryLine[];
  readonly caption: string;
  /** The number of the entry somebody was led to. */
  readonly marked: number | null;
}

export function EntryTable({ entries, caption, marked }: EntryTableProps) {
  const nameOf = usePersonName();
  const timeZone = usePlant().data?.timeZone;
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
          <tr
            key={entry.seq}
            className={styles.entry}
            data-marked={entry.seq === marked}
            aria-current={entry.seq === marked ? 'true' : undefined}
            ref={entry.seq === marked ? scrollThere : null}
          >
            <td className={`${styles.seq} ${styles.short}`}>{formatNumber(entry.seq, { rule: 'as-typed' })}</td>
            <td className={styles.short}>
              <time dateTime={entry.at} title={entry.at}>
                {writeMinute(entry.at, timeZone)}
              </time>
            </td>
            <td title={entry.actor}>{nameOf(entry.actor)}</td>
            <td className={styles.what}>
              <EntrySentence entry={entry} />
            </td>
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
