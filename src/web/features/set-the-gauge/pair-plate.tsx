// The chosen pair as the two tags in front of the crew, large enough to notice that one of them is another.

import type { CSSProperties, Ref } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { Button } from '../../controls/button.tsx';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { WholeDates } from '../../controls/whole-dates.tsx';
import { words } from '../../words/words.ts';
import styles from './plate.module.css';

interface PairPlateProps {
  readonly line: PairLine | null;
  /** By the jack of this pair; 1 while that is not known. */
  readonly strandsPulled: number;
  /** The tag chosen or remembered, also when there is no such pair. */
  readonly wanted: string | null;
  readonly isPending: boolean;
  readonly isEmpty: boolean;
  /** The key that opens the choice, to give the focus back to. */
  readonly keyRef: Ref<HTMLButtonElement>;
  readonly onChange: () => void;
}

export function PairPlate({ line, strandsPulled, wanted, isPending, isEmpty, keyRef, onChange }: PairPlateProps) {
  const text = words.setTheGauge;
  if (isPending) return <WaitingNote />;
  if (isEmpty) return <p className={styles.ask}>{text.noPairs}</p>;
  if (line === null) {
    return (
      <section className={styles.plate} aria-label={text.pair}>
        <p className={styles.ask}>{wanted === null ? text.noPairChosen : text.unknownPair(wanted)}</p>
        <Button ref={keyRef} look="primary" forGloves onClick={onChange}>
          {text.choosePair}
        </Button>
      </section>
    );
  }
  const longest = Math.max(line.jack.length, line.gauge.length);
  return (
    <button ref={keyRef} type="button" className={styles.key} onClick={onChange}>
      <span className={styles.tags} style={{ '--characters': longest } as CSSProperties}>
        <Tag name={text.jack} tag={line.jack} />
        <span className={styles.joint} aria-hidden="true" />
        <Tag name={text.gauge} tag={line.gauge} />
      </span>
      <span className={styles.below}>
        <StandingMark standing={line.standing} size="large" /> <span className={styles.change}>{text.changePair} </span>
      </span>
      <span className={styles.small}>
        <WholeDates
          text={[
            strandsPulled > 1 ? text.pairOfSeveral(line.tag, strandsPulled) : text.pairOfOne(line.tag),
            validity(line),
            text.compareTags,
          ]
            .filter(Boolean)
            .join(' ')}
        />
      </span>
    </button>
  );
}

function validity({ dueDate, standing }: PairLine): string | null {
  // The day says nothing while the calibration itself is in doubt.
  if (dueDate === null || standing === 'in-doubt') return null;
  const text = words.setTheGauge;
  return standing === 'overdue' ? text.wasValidUntil(dueDate) : text.validUntil(dueDate);
}

function Tag({ name, tag }: { readonly name: string; readonly tag: string }) {
  return (
    <span className={styles.tagged}>
      <span className={styles.small}>{name} </span>
      <strong className={styles.tag}>{tag} </strong>
    </span>
  );
}
