// Choosing files for an entry: each is sent at once and kept by the form as its hash and name.

import { useMutation } from '@tanstack/react-query';
import { useId } from 'react';
import { keptFileAnswer } from '../../../contract/traceability.ts';
import { attachedFileTypes } from '../../../domain/equipment/traceability.ts';
import { postFile } from '../../app/http-client.ts';
import { Button } from '../../controls/button.tsx';
import { FieldFrame, fieldAttributes } from '../../controls/field-frame.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './file-links.module.css';
import { type NamedFile, readNamedFiles } from './registration-body.ts';

interface FileFieldProps {
  readonly label: string;
  readonly hint: string | undefined;
  readonly problem: string | null;
  /** The files chosen so far, as JSON. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function FileField({ label, hint, problem, value, onChange }: FileFieldProps) {
  const text = words.traceability;
  const id = useId();
  const chosen = readNamedFiles(value);
  const keeping = useMutation({
    mutationFn: async (files: readonly File[]) => {
      const kept: NamedFile[] = [];
      for (const file of files) {
        const { sha256 } = await postFile('/api/files', file, keptFileAnswer);
        kept.push({ sha256, name: file.name });
      }
      return kept;
    },
    onSuccess: (kept) => onChange(JSON.stringify([...chosen, ...kept])),
  });
  const texts = { label, isOptional: true, problem, ...(hint === undefined ? {} : { hint }) };
  return (
    <div>
      <FieldFrame id={id} texts={texts}>
        <input
          type="file"
          multiple
          accept={attachedFileTypes.join(',')}
          {...fieldAttributes(id, texts)}
          onChange={(event) => {
            keeping.mutate([...(event.target.files ?? [])]);
            event.target.value = '';
          }}
        />
      </FieldFrame>
      {keeping.isPending ? <p role="status">{text.keeping}</p> : null}
      {keeping.isError ? <ProblemNote error={keeping.error} /> : null}
      <ul className={styles.files}>
        {chosen.map(({ sha256, name }) => (
          <li key={sha256}>
            {name}{' '}
            <Button
              aria-label={text.removeFile(name)}
              onClick={() => onChange(JSON.stringify(chosen.filter((file) => file.sha256 !== sha256)))}
            >
              ×
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
