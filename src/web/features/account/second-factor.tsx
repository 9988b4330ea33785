// The second factor: set up with the password, taken into use with its first six digits, removed with both.

import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { doneAnswer, secondFactorAnswer, secondFactorStateAnswer } from '../../../contract/people.ts';
import { get, post } from '../../app/http-client.ts';
import { FieldForm, type FormField } from '../../controls/field-form.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { ShownOnce } from '../../controls/shown-once.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './account-page.module.css';

interface WithPassword {
  password: string;
}

interface WithDigits {
  oneTimePassword: string;
}

const passwordField = {
  name: 'password',
  label: words.account.password,
  type: 'password',
  autoComplete: 'current-password',
} as const satisfies FormField<WithPassword>;

const digitsField = {
  name: 'oneTimePassword',
  label: words.account.oneTimePassword,
  inputMode: 'numeric',
  autoComplete: 'one-time-code',
} as const satisfies FormField<WithDigits>;

const stateKey = ['second-factor'] as const;

export function SecondFactor() {
  const text = words.account;
  const client = useQueryClient();
  const state = useQuery({ queryKey: stateKey, queryFn: () => get('/api/second-factor', secondFactorStateAnswer) });
  const [secret, setSecret] = useState<{ readonly secret: string; readonly address: string } | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const settle = (sentence: string) => {
    setSecret(null);
    setSaid(sentence);
    void client.invalidateQueries({ queryKey: stateKey });
  };
  if (state.isPending) return <WaitingNote />;
  if (state.isError) return <ProblemNote error={state.error} onRetry={() => void state.refetch()} />;
  return (
    <>
      <p>{state.data.isInUse ? text.secondInUse : text.secondLead}</p>
      {state.data.isInUse ? (
        <FieldForm<WithPassword & WithDigits, unknown>
          key="remove"
          fields={[passwordField, digitsField]}
          button={text.remove}
          look="grave"
          send={(typed) => post('/api/second-factor/removal', typed, doneAnswer)}
          onDone={() => settle(text.removed)}
        />
      ) : null}
      {!state.data.isInUse && secret === null ? (
        <FieldForm<WithPassword, { readonly secret: string; readonly address: string }>
          key="enrol"
          fields={[passwordField]}
          button={text.enrol}
          look="plain"
          send={(typed) => post('/api/second-factor', typed, secondFactorAnswer)}
          onDone={setSecret}
        />
      ) : null}
      {secret === null ? null : (
        <>
          <ShownOnce title={text.secretTitle} code={(secret.secret.match(/.{1,4}/g) ?? []).join(' ')}>
            <p>{text.secretWhat}</p>
            <p className={styles.address}>
              <a href={secret.address}>{secret.address}</a>
            </p>
          </ShownOnce>
          <FieldForm<WithDigits, unknown>
            key="confirm"
            fields={[digitsField]}
            button={text.confirm}
            send={(typed) => post('/api/second-factor/confirmation', typed, doneAnswer)}
            onDone={() => settle(text.confirmed)}
          />
        </>
      )}
      <p role="status" className={styles.done}>
        {said}
      </p>
    </>
  );
}
