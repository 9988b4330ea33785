// Opening a new ledger: the code from the terminal, the plant, its first administrator. The sample plant is open already.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { useLocation } from 'wouter';
import { personAnswer } from '../../../contract/plant.ts';
import { post } from '../../app/http-client.ts';
import { plantKey, usePlant } from '../../app/queries/use-plant.ts';
import { signInAddressFor } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './open-plant-page.module.css';

interface OpeningFields {
  code: string;
  plantName: string;
  timeZone: string;
  name: string;
  id: string;
  password: string;
}

/** The name of each field in the body that is sent, which is where a problem points to. */
const sentAs: Readonly<Record<keyof OpeningFields, string>> = {
  code: 'code',
  plantName: 'plantName',
  timeZone: 'timeZone',
  name: 'administrator.name',
  id: 'administrator.id',
  password: 'administrator.password',
};

const fieldNames = Object.keys(sentAs) as (keyof OpeningFields)[];

const timeZones = [...new Set(['UTC', ...Intl.supportedValuesOf('timeZone')])];

export function OpenPlantPage() {
  const text = words.openPlant;
  const plant = usePlant();
  if (plant.isPending) return <WaitingNote />;
  if (plant.data?.opened) {
    return (
      <>
        <PageHeading title={text.alreadyOpenTitle} lead={text.alreadyOpen(plant.data.name)} />
        <ButtonLink href="/" look="primary">
          {words.app.setTheGauge}
        </ButtonLink>
      </>
    );
  }
  return <OpeningForm />;
}

function OpeningForm() {
  const text = words.openPlant;
  const [, navigate] = useLocation();
  const queries = useQueryClient();
  const { register, handleSubmit, formState, setFocus } = useForm<OpeningFields>({
    defaultValues: { timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone },
  });
  const opening = useMutation({
    mutationFn: ({ code, plantName, timeZone, ...administrator }: OpeningFields) =>
      post('/api/opening', { code, plantName, timeZone, administrator }, personAnswer),
    onSuccess: (administrator) => {
      navigate(signInAddressFor(administrator.id, '/people'), { replace: true });
      return queries.invalidateQueries({ queryKey: plantKey });
    },
    onError: (error) => {
      const wrong = fieldNames.find((name) => problemForField(error, sentAs[name]) !== null);
      if (wrong !== undefined) setFocus(wrong);
    },
  });
  const field = (name: keyof OpeningFields) => ({
    problem: formState.errors[name]?.message ?? problemForField(opening.error, sentAs[name]),
    ...register(name, { required: text.fillIn }),
  });
  const isBesideField = Object.values(sentAs).some((where) => problemForField(opening.error, where) !== null);
  return (
    <>
      <PageHeading title={text.title} lead={text.lead} />
      <form className={styles.form} noValidate onSubmit={handleSubmit((fields) => opening.mutate(fields))}>
        <TextField label={text.code} {...field('code')} />
        <TextField label={text.plantName} {...field('plantName')} />
        <SelectField
          label={text.timeZone}
          hint={text.timeZoneHint}
          options={timeZones.map((zone) => ({ value: zone, text: zone }))}
          {...field('timeZone')}
        />
        <TextField label={text.name} hint={text.nameHint} autoComplete="name" {...field('name')} />
        <TextField label={text.id} hint={text.idHint} autoComplete="username" {...field('id')} />
        <TextField
          label={text.password}
          hint={text.passwordHint}
          type="password"
          autoComplete="new-password"
          {...field('password')}
        />
        {opening.isError && !isBesideField ? <ProblemNote error={opening.error} /> : null}
        <Button look="primary" type="submit" disabled={opening.isPending}>
          {opening.isPending ? text.opening : text.button}
        </Button>
      </form>
    </>
  );
}
