// One doubt about a calibration: what happened, what rests on it since when, and clearing it with a reason.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { calibrationAnswer } from '../../contract/calibration.ts';
import type { DoubtAnswer } from '../../contract/doubt.ts';
import { mayDo } from '../../domain/rules/role.ts';
import { useAsOfDay } from '../app/as-of-day.ts';
import { post } from '../app/http-client.ts';
import { forgetAnswers } from '../app/queries/forget-answers.ts';
import { usePersonName } from '../app/queries/use-person-name.ts';
import { usePlant } from '../app/queries/use-plant.ts';
import { useSession } from '../app/queries/use-session.ts';
import { words } from '../words/desk-words.ts';
import { inLanguage } from '../words/sentence.ts';
import { Button } from './button.tsx';
import styles from './doubt-item.module.css';
import { ReasonForm } from './reason-form.tsx';
import { writeMinute } from './write-minute.ts';

export function DoubtItem({ item, isReadOnly = false }: { readonly item: DoubtAnswer; readonly isReadOnly?: boolean }) {
  const { doubt } = words;
  const nameOf = usePersonName();
  const plant = usePlant();
  const { name, cause, because, from, until, cleared, calibration, pair, isInForce } = item;
  const isOpen = cleared === null;
  return (
    <li className={styles.item} data-open={isOpen} data-doubt={name}>
      <h3>
        <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
          <path
            d="M0.800 2h18.400L10 18.800z M8.800 4.600h2.400v5.800H8.800z M8.800 11.600h2.400v2.400H8.800z"
            fillRule="evenodd"
          />
        </svg>
        {isOpen ? doubt.causes[cause] : <del>{doubt.causes[cause]}</del>}
      </h3>
      <p className={styles.because}>{isOpen ? inLanguage(because) : <del>{inLanguage(because)}</del>}</p>
      <p>
        <Link href={`/equipment/${encodeURIComponent(pair)}`}>{doubt.pair(pair)}</Link>
        {', '}
        <Link href={`/review/${encodeURIComponent(calibration)}`}>{doubt.calibration(calibration)}</Link>
        {`, ${isInForce ? doubt.inForce : doubt.notInForce}. `}
        {until === null ? doubt.workFrom(from) : doubt.workBetween(from, until)}
      </p>
      <Beds beds={item.beds} />
      {cleared === null ? null : (
        <p>
          <strong>
            {doubt.clearedBy(nameOf(cleared.by), writeMinute(cleared.at, plant.data?.timeZone), cleared.reason)}
          </strong>
        </p>
      )}
      {isOpen && !isReadOnly ? <Clearing item={item} /> : null}
    </li>
  );
}

/** More are counted, not listed. */
const mostBedsShown = 12;

function Beds({ beds }: Pick<DoubtAnswer, 'beds'>) {
  const { doubt } = words;
  if (beds.length === 0) return <p>{doubt.noBeds}</p>;
  const pulls = beds.reduce((sum, bed) => sum + bed.pulls, 0);
  return (
    <div>
      <p>{doubt.bedsRest(beds.length, pulls)}</p>
      <ul className={styles.beds}>
        {beds.slice(0, mostBedsShown).map(({ number, bed, on }) => (
          <li key={number}>
            <Link href={`/stressing/${encodeURIComponent(number)}`}>{number}</Link> {bed}, {on}
          </li>
        ))}
      </ul>
      {beds.length > mostBedsShown ? <p>{doubt.moreBeds(beds.length - mostBedsShown)}</p> : null}
    </div>
  );
}

function Clearing({ item }: { readonly item: DoubtAnswer }) {
  const { doubt } = words;
  const [isOpen, setOpen] = useState(false);
  const person = useSession().data?.person ?? null;
  const isPast = useAsOfDay() !== null;
  const client = useQueryClient();
  const sending = useMutation({
    mutationFn: (reason: string) =>
      post(
        `/api/calibrations/${encodeURIComponent(item.calibration)}/clearances`,
        { doubt: item.name, reason: reason.trim() },
        calibrationAnswer,
      ),
    onSuccess: () => forgetAnswers(client),
  });
  if (isPast || person === null || !mayDo(person.role, 'clear-doubt')) return null;
  if (person.id === item.enteredBy) return <p className={styles.note}>{doubt.ownRun}</p>;
  if (!isOpen) {
    return (
      <Button aria-expanded={false} onClick={() => setOpen(true)}>
        {doubt.clear}
      </Button>
    );
  }
  return (
    <ReasonForm
      kept={`clear ${item.calibration} ${item.name}`}
      title={doubt.clear}
      what={doubt.clearWhat}
      look="primary"
      sending={sending}
      onClose={() => setOpen(false)}
    />
  );
}
