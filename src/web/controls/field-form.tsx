// A short form of single-line fields that sends once: codes, passwords, names. Nothing typed here is kept on the device.

import { useMutation } from '@tanstack/react-query';
import type { ComponentProps } from 'react';
import { type DefaultValues, type FieldValues, type Path, useForm } from 'react-hook-form';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import styles from './field-form.module.css';
import { problemForField } from './problem-for-field.ts';
import { ProblemNote } from './problem-note.tsx';
import { TextField } from './text-field.tsx';

/** One field; `name` is also where a problem of the server points to. */
export interface FormField<Fields extends FieldValues>
  extends Pick<ComponentProps<'input'>, 'type' | 'autoComplete' | 'inputMode'> {
  readonly name: Path<Fields>;
  readonly label: string;
  readonly hint?: string;
  /** Answers what is wrong with what was typed; null where it will do. */
  readonly check?: (typed: string) => string | null;
}

interface FieldFormProps<Fields extends FieldValues, Answer> {
  readonly fields: readonly FormField<Fields>[];
  readonly initial?: DefaultValues<Fields>;
  readonly button: string;
  readonly look?: ComponentProps<typeof Button>['look'];
  readonly send: (typed: Fields) => Promise<Answer>;
  readonly onDone: (answer: Answer) => void;
}

export function FieldForm<Fields extends FieldValues, Answer>(props: FieldFormProps<Fields, Answer>) {
  const { fields, initial, button, look = 'primary', send, onDone } = props;
  const form = useForm<Fields>(initial === undefined ? {} : { defaultValues: initial });
  const { register, handleSubmit, formState, reset, setFocus } = form;
  const sending = useMutation({
    mutationFn: (typed: Fields) => send(typed),
    onSuccess: (answer) => {
      reset(initial);
      onDone(answer);
    },
    onError: (error) => {
      const wrong = fields.find(({ name }) => problemForField(error, name) !== null);
      if (wrong !== undefined) setFocus(wrong.name);
    },
  });
  const isBesideField = fields.some(({ name }) => problemForField(sending.error, name) !== null);
  const problemOf = (name: Path<Fields>): string | null => {
    const found = formState.errors[name]?.message;
    return typeof found === 'string' ? found : problemForField(sending.error, name);
  };
  return (
    <form className={styles.form} noValidate onSubmit={handleSubmit((typed) => sending.mutate(typed))}>
      {fields.map(({ name, label, hint, check, ...input }) => (
        <TextField
          key={name}
          label={label}
          {...(hint === undefined ? {} : { hint })}
          autoCapitalize="none"
          spellCheck={false}
          {...input}
          problem={problemOf(name)}
          {...register(name, {
            validate: (typed: string) => ((typed ?? '').trim() === '' ? words.app.fillIn : (check?.(typed) ?? true)),
          })}
        />
      ))}
      {sending.isError && !isBesideField ? <ProblemNote error={sending.error} /> : null}
      <Button look={look} type="submit" disabled={sending.isPending}>
        {sending.isPending ? words.app.sending : button}
      </Button>
    </form>
  );
}
