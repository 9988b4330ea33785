// Recording an interim check: the load cell, and force and reading of a few levels. What was typed is kept until it was sent.

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { checkListAnswer } from '../../../contract/check.ts';
import { post } from '../../app/http-client.ts';
import { forgetAnswers } from '../../app/queries/forget-answers.ts';
import { useEquipment } from '../../app/queries/use-equipment.ts';
import { Button } from '../../controls/button.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './check-form.module.css';

/** A check at more levels is better entered as a calibration. House rule. */
const rows = [1, 2, 3, 4, 5] as const;

const fields: readonly string[] = [
  'on',
  'loadCell',
  'note',
  ...rows.flatMap((row) => [`force${row}`, `reading${row}`]),
];

export function CheckForm({ page, onClose }: { readonly page: PairPageAnswer; readonly onClose: () => void }) {
  const { checks: text } = words;
  const { tag, forceUnit, readingUnit } = page.line;
  const kept = `check of ${tag}`;
  const equipment = useEquipment();
  const client = useQueryClient();
  const [values, setValues] = useState<Readonly<Record<string, string>>>(() => ({
    on: page.asOf,
    ...recallFields(window.sessionStorage, kept, fields),
  }));
  const [isShort, setShort] = useState(false);
  const typedIn = (field: string): string => values[field] ?? '';
  const set = (field: string) => (event: { readonly target: { readonly value: string } }) => {
    const next = { ...values, [field]: event.target.value };
    setValues(next);
    setShort(false);
    keepFields(window.sessionStorage, kept, next);
  };
  const sending = useMutation({
    mutationFn: (levels: readonly unknown[]) =>
      post(
        `/api/pairs/${encodeURIComponent(tag)}/checks`,
        { on: typedIn('on').trim(), loadCell: typedIn('loadCell'), levels, note: typedIn('note').trim() },
        checkListAnswer,
      ),
    onSuccess: async () => {
      forgetFields(window.sessionStorage, kept);
      onClose();
      await forgetAnswers(client);
    },
  });
  const withUnit = (typed: string, unit: string): string => (/[a-z]/i.test(typed) ? typed : `${typed} ${unit}`);
  const send = () => {
    const levels = rows
      .map((row) => [typedIn(`force${row}`).trim(), typedIn(`reading${row}`).trim()] as const)
      .filter(([force, reading]) => force !== '' && reading !== '')
      .map(([force, reading]) => [{ force: withUnit(force, forceUnit), reading: withUnit(reading, readingUnit) }]);
    if (levels.length === 0 || typedIn('loadCell') === '') setShort(true);
    else sending.mutate(levels);
  };
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <p>{text.lead}</p>
      <div className={styles.two}>
        <TextField label={text.on} value={typedIn('on')} onChange={set('on')} />
        <SelectField
          label={text.loadCell}
          value={typedIn('loadCell')}
          options={[
            { value: '', text: text.chooseLoadCell },
            ...(equipment.data?.loadCells ?? []).map((cell) => ({ value: cell.tag, text: cell.tag })),
          ]}
          onChange={set('loadCell')}
        />
      </div>
      <p>{text.hint}</p>
      {rows.map((row) => (
        <div key={row} className={styles.two}>
          <TextField
            label={text.force(row, forceUnit)}
            inputMode="decimal"
            value={typedIn(`force${row}`)}
            onChange={set(`force${row}`)}
          />
          <TextField
            label={text.reading(row, readingUnit)}
            inputMode="decimal"
            value={typedIn(`reading${row}`)}
            onChange={set(`reading${row}`)}
          />
        </div>
      ))}
      <TextField label={text.note} isOptional maxLength={500} value={typedIn('note')} onChange={set('note')} />
      {isShort ? <p role="alert">{text.fewer}</p> : null}
      {sending.isError ? <ProblemNote error={sending.error} /> : null}
      <div className={styles.ways}>
        <Button look="primary" type="submit" disabled={sending.isPending}>
          {sending.isPending ? text.sending : text.send}
        </Button>
        <Button onClick={onClose}>{text.cancel}</Button>
      </div>
    </form>
  );
}
