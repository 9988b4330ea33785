// Reporting what happened to a pair; what it will do is said before it is sent.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { useForm } from 'react-hook-form';
import { eventListAnswer } from '../../../contract/event.ts';
import { effectOfEvent } from '../../../domain/equipment/event-effect.ts';
import { type PairEventKind, pairEventKinds } from '../../../domain/equipment/pair-event.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { Button } from '../../controls/button.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './event-report.module.css';

interface EventReportProps {
  readonly tag: string;
  readonly today: string;
  readonly onClose: () => void;
}

const fields = ['what', 'on', 'note'] as const;

export function EventReport({ tag, today, onClose }: EventReportProps) {
  const { doubt, equipment } = words;
  const plant = usePlant();
  const client = useQueryClient();
  const kept = `event of ${tag}`;
  const form = useForm({
    defaultValues: { what: '', on: today, note: '', ...recallFields(window.sessionStorage, kept, fields) },
  });
  const { subscribe } = form;
  useEffect(
    () =>
      subscribe({
        formState: { values: true },
        callback: ({ values }) => keepFields(window.sessionStorage, kept, values),
      }),
    [subscribe, kept],
  );
  const sending = useMutation({
    mutationFn: (event: { readonly what: string; readonly on: string; readonly note: string }) =>
      post(`/api/pairs/${encodeURIComponent(tag)}/events`, { ...event, note: event.note.trim() }, eventListAnswer),
    onSuccess: async () => {
      forgetFields(window.sessionStorage, kept);
      onClose();
      await forgetAnswers(client);
    },
  });
  const what = pairEventKinds.find((kind) => kind === form.watch('what'));
  const atFields = fields.some((field) => problemForField(sending.error, field) !== null);
  return (
    <form className={styles.form} noValidate onSubmit={form.handleSubmit((event) => sending.mutate(event))}>
      <p>{doubt.reportLead}</p>
      <SelectField
        label={doubt.what}
        problem={form.formState.errors.what?.message ?? problemForField(sending.error, 'what')}
        options={[
          { value: '', text: doubt.chooseWhat },
          ...pairEventKinds.map((kind) => ({ value: kind, text: doubt.kinds[kind] })),
        ]}
        {...form.register('what', { validate: (chosen) => chosen !== '' || doubt.whatNeeded })}
      />
      <TextField
        label={doubt.on}
        type="date"
        max={today}
        problem={problemForField(sending.error, 'on')}
        {...form.register('on')}
      />
      <TextField
        label={doubt.note}
        hint={doubt.noteHint}
        isOptional
        maxLength={500}
        problem={problemForField(sending.error, 'note')}
        {...form.register('note')}
      />
      {what === undefined || plant.data === undefined ? null : <Follows what={what} rules={plant.data.rules} />}
      {sending.error !== null && !atFields ? <ProblemNote error={sending.error} /> : null}
      <div className={styles.ways}>
        <Button look="grave" type="submit" disabled={sending.isPending}>
          {sending.isPending ? equipment.sending : doubt.send}
        </Button>
        <Button onClick={onClose}>{equipment.cancel}</Button>
      </div>
    </form>
  );
}

function Follows({
  what,
  rules,
}: {
  readonly what: PairEventKind;
  readonly rules: Parameters<typeof effectOfEvent>[1];
}) {
  const { doubt } = words;
  return (
    <p role="status" className={styles.follows}>
      {doubt.effects[effectOfEvent(what, rules)]} {what === 'member-swapped' ? doubt.swapped : null}
    </p>
  );
}
