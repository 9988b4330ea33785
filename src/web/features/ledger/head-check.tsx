// The head of the ledger as it goes on paper, and whether the ledger holds the entry that the head on a paper names.

import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { heldEntryAnswer } from '../../../contract/ledger.ts';
import { get } from '../../app/http-client.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { Button } from '../../controls/button.tsx';
import { problemForField } from '../../controls/problem-for-field.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './verification.module.css';

export function HeadCheck({ shortHead }: { readonly shortHead: string | undefined }) {
  const { ledger } = words;
  const timeZone = usePlant().data?.timeZone;
  const [typed, setTyped] = useState('');
  const checking = useMutation({
    mutationFn: (head: string) => get(`/api/ledger/heads/${encodeURIComponent(head)}`, heldEntryAnswer),
  });
  const atField = problemForField(checking.error, 'head');
  const check = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() !== '') checking.mutate(typed.trim());
  };
  return (
    <div className={styles.head}>
      {shortHead === undefined ? null : (
        <div>
          <p className={styles.label}>{ledger.headLabel}</p>
          <p className={styles.short}>{shortHead}</p>
          <p className={styles.hint}>{ledger.headHint}</p>
        </div>
      )}
      <form className={styles.check} noValidate onSubmit={check}>
        <TextField
          label={ledger.checkHead}
          hint={ledger.checkHeadHint}
          autoCapitalize="none"
          spellCheck={false}
          value={typed}
          problem={atField}
          onChange={(event) => {
            setTyped(event.currentTarget.value);
            checking.reset();
          }}
        />
        <Button type="submit" disabled={checking.isPending}>
          {ledger.check}
        </Button>
      </form>
      <div aria-live="polite">
        {checking.isError && atField === null ? <ProblemNote error={checking.error} /> : null}
        {checking.data === undefined ? null : (
          <p className={styles.result} data-verified="true">
            {ledger.headFound(String(checking.data.seq), writeMinute(checking.data.at, timeZone))}
          </p>
        )}
      </div>
    </div>
  );
}
