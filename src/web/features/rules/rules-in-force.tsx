// Which rules are in force, since when, set by whom and why.

import type { RulesAnswer } from '../../../contract/rules.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { WholeDates } from '../../controls/whole-dates.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './rules-in-force.module.css';
import { writeDigits } from './write-limit.ts';

export function RulesInForce({ rules }: { readonly rules: RulesAnswer }) {
  const text = words.rules;
  const nameOf = usePersonName();
  const timeZone = usePlant().data?.timeZone;
  const { entry, since, by, reason, rulesHash } = rules;
  return (
    <section className={styles.inForce} aria-labelledby="rules-in-force">
      <h2 id="rules-in-force" className={styles.label}>
        {text.inForceTitle}
      </h2>
      <p className={styles.title}>{rules.inForce.title}</p>
      {entry === null || since === null || by === null ? (
        <p>{text.neverSet}</p>
      ) : (
        <>
          <p>
            <WholeDates text={text.setBy(nameOf(by), writeMinute(since, timeZone), writeDigits(entry))} />
          </p>
          <p>{text.reasonWas(reason ?? '')}</p>
          <p className={styles.hash}>
            {text.hash}: <code>{rulesHash}</code>
          </p>
        </>
      )}
    </section>
  );
}
