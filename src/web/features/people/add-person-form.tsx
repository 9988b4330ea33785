// The form that adds a person. What was typed stays until it is written; the password is kept nowhere.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useId, useState } from 'react';
import { useForm } from 'react-hook-form';
import { personAnswer } from '../../../contract/plant.ts';
import { type Role, roles } from '../../../domain/rules/role.ts';
import { newIdempotencyKey, post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { Button } from '../../controls/button.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './add-person-form.module.css';
import { RoleChoice } from './role-choice.tsx';

interface PersonFields {
  name: string;
  id: string;
  role: Role | '';
  password: string;
}

const fieldNames = ['name', 'id', 'role', 'password'] as const satisfies readonly (keyof PersonFields)[];
const formName = 'add-person';
const empty: PersonFields = { name: '', id: '', role: '', password: '' };

function recalled(): PersonFields {
  const { name = '', id = '', role } = recallFields(window.sessionStorage, formName, ['name', 'id', 'role']);
  return { name, id, role: roles.find((known) => known === role) ?? '', password: '' };
}

export function AddPersonForm() {
  const text = words.people;
  const queries = useQueryClient();
  const isShownId = useId();
  const [isShown, setShown] = useState(false);
  const [sent, setSent] = useState<{ readonly fields: string; readonly key: string } | null>(null);
  const { register, handleSubmit, formState, reset, setFocus, subscribe } = useForm<PersonFields>({
    defaultValues: recalled(),
  });
  const adding = useMutation({
    mutationFn: ({ idempotencyKey, ...fields }: PersonFields & { readonly idempotencyKey: string }) =>
      post('/api/people', fields, personAnswer, { idempotencyKey }),
    onSuccess: async () => {
      reset(empty);
      forgetFields(window.sessionStorage, formName);
      setFocus('name');
      await forgetAnswers(queries);
    },
    onError: (error) => {
      const wrong = fieldNames.find((name) => problemForField(error, name) !== null);
      if (wrong !== undefined) setFocus(wrong);
    },
  });
  useEffect(
    () =>
      subscribe({
        formState: { values: true },
        callback: ({ values: { name, id, role } }) => keepFields(window.sessionStorage, formName, { name, id, role }),
      }),
    [subscribe],
  );
  const submit = handleSubmit((fields) => {
    const asked = JSON.stringify(fields);
    const idempotencyKey = sent?.fields === asked ? sent.key : newIdempotencyKey();
    setSent({ fields: asked, key: idempotencyKey });
    adding.mutate({ ...fields, idempotencyKey });
  });
  const problemOf = (name: keyof PersonFields) =>
    formState.errors[name]?.message ?? problemForField(adding.error, name);
  const isBesideField = fieldNames.some((name) => problemForField(adding.error, name) !== null);
  return (
    <form className={styles.form} onSubmit={submit} noValidate>
      <TextField
        label={text.name}
        hint={text.nameHint}
        problem={problemOf('name')}
        {...register('name', { validate: (name) => name.trim().length >= 2 || text.nameTooShort })}
      />
      <TextField
        label={text.id}
        hint={text.idHint}
        autoCapitalize="none"
        spellCheck={false}
        problem={problemOf('id')}
        {...register('id', {
          pattern: { value: /^[a-z][a-z0-9.-]{1,39}$/, message: text.idProblem },
          required: text.idProblem,
        })}
      />
      <RoleChoice problem={problemOf('role')} registration={register('role', { required: text.chooseRole })} />
      <div className={styles.password}>
        <TextField
          label={text.password}
          hint={text.passwordHint}
          type={isShown ? 'text' : 'password'}
          autoComplete="new-password"
          autoCapitalize="none"
          spellCheck={false}
          problem={problemOf('password')}
          {...register('password', { validate: (password) => password.length >= 12 || text.passwordTooShort })}
        />
        <label className={styles.show} htmlFor={isShownId}>
          <input
            id={isShownId}
            type="checkbox"
            checked={isShown}
            onChange={(event) => setShown(event.target.checked)}
          />
          {text.showPassword}
        </label>
      </div>
      {adding.isError && !isBesideField ? <ProblemNote error={adding.error} /> : null}
      <Button look="primary" type="submit" disabled={adding.isPending}>
        {adding.isPending ? text.adding : text.add}
      </Button>
      <p className={styles.added} role="status">
        {adding.isSuccess ? text.added(adding.data.name, adding.data.id) : null}
      </p>
    </form>
  );
}
