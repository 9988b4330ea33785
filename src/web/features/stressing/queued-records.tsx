// The records that wait on this device, each with how it stands in words: saved here, sending, saved in the ledger, rejected why.

import { Link, useLocation } from 'wouter';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import type { QueuedRecord } from '../../offline/record-queue.ts';
import type { RecordSender, SenderState } from '../../offline/record-sender.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import { readBedDraft } from './bed-draft.ts';
import styles from './stressing-page.module.css';
import { bedAddress, keepNewBed } from './use-bed-drafts.ts';

interface QueuedRecordsProps {
  readonly sender: RecordSender;
  readonly state: SenderState;
  readonly store: DraftStore;
}

export function QueuedRecords({ sender, state: { records, sending, hindrance }, store }: QueuedRecordsProps) {
  const text = words.stressing;
  if (records.length === 0) return null;
  const isWaiting = records.some(({ state }) => state === 'waiting');
  return (
    <>
      {isWaiting && sending === null ? (
        <div className={styles.ways}>
          {hindrance === null ? null : (
            <p role="status" className={styles.heed}>
              {text.hindrance[hindrance]}
            </p>
          )}
          {hindrance === 'not-signed-in' ? (
            <ButtonLink href={signInAddress('/stressing', '')}>{text.signIn}</ButtonLink>
          ) : (
            <Button onClick={() => void sender.send()}>{text.sendNow}</Button>
          )}
        </div>
      ) : null}
      <ul className={styles.list}>
        {records.map((record) => (
          <Line key={record.id} record={record} isSending={record.id === sending} sender={sender} store={store} />
        ))}
      </ul>
    </>
  );
}

interface LineProps {
  readonly record: QueuedRecord;
  readonly isSending: boolean;
  readonly sender: RecordSender;
  readonly store: DraftStore;
}

function Line({ record, isSending, sender, store }: LineProps) {
  const text = words.stressing;
  const [, navigate] = useLocation();
  const draft = readBedDraft(record.draft);
  const mend = async () => {
    if (draft === null) return;
    // What is changed is another record, so it goes with another key.
    const id = await keepNewBed(store, { ...draft, key: newIdempotencyKey() });
    await sender.remove(record.id);
    navigate(bedAddress(id));
  };
  return (
    <li className={styles.line} data-state={record.state}>
      <div className={styles.what}>
        <p className={styles.name}>{text.queued(record.bed, record.on, record.pulls)}</p>
        <p role="status" className={styles.state}>
          {text.queueState[isSending ? 'sending' : record.state]}{' '}
          {record.number === undefined ? null : (
            <Link href={`/stressing/${encodeURIComponent(record.number)}`}>{text.recordedAs(record.number)}</Link>
          )}
        </p>
        {record.state === 'rejected' && record.why !== undefined ? (
          <p>{text.rejectedBecause(inLanguage(record.why.detail, record.why.code))}</p>
        ) : null}
      </div>
      <div className={styles.ways}>
        {record.state === 'rejected' && draft !== null ? (
          <Button look="primary" forGloves onClick={() => void mend()}>
            {text.mend}
          </Button>
        ) : null}
        {record.state === 'recorded' ? (
          <Button forGloves onClick={() => void sender.remove(record.id)}>
            {text.tidyAway}
          </Button>
        ) : null}
      </div>
    </li>
  );
}
