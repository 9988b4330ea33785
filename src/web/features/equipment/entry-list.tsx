// The ledger entries that concern the pair, newest first.

import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { EntrySentence } from '../../controls/entry-sentence.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './entry-list.module.css';

export function EntryList({ entries }: Pick<PairPageAnswer, 'entries'>) {
  const { equipment } = words;
  const nameOf = usePersonName();
  const plant = usePlant();
  return (
    <section className={styles.entries} aria-labelledby="entries-title">
      <h2 id="entries-title">{equipment.entriesTitle}</h2>
      {entries.length === 0 ? <p>{equipment.noEntries}</p> : null}
      <ol className={styles.list}>
        {entries.map((entry) => (
          <li key={entry.seq} className={styles.entry}>
            <time className={styles.when} dateTime={entry.at}>
              {writeMinute(entry.at, plant.data?.timeZone)}
            </time>
            <span className={styles.who}>{nameOf(entry.actor)}</span>
            <span className={styles.what}>
              <EntrySentence entry={entry} />
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
