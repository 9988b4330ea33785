// Why the person signed in releases a withheld reading. What is typed outlasts a lost connection, a sign-in and a reload.

import { useEffect, useState } from 'react';
import { useForm } from 'react-hook-form';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { Button } from '../../controls/button.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/words.ts';
import type { Target } from './choice.ts';
import styles from './stop-panel.module.css';
import { type ReleaseFields, useRelease } from './use-release.ts';

interface ReleaseFormProps {
  readonly signedInName: string;
  readonly choice: { readonly pair: string; readonly target: Target };
  readonly onReleased: (answer: LookupAnswer) => void;
}

export function ReleaseForm({ signedInName, choice, onReleased }: ReleaseFormProps) {
  const text = words.setTheGauge;
  const release = useRelease(choice.pair, choice.target);
  const [sent, setSent] = useState<{ readonly fields: string; readonly key: string } | null>(null);
  const form = `release ${choice.pair} by ${signedInName}`;
  const { register, handleSubmit, formState, setFocus, subscribe } = useForm<ReleaseFields>({
    defaultValues: { reason: '', ...recallFields(window.sessionStorage, form, ['reason']) },
  });
  useEffect(
    () =>
      subscribe({
        formState: { values: true },
        callback: ({ values: { reason } }) => keepFields(window.sessionStorage, form, { reason }),
      }),
    [subscribe, form],
  );
  const submit = handleSubmit((fields) => {
    const asked = JSON.stringify(fields);
    const idempotencyKey = sent?.fields === asked ? sent.key : newIdempotencyKey();
    setSent({ fields: asked, key: idempotencyKey });
    release.mutate(
      { ...fields, idempotencyKey },
      {
        onSuccess: (answer) => {
          forgetFields(window.sessionStorage, form);
          onReleased(answer);
        },
        onError: () => setFocus('reason'),
      },
    );
  });
  const reasonProblem = formState.errors.reason?.message ?? problemForField(release.error, 'reason');
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      <h3>{text.releaseTitle}</h3>
      <dl>
        <dt className={styles.name}>{text.releasedBy}</dt>
        <dd className={styles.reason}>{signedInName}</dd>
      </dl>
      <TextField
        label={text.releaseReason}
        hint={text.releaseReasonHint}
        forGloves
        problem={reasonProblem}
        {...register('reason', { validate: (reason) => reason.trim().length >= 5 || text.reasonTooShort })}
      />
      {release.isError && reasonProblem === null ? <ProblemNote error={release.error} /> : null}
      <Button look="grave" type="submit" forGloves disabled={release.isPending}>
        {release.isPending ? text.releasing : text.releaseButton}
      </Button>
    </form>
  );
}
