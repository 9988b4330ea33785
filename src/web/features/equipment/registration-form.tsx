// One form for everything that can be registered; what was typed stays when the server refuses it.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { type Control, Controller, useForm, useWatch } from 'react-hook-form';
import { z } from 'zod';
import { ProblemError, post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { Button } from '../../controls/button.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import type { FieldCheck } from './field-checks.ts';
import { FileField } from './file-field.tsx';
import { forgetRegistration, keepRegistration, recallRegistration, startOf } from './kept-registration.ts';
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
  const {
    kind,
    kept,
    fields,
    title,
    lead,
    look = 'primary',
    send,
    bodyOf,
    placeOf = (name: string) => name,
  } = registration;
  const client = useQueryClient();
  const [started] = useState(() => ({ ...startOf(registration), ...recallRegistration(registration) }));
  const form = useForm<Record<string, string>>({ defaultValues: started });
  const { subscribe } = form;
  useEffect(
    () =>
      subscribe({
        formState: { values: true },
        callback: ({ values }) => keepRegistration({ kind, kept }, values),
      }),
    [subscribe, kind, kept],
  );
  const sending = useMutation({
    mutationFn: (values: Record<string, string>) => {
      const body = registrationBody(registration, values);
      return post(registration.address(values), bodyOf?.(body) ?? body, z.unknown());
    },
    onSuccess: async (_answer, values) => {
      forgetRegistration(registration);
      await forgetAnswers(client);
      onDone(values);
    },
    // What somebody else wrote meanwhile is shown; what was typed stays.
    onError: (error) => {
      if (error instanceof ProblemError && error.problem.code === 'ledger-conflict') void forgetAnswers(client);
    },
  });
  const problemOf = (field: RegistrationField): string | null =>
    form.formState.errors[field.name]?.message ?? problemForField(sending.error, placeOf(field.name));
  const isShownAtField = fields.some((field) => problemForField(sending.error, placeOf(field.name)) !== null);
  return (
    <form className={styles.form} noValidate onSubmit={form.handleSubmit((values) => sending.mutate(values))}>
      <h2>{title}</h2>
      {lead === undefined ? null : <p className={styles.lead}>{lead}</p>}
      <div className={styles.fields}>
        {fields.map((field) => {
          const { name, label, hint, isOptional = false, options, type, caution } = field;
          const texts = { label, hint, isOptional, problem: problemOf(field) };
          if (type === 'files') {
            return (
              <Controller
                key={name}
                control={form.control}
                name={name}
                render={({ field: { value, onChange } }) => (
                  <FileField
                    label={label}
                    hint={hint}
                    problem={texts.problem}
                    value={value ?? ''}
                    onChange={onChange}
                  />
                )}
              />
            );
          }
          const registered = form.register(name, {
            validate: (typed) => judgeField(field, typed) ?? true,
            onChange: () => sending.reset(),
          });
          if (options !== undefined) return <SelectField key={name} {...texts} {...registered} options={options} />;
          return (
            <div key={name} className={styles.field}>
              <TextField
                {...texts}
                {...registered}
                type={type === 'day' ? 'date' : 'text'}
                inputMode={type === 'number' ? 'decimal' : undefined}
              />
              {caution === undefined ? null : <Caution control={form.control} name={name} caution={caution} />}
            </div>
          );
        })}
      </div>
      {sending.error !== null && !isShownAtField ? <ProblemNote error={sending.error} /> : null}
      <div className={styles.ways}>
        <Button look={look} type="submit" disabled={sending.isPending}>
          {sending.isPending ? equipment.sending : send}
        </Button>
        <Button onClick={onClose}>{equipment.close}</Button>
      </div>
    </form>
  );
}

interface CautionProps {
  readonly control: Control<Record<string, string>>;
  readonly name: string;
  readonly caution: FieldCheck;
}

/** Stands there from the start, so that a screen reader hears what appears in it. */
function Caution({ control, name, caution }: CautionProps) {
  const typed = useWatch({ control, name }) ?? '';
  return (
    <p className={styles.caution} role="status">
      {caution(typed)}
    </p>
  );
}
