// Signing in: a choice of people on the sample plant, a typed name on a real one.

import { useState } from 'react';
import { useForm } from 'react-hook-form';
import { Link, useLocation, useSearch } from 'wouter';
import { usePeople } from '../../app/queries/use-people.ts';
import { useSignIn } from '../../app/queries/use-session.ts';
import { addressAfterSignIn, personToSignIn } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/words.ts';
import { PersonChoice } from './person-choice.tsx';
import styles from './sign-in-page.module.css';

interface SignInFields {
  person: string;
  password: string;
  oneTimePassword: string;
}

export function SignInPage() {
  const people = usePeople();
  if (people.isPending) return <WaitingNote />;
  return (
    <>
      <PageHeading
        title={words.signIn.title}
        lead={people.data?.samplePassword == null ? words.signIn.leadOfPlant : words.signIn.lead}
      />
      {people.isError ? (
        <ProblemNote error={people.error} onRetry={() => people.refetch()} />
      ) : (
        <SignInForm people={people.data.people} samplePassword={people.data.samplePassword} />
      )}
    </>
  );
}

type People = NonNullable<ReturnType<typeof usePeople>['data']>;

function SignInForm({ people, samplePassword }: People) {
  const [, navigate] = useLocation();
  const search = useSearch();
  const signIn = useSignIn();
  const { register, handleSubmit, formState, setFocus } = useForm<SignInFields>({
    defaultValues: { person: personToSignIn(search), password: samplePassword ?? '', oneTimePassword: '' },
  });
  const [isSecondAsked, setSecondAsked] = useState(false);
  const submit = handleSubmit(({ oneTimePassword, ...fields }) =>
    signIn.mutate(
      { ...fields, ...(isSecondAsked ? { oneTimePassword } : {}) },
      {
        onSuccess: () => navigate(addressAfterSignIn(search), { replace: true }),
        onError: (error) => {
          const asksForDigits = problemForField(error, 'oneTimePassword') !== null;
          if (asksForDigits) setSecondAsked(true);
          // The field is there once the page has drawn it.
          setTimeout(() => setFocus(asksForDigits ? 'oneTimePassword' : 'password', { shouldSelect: true }));
        },
      },
    ),
  );
  const digitsProblem = problemForField(signIn.error, 'oneTimePassword');
  const person = register('person', { required: words.signIn.chooseFirst });
  const personProblem = formState.errors.person?.message ?? null;
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      {people.length > 0 ? (
        <PersonChoice people={people} registration={person} problem={personProblem} />
      ) : (
        <TextField
          label={words.signIn.name}
          hint={words.signIn.nameHint}
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          problem={personProblem}
          {...person}
        />
      )}
      <TextField
        label={words.signIn.password}
        type="password"
        autoComplete="current-password"
        hint={samplePassword === null ? undefined : words.signIn.samplePassword(samplePassword)}
        problem={formState.errors.password?.message}
        {...register('password', { required: words.signIn.passwordFirst })}
      />
      {isSecondAsked ? (
        <TextField
          label={words.signIn.oneTimePassword}
          inputMode="numeric"
          autoComplete="one-time-code"
          problem={digitsProblem}
          {...register('oneTimePassword')}
        />
      ) : null}
      {signIn.isError && digitsProblem === null ? <ProblemNote error={signIn.error} /> : null}
      <Button look="primary" type="submit" disabled={signIn.isPending}>
        {signIn.isPending ? words.signIn.signingIn : words.signIn.signInButton}
      </Button>
      {samplePassword === null ? (
        <p className={styles.ways}>
          <Link href="/invitation">{words.signIn.invited}</Link>
          <Link href="/device">{words.signIn.device}</Link>
        </p>
      ) : null}
    </form>
  );
}
