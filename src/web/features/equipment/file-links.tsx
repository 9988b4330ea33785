// Files kept with an entry, to be saved; none of them is shown as a page here.

import type { AttachedFile } from '../../../domain/equipment/traceability.ts';
import { words } from '../../words/desk-words.ts';
import styles from './file-links.module.css';

export function FileLinks({ files }: { readonly files: readonly AttachedFile[] | undefined }) {
  if (files === undefined || files.length === 0) return null;
  return (
    <ul className={styles.files}>
      {files.map(({ sha256, name, bytes }) => (
        <li key={`${sha256} ${name}`}>
          <a href={`/api/files/${sha256}`} download={name}>
            {words.traceability.file(name, String(Math.max(1, Math.round(bytes / 1000))))}
          </a>
        </li>
      ))}
    </ul>
  );
}
