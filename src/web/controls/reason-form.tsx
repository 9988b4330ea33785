// A form that asks for a reason and nothing else, before something is written into the ledger. What was typed is kept on
// the device until it was sent.

import type { UseMutationResult } from '@tanstack/react-query';
import { useEffect } from 'react';
import { useForm } from 'react-hook-form';
import { words } from '../words/desk-words.ts';
import { Button } from './button.tsx';
import { forgetFields, keepFields, recallFields } from './kept-fields.ts';
import { problemForField } from './problem-for-field.ts';
import { ProblemNote } from './problem-note.tsx';
import styles from './reason-form.module.css';
import { TextField } from './text-field.tsx';

/** Shortest reason the contract takes. */
const shortestReason = 5;

interface ReasonFormProps {
  /** Names what is typed here on the device. */
  readonly kept: string;
  readonly title: string;
  /** What happens after. */
  readonly what: string;
  readonly look?: 'primary' | 'grave';
  readonly sending: UseMutationResult<unknown, Error, string>;
  readonly onClose: () => void;
}

export function ReasonForm({ kept, title, what, look = 'grave', sending, onClose }: ReasonFormProps) {
  const { equipment } = words;
  const form = useForm({ defaultValues: { reason: '', ...recallFields(window.sessionStorage, kept, ['reason']) } });
  const { subscribe } = form;
  useEffect(
    () =>
      subscribe({
        formState: { values: true },
        callback: ({ values: { reason } }) => keepFields(window.sessionStorage, kept, { reason }),
      }),
    [subscribe, kept],
  );
  const onSent = () => {
    forgetFields(window.sessionStorage, kept);
    onClose();
  };
  const atField = problemForField(sending.error, 'reason');
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={form.handleSubmit(({ reason }) => sending.mutate(reason, { onSuccess: onSent }))}
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
        <Button look={look} type="submit" disabled={sending.isPending}>
          {sending.isPending ? equipment.sending : title}
        </Button>
        <Button onClick={onClose}>{equipment.cancel}</Button>
      </div>
    </form>
  );
}
