// The drafts that wait on this device, and the way to start a run sheet.

import { useState } from 'react';
import { useLocation } from 'wouter';
import { mayDo } from '../../../domain/rules/role.ts';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import { type CalibrationDraft, freshDraft } from './calibration-draft.ts';
import { ConfirmThrowAway } from './confirm-throw-away.tsx';
import styles from './draft-list.module.css';
import { countTyped, isUntouched } from './run-grid.ts';
import {
  keepNewDraft,
  type ListedDraft,
  unkeptDraft,
  useDraftList,
  useDraftStore,
  useThrowAway,
} from './use-draft-store.ts';

export const draftAddress = (id: string): string => `/calibrate/${encodeURIComponent(id)}`;

/** `pair` is the one the page was opened for, blank for none. */
export function DraftList({ pair }: { readonly pair: string }) {
  const { calibrate } = words;
  const store = useDraftStore();
  const drafts = useDraftList(store.data);
  const throwAway = useThrowAway(store.data);
  const [asked, setAsked] = useState<ListedDraft | null>(null);
  const session = useSession();
  const person = session.data?.person ?? null;
  const [, navigate] = useLocation();

  async function start(): Promise<void> {
    if (store.data === undefined) {
      navigate(draftAddress(unkeptDraft));
      return;
    }
    const blank = pair === '' ? drafts.data?.find(({ draft }) => isBlank(draft)) : undefined;
    const id = blank?.id ?? (await keepNewDraft(store.data, { ...freshDraft(newIdempotencyKey()), pair }));
    navigate(draftAddress(id));
  }

  return (
    <>
      <PageHeading title={calibrate.title} lead={calibrate.intro} />
      <div className={styles.page}>
        {person !== null && !mayDo(person.role, 'record-run') ? (
          <p className={styles.role}>{calibrate.roleCannotSubmit(words.app.roles[person.role])}</p>
        ) : null}
        <div>
          <Button look="primary" disabled={store.isPending} onClick={() => void start()}>
            {pair === '' ? calibrate.start : calibrate.startFor(pair)}
          </Button>
        </div>
        <section className={styles.drafts} aria-labelledby="drafts-title">
          <h2 id="drafts-title">{calibrate.drafts}</h2>
          {store.isError ? <p role="alert">{calibrate.draftsFailed}</p> : null}
          {drafts.isPending && !store.isError ? <WaitingNote text={calibrate.loading} /> : null}
          {drafts.data?.length === 0 ? <p>{calibrate.noDrafts}</p> : null}
          <ul className={styles.list}>
            {drafts.data?.map((listed) => (
              <li key={listed.id} className={styles.draft}>
                <div>
                  <p className={styles.title}>{titleOf(listed.draft)}</p>
                  {listed.isCopy ? <p>{calibrate.copyFromWindow}</p> : null}
                  <p className={styles.facts}>
                    {calibrate.draftPoints(countTyped(listed.draft.grid))},{' '}
                    {calibrate.draftChanged(writeMinute(listed.changedAt))}
                  </p>
                </div>
                <div className={styles.ways}>
                  <ButtonLink href={draftAddress(listed.id)}>{calibrate.continueDraft}</ButtonLink>
                  <Button look="grave" onClick={() => setAsked(listed)}>
                    {calibrate.throwAway}
                  </Button>
                </div>
              </li>
            ))}
          </ul>
        </section>
      </div>
      {asked === null ? null : (
        <ConfirmThrowAway
          title={titleOf(asked.draft)}
          onKeep={() => setAsked(null)}
          onThrowAway={() => {
            void throwAway(asked.id);
            setAsked(null);
          }}
        />
      )}
    </>
  );
}

const titleOf = ({ pair, calibratedOn }: CalibrationDraft): string => words.calibrate.draftTitle(pair, calibratedOn);

const isBlank = ({ pair, loadCell, note, grid }: CalibrationDraft): boolean =>
  pair === '' && loadCell === '' && note === '' && isUntouched(grid);
