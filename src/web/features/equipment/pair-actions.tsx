// Holding a pair, lifting the hold, and parting it, each with a reason.

import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { useLocation } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './pair-actions.module.css';
import { type PairAction, usePairAction } from './use-pair-page.ts';

/** Shortest reason the contract takes. */
const shortestReason = 5;

export function PairActions({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const session = useSession();
  const [location] = useLocation();
  const [open, setOpen] = useState<PairAction | null>(null);
  const person = session.data?.person ?? null;
  if (session.isPending) return null;
  const isHeld = page.hold !== null;
  const holding: PairAction = isHeld ? 'hold-lifting' : 'hold';
  const mayHold = person !== null && mayDo(person.role, isHeld ? 'lift-hold' : 'place-hold');
  const mayPart = person !== null && mayDo(person.role, 'register-equipment');
  return (
    <section className={styles.actions} aria-labelledby="actions-title">
      <h2 id="actions-title">{equipment.actionsTitle}</h2>
      {person === null ? (
        <p className={styles.sign}>
          {equipment.signInToWrite} <ButtonLink href={signInAddress(location, '')}>{equipment.signIn}</ButtonLink>
        </p>
      ) : null}
      {person !== null && !mayHold ? <p>{equipment.holdMayNot}</p> : null}
      <div className={styles.ways}>
        {mayHold ? (
          <Button aria-expanded={open === holding} onClick={() => setOpen(holding)}>
            {isHeld ? equipment.lift : equipment.hold}
          </Button>
        ) : null}
        {mayPart ? (
          <Button look="grave" aria-expanded={open === 'parting'} onClick={() => setOpen('parting')}>
            {equipment.part}
          </Button>
        ) : null}
      </div>
      {open === null ? null : <ReasonForm key={open} tag={page.line.tag} action={open} onClose={() => setOpen(null)} />}
    </section>
  );
}

const texts = {
  hold: [words.equipment.hold, words.equipment.holdWhat],
  'hold-lifting': [words.equipment.lift, words.equipment.liftWhat],
  parting: [words.equipment.part, words.equipment.partWhat],
} as const satisfies Readonly<Record<PairAction, readonly [string, string]>>;

interface ReasonFormProps {
  readonly tag: string;
  readonly action: PairAction;
  readonly onClose: () => void;
}

function ReasonForm({ tag, action, onClose }: ReasonFormProps) {
  const { equipment } = words;
  const form = useForm({ defaultValues: { reason: '' } });
  const sending = usePairAction(tag, action);
  const [title, what] = texts[action];
  const atField = problemForField(sending.error, 'reason');
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={form.handleSubmit(({ reason }) => sending.mutate(reason, { onSuccess: onClose }))}
    >
      <p>{what}</p>
      <TextField
        label={equipment.reason}
        maxLength={500}
        problem={form.formState.errors.reason?.message ?? atField}
        {...form.register('reason', {
          validate: (text) => text.trim().length >= shortestReason || equipment.reasonNeeded,
        })}
      />
      {sending.error !== null && atField === null ? <ProblemNote error={sending.error} /> : null}
      <div className={styles.ways}>
        <Button look={action === 'hold-lifting' ? 'primary' : 'grave'} type="submit" disabled={sending.isPending}>
          {sending.isPending ? equipment.sending : title}
        </Button>
        <Button onClick={onClose}>{equipment.cancel}</Button>
      </div>
    </form>
  );
}
