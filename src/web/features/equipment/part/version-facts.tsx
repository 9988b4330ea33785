// What is registered, field by field, every earlier value struck through before the one that stands, and each correction
// with who made it, when and why.

import type { PartPageAnswer } from '../../../../contract/part-page.ts';
import { usePersonName } from '../../../app/queries/use-person-name.ts';
import { usePlant } from '../../../app/queries/use-plant.ts';
import { writeMinute } from '../../../controls/write-minute.ts';
import { words } from '../../../words/desk-words.ts';
import type { RegistrationField } from '../registration-kinds.ts';
import styles from './part-page.module.css';
import { shownText } from './part-texts.ts';

/** One version of a part or a certificate. */
export interface Version extends Omit<PartPageAnswer['versions'][number], 'part'> {
  readonly thing: Readonly<Record<string, unknown>>;
}

interface VersionFactsProps {
  readonly fields: readonly RegistrationField[];
  /** Oldest first. */
  readonly versions: readonly Version[];
}

export function VersionFacts({ fields, versions }: VersionFactsProps) {
  const { part } = words;
  const nameOf = usePersonName();
  const plant = usePlant();
  const corrections = versions.filter(({ reason }) => reason !== null);
  return (
    <>
      <dl className={styles.facts}>
        {fields.map((field) => (
          <Fact key={field.name} label={field.label} values={versions.map(({ thing }) => shownText(field, thing))} />
        ))}
      </dl>
      {corrections.length === 0 ? null : (
        <div className={styles.corrections}>
          <h3>{part.correctionsTitle}</h3>
          <ul>
            {corrections.map(({ entry, by, at, reason }) => (
              <li key={entry}>
                {part.correction(entry, nameOf(by), writeMinute(at, plant.data?.timeZone), reason ?? '')}
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

/** A field that never had a value is left out. */
function Fact({ label, values }: { readonly label: string; readonly values: readonly string[] }) {
  const { part } = words;
  const distinct = values.filter((value, index) => index === 0 || value !== values[index - 1]);
  const before = distinct.slice(0, -1);
  const now = distinct.at(-1) ?? '';
  if (before.length === 0 && now === '') return null;
  return (
    <div>
      <dt>{label}</dt>
      <dd>
        {before.map((value, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a value that stood before has no other name than its place
          <span key={index}>
            <span className="for-screen-readers">{part.was} </span>
            <del>{value === '' ? part.none : value}</del>{' '}
          </span>
        ))}
        {before.length === 0 ? now : <ins>{now === '' ? part.none : now}</ins>}
      </dd>
    </div>
  );
}
