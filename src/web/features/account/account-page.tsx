// One's own account: the password, the second factor, and signing out on every device.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { doneAnswer } from '../../../contract/people.ts';
import { mayDo, ordinary } from '../../../domain/rules/role.ts';
import { post, remove } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { FieldForm } from '../../controls/field-form.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './account-page.module.css';
import { SecondFactor } from './second-factor.tsx';

export function AccountPage() {
  const text = words.account;
  const session = useSession();
  if (session.isPending) return <WaitingNote />;
  const person = session.data?.person ?? null;
  if (person === null) {
    return (
      <>
        <PageHeading title={text.title} lead={text.signInFirst} />
        <ButtonLink href={signInAddress('/account', '')}>{words.app.signIn}</ButtonLink>
      </>
    );
  }
  return (
    <>
      <PageHeading title={text.title} lead={text.leadOf(person.name, person.id)} />
      <div className={styles.parts}>
        <PasswordPart />
        <section aria-labelledby="second-title" className={styles.part}>
          <h2 id="second-title">{text.secondTitle}</h2>
          {mayDo(person.role, 'set-second-factor', { ...ordinary, own: true }) ? (
            <SecondFactor />
          ) : (
            <p>{text.secondMayNot}</p>
          )}
        </section>
        <EverywherePart />
      </div>
    </>
  );
}

interface PasswordFields {
  password: string;
  newPassword: string;
}

function PasswordPart() {
  const text = words.account;
  const [isDone, setDone] = useState(false);
  return (
    <section aria-labelledby="password-title" className={styles.part}>
      <h2 id="password-title">{text.passwordTitle}</h2>
      <p>{text.passwordLead}</p>
      <FieldForm<PasswordFields, unknown>
        fields={[
          { name: 'password', label: text.password, type: 'password', autoComplete: 'current-password' },
          {
            name: 'newPassword',
            label: text.newPassword,
            hint: text.newPasswordHint,
            type: 'password',
            autoComplete: 'new-password',
            check: (typed) => (typed.length < 12 ? text.newPasswordShort : null),
          },
        ]}
        button={text.changePassword}
        send={(typed) => post('/api/password', typed, doneAnswer)}
        onDone={() => setDone(true)}
      />
      <p role="status" className={styles.done}>
        {isDone ? text.passwordChanged : null}
      </p>
    </section>
  );
}

function EverywherePart() {
  const text = words.account;
  const client = useQueryClient();
  const ending = useMutation({
    mutationFn: () => remove('/api/sessions', doneAnswer),
    onSuccess: () => forgetAnswers(client),
  });
  return (
    <section aria-labelledby="everywhere-title" className={styles.part}>
      <h2 id="everywhere-title">{text.everywhereTitle}</h2>
      <p>{text.everywhereLead}</p>
      {ending.isError ? <ProblemNote error={ending.error} /> : null}
      <Button look="grave" disabled={ending.isPending} onClick={() => ending.mutate()}>
        {text.everywhere}
      </Button>
    </section>
  );
}
