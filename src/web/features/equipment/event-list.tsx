// What happened to the pair between calibrations: reporting it, what it does, settling it.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { eventListAnswer, type PairEventAnswer } from '../../../contract/event.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { Button } from '../../controls/button.tsx';
import { ReasonForm } from '../../controls/reason-form.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './event-list.module.css';
import { EventReport } from './event-report.tsx';

export function EventList({ page }: { readonly page: PairPageAnswer }) {
  const { doubt } = words;
  const [isReporting, setReporting] = useState(false);
  const person = useSession().data?.person ?? null;
  const isPast = useAsOfDay() !== null;
  const mayReport = !isPast && page.parted === null && person !== null && mayDo(person.role, 'report-event');
  return (
    <section className={styles.events} aria-labelledby="events-title">
      <h2 id="events-title">{doubt.eventsTitle}</h2>
      {page.events.length === 0 ? <p>{doubt.noEvents}</p> : null}
      <ul className={styles.list}>
        {page.events.map((event) => (
          <EventLine key={event.seq} event={event} tag={page.line.tag} />
        ))}
      </ul>
      {mayReport && !isReporting ? (
        <div>
          <Button aria-expanded={false} onClick={() => setReporting(true)}>
            {doubt.report}
          </Button>
        </div>
      ) : null}
      {mayReport && isReporting ? (
        <EventReport tag={page.line.tag} today={page.asOf} onClose={() => setReporting(false)} />
      ) : null}
    </section>
  );
}

function EventLine({ event, tag }: { readonly event: PairEventAnswer; readonly tag: string }) {
  const { doubt } = words;
  const nameOf = usePersonName();
  const plant = usePlant();
  const minute = (instant: string) => writeMinute(instant, plant.data?.timeZone);
  const { what, on, note, reportedBy, reportedAt, settled, acting } = event;
  const title = `${doubt.kinds[what]}, ${on}`;
  return (
    <li className={styles.event} data-acting={acting}>
      <h3>{settled === null ? title : <del>{title}</del>}</h3>
      {note === '' ? null : <p>{note}</p>}
      <p className={styles.who}>{doubt.reportedBy(nameOf(reportedBy), minute(reportedAt))}</p>
      {settled === null ? (
        <p>
          <strong>{doubt.acting[acting]}</strong>
          {acting === 'none' ? null : `. ${doubt.effects[acting]}`}
        </p>
      ) : (
        <p>
          <strong>{doubt.settledBy(nameOf(settled.by), minute(settled.at), settled.reason)}</strong>
        </p>
      )}
      {settled === null && acting !== 'none' ? <Settling event={event} tag={tag} /> : null}
    </li>
  );
}

function Settling({ event, tag }: { readonly event: PairEventAnswer; readonly tag: string }) {
  const { doubt } = words;
  const [isOpen, setOpen] = useState(false);
  const person = useSession().data?.person ?? null;
  const isPast = useAsOfDay() !== null;
  const client = useQueryClient();
  const sending = useMutation({
    mutationFn: (reason: string) =>
      post(
        `/api/pairs/${encodeURIComponent(tag)}/events/${event.seq}/settlement`,
        { reason: reason.trim() },
        eventListAnswer,
      ),
    onSuccess: () => forgetAnswers(client),
  });
  if (isPast || person === null || !mayDo(person.role, 'settle-event')) return null;
  if (!isOpen) {
    return (
      <Button aria-expanded={false} onClick={() => setOpen(true)}>
        {doubt.settle}
      </Button>
    );
  }
  return (
    <ReasonForm
      kept={`settle ${event.seq}`}
      title={doubt.settle}
      what={event.acting === 'void' ? doubt.settleVoidWhat : doubt.settleWhat}
      look={event.acting === 'void' ? 'grave' : 'primary'}
      sending={sending}
      onClose={() => setOpen(false)}
    />
  );
}
