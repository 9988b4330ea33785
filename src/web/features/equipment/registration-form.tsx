// One form for everything that can be registered; what was typed stays when the server refuses it.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { z } from 'zod';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { Button } from '../../controls/button.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import { judgeField, registrationBody } from './registration-body.ts';
import styles from './registration-form.module.css';
import type { Registration, RegistrationField } from './registration-kinds.ts';

interface RegistrationFormProps {
  readonly registration: Registration;
  readonly onDone: (values: Readonly<Record<string, string>>) => void;
  readonly onClose: () => void;
}

export function RegistrationForm({ registration, onDone, onClose }: RegistrationFormProps) {
  const { equipment } = words;
  const { fields, title, send } = registration;
  const client = useQueryClient();
  const form = useForm<Record<string, string>>({
    defaultValues: Object.fromEntries(fields.map(({ name, start = '' }) => [name, start])),
  });
  const sending = useMutation({
    mutationFn: (values: Record<string, string>) =>
      post(registration.address(values), registrationBody(registration, values), z.unknown()),
    onSuccess: async (_answer, values) => {
      await forgetAnswers(client);
      onDone(values);
    },
  });
  const problemOf = (field: RegistrationField): string | null =>
    form.formState.errors[field.name]?.message ?? problemForField(sending.error, field.name);
  const isShownAtField = fields.some((field) => problemForField(sending.error, field.name) !== null);
  return (
    <form className={styles.form} noValidate onSubmit={form.handleSubmit((values) => sending.mutate(values))}>
      <h2>{title}</h2>
      <div className={styles.fields}>
        {fields.map((field) => {
          const { name, label, hint, isOptional = false, options, type } = field;
          const texts = { label, hint, isOptional, problem: problemOf(field) };
          const registered = form.register(name, {
            validate: (typed) => fieldWords(field, typed),
            onChange: () => sending.reset(),
          });
          if (options !== undefined) return <SelectField key={name} {...texts} {...registered} options={options} />;
          return (
            <TextField
              key={name}
              {...texts}
              {...registered}
              type={type === 'day' ? 'date' : 'text'}
              inputMode={type === 'number' ? 'decimal' : undefined}
            />
          );
        })}
      </div>
      {sending.error !== null && !isShownAtField ? <ProblemNote error={sending.error} /> : null}
      <div className={styles.ways}>
        <Button look="primary" type="submit" disabled={sending.isPending}>
          {sending.isPending ? equipment.sending : send}
        </Button>
        <Button onClick={onClose}>{equipment.close}</Button>
      </div>
    </form>
  );
}

function fieldWords(field: RegistrationField, typed: string): true | string {
  switch (judgeField(field, typed)) {
    case 'missing':
      return words.equipment.required;
    case 'not-a-number':
      return words.equipment.numberBad(typed);
    case null:
      return true;
  }
}
