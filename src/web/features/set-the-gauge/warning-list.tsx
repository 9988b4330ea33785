// The warnings of a look-up, gravest first, each with its weight as shape and word, and what to do where that helps.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { WholeDates } from '../../controls/whole-dates.tsx';
import { inLanguage } from '../../words/sentence.ts';
import { words } from '../../words/words.ts';
import { byGravity } from './by-gravity.ts';
import styles from './warning-list.module.css';
import { adviceFor } from './what-to-do.tsx';

export function WarningList({ warnings }: { readonly warnings: LookupAnswer['warnings'] }) {
  if (warnings.length === 0) return null;
  return (
    <section>
      <h2 className={styles.title}>{words.setTheGauge.warnings}</h2>
      <ul className={styles.list}>
        {byGravity(warnings).map((warning) => (
          <li key={`${warning.code} ${warning.message}`} className={styles.warning} data-weight={warning.weight}>
            <WarningMark weight={warning.weight} />
            <span>
              <WholeDates text={[inLanguage(warning.message), adviceFor(warning.code)].filter(Boolean).join(' ')} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
