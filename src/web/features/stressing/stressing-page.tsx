// The beds: those being recorded on this device, those that wait to be sent, and those in the ledger.

import { useLocation } from 'wouter';
import { useSession } from '../../app/queries/use-session.ts';
import { Button } from '../../controls/button.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { useRecordSender } from '../../offline/use-record-sender.ts';
import { useOnDevice } from '../../offline/use-snapshot.ts';
import { words } from '../../words/desk-words.ts';
import { OpenBeds } from './open-beds.tsx';
import { QueuedRecords } from './queued-records.tsx';
import { RecordedBeds } from './recorded-beds.tsx';
import styles from './stressing-page.module.css';
import { bedAddress, keepNewBed, startBed, unkeptBed, useBedList, useBedStore } from './use-bed-drafts.ts';

export function StressingPage() {
  const text = words.stressing;
  const [, navigate] = useLocation();
  const store = useBedStore();
  const beds = useBedList(store.data);
  const { sender, state } = useRecordSender();
  const session = useSession();
  // A visit here is enough: the next bed is recorded with what the device takes along now.
  useOnDevice();
  const begin = async () => {
    navigate(bedAddress(store.data === undefined ? unkeptBed : await keepNewBed(store.data, startBed({}))));
  };
  // A bed whose record waits is finished: what is left of its draft is not shown beside it.
  const open = (beds.data ?? []).filter(({ draft }) => !state.records.some(({ id }) => id === draft.key));
  const isSignedOut = session.data?.person === null;
  return (
    <>
      <PageHeading title={text.title} lead={text.lead}>
        <Button look="primary" forGloves disabled={store.isPending} onClick={() => void begin()}>
          {text.record}
        </Button>
      </PageHeading>
      {store.isError ? <p role="status">{text.noStore}</p> : null}
      <div className={styles.page}>
        {open.length === 0 && state.records.length === 0 ? null : (
          <section className={styles.section} aria-label={text.onDeviceTitle}>
            <h2>{text.onDeviceTitle}</h2>
            {isSignedOut ? <p>{text.signInLater}</p> : null}
            {store.data === undefined ? null : <OpenBeds beds={open} store={store.data} />}
            {sender === null || store.data === undefined ? null : (
              <QueuedRecords sender={sender} state={state} store={store.data} />
            )}
          </section>
        )}
        <RecordedBeds />
      </div>
    </>
  );
}
