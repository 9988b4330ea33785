// The two parts of a pair in large letters, its gauge face, when it was formed and when it falls due.

import { Link } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { formatQuantity } from '../../controls/format-number.ts';
import { writeMinute } from '../../controls/write-minute.ts';
import { Dial } from '../../dial/dial.tsx';
import { words } from '../../words/desk-words.ts';
import { faceOfPair } from './face-of-pair.ts';
import styles from './pair-facts.module.css';

const asTyped = { rule: 'as-typed' } as const;

export function PairFacts({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const { jack, gauge, line, formedOn, hose, parted, hold } = page;
  const nameOf = usePersonName();
  const plant = usePlant();
  return (
    <section className={styles.facts} aria-label={equipment.facts}>
      <div className={styles.words}>
        <dl>
          <div>
            <dt>{equipment.jack}</dt>
            <dd className={styles.tag}>
              <Link href={`/part/${encodeURIComponent(jack.tag)}`}>{jack.tag}</Link>
            </dd>
            <dd>
              {equipment.jackOf(
                jack.serial,
                formatQuantity(jack.ratedForce, asTyped),
                formatQuantity(jack.pistonArea, asTyped),
              )}
              , {equipment.strands(jack.strandsPulled)}
            </dd>
          </div>
          <div>
            <dt>{equipment.gauge}</dt>
            <dd className={styles.tag}>
              <Link href={`/part/${encodeURIComponent(gauge.tag)}`}>{gauge.tag}</Link>
            </dd>
            <dd>
              {equipment.gaugeOf(
                gauge.serial,
                formatQuantity(gauge.fullScale, asTyped),
                formatQuantity(gauge.graduation, asTyped),
              )}
            </dd>
          </div>
          <div>
            <dt>{equipment.dueDate}</dt>
            <dd className={styles.tag}>{line.dueDate ?? equipment.noDueDate}</dd>
            {line.daysLeft === null ? null : <dd>{equipment.daysLeft(line.daysLeft)}</dd>}
          </div>
          <div>
            <dt>{equipment.formed}</dt>
            <dd>{formedOn}</dd>
          </div>
          {line.pump === null ? null : (
            <div>
              <dt>{equipment.pump}</dt>
              <dd>{line.pump}</dd>
            </div>
          )}
          {hose === null ? null : (
            <div>
              <dt>{equipment.hose}</dt>
              <dd>{hose}</dd>
            </div>
          )}
        </dl>
        {parted === null ? null : <p className={styles.stopped}>{equipment.partedOn(parted.on, parted.reason)}</p>}
        {hold === null ? null : (
          <p className={styles.stopped}>
            {equipment.heldBy(nameOf(hold.placedBy), writeMinute(hold.placedAt, plant.data?.timeZone), hold.reason)}
          </p>
        )}
      </div>
      <div className={styles.face}>
        <Dial face={faceOfPair(page)} />
      </div>
    </section>
  );
}
