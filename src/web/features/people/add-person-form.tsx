// The form that adds a person. What was typed stays until it is written; the password is kept nowhere.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useId, useState } from 'react';
import { useForm } from 'react-hook-form';
import { invitationAnswer } from '../../../contract/people.ts';
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
import { InvitationShown } from './invitation-shown.tsx';
import { RoleChoice } from './role-choice.tsx';

interface PersonFields {
  name: string;
  id: string;
  role: Role | '';
  way: 'invitation' | 'password';
  password: string;
}

const fieldNames = ['name', 'id', 'role', 'password'] as const satisfies readonly (keyof PersonFields)[];
const formName = 'add-person';
const empty: PersonFields = { name: '', id: '', role: '', way: 'invitation', password: '' };

function recalled(): PersonFields {
  const { name = '', id = '', role } = recallFields(window.sessionStorage, formName, ['name', 'id', 'role']);
  return { ...empty, name, id, role: roles.find((known) => known === role) ?? '' };
}

export function AddPersonForm() {
  const text = words.people;
  const queries = useQueryClient();
  const isShownId = useId();
  const [isShown, setShown] = useState(false);
  const [sent, setSent] = useState<{ readonly fields: string; readonly key: string } | null>(null);
  const { register, handleSubmit, formState, reset, setFocus, subscribe, watch } = useForm<PersonFields>({
    defaultValues: recalled(),
  });
  const adding = useMutation({
    mutationFn: async ({ idempotencyKey, way, password, ...person }: PersonFields & { idempotencyKey: string }) =>
      way === 'invitation'
        ? post('/api/invitations', person, invitationAnswer)
        : { person: await post('/api/people', { ...person, password }, personAnswer, { idempotencyKey }) },
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
  const isInvited = watch('way') === 'invitation';
  const added = adding.data;
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
      <fieldset className={styles.way}>
        <legend>{text.wayIn}</legend>
        <label>
          <input type="radio" value="invitation" {...register('way')} />
          {text.byInvitation}
        </label>
        <label>
          <input type="radio" value="password" {...register('way')} />
          {text.byPassword}
        </label>
      </fieldset>
      {isInvited ? null : (
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
      )}
      {adding.isError && !isBesideField ? <ProblemNote error={adding.error} /> : null}
      <Button look="primary" type="submit" disabled={adding.isPending}>
        {adding.isPending ? text.adding : isInvited ? text.invite : text.add}
      </Button>
      <p className={styles.added} role="status">
        {added === undefined || 'code' in added ? null : text.added(added.person.name, added.person.id)}
      </p>
      {added !== undefined && 'code' in added ? <InvitationShown invitation={added} /> : null}
    </form>
  );
}
