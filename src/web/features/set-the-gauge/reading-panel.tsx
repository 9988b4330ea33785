// The reading to set, as large as the screen allows.

import type { CSSProperties, Ref } from 'react';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { words } from '../../words/words.ts';
import { byGravity } from './by-gravity.ts';
import styles from './reading-panel.module.css';
import { shownReadingRounding, writeForce } from './rounding.ts';

interface ReadingPanelProps {
  readonly answer: LookupAnswer;
  readonly isReleased: boolean;
  readonly ref?: Ref<HTMLElement>;
}

export function ReadingPanel({ answer, isReleased, ref }: ReadingPanelProps) {
  const text = words.setTheGauge;
  const { readingToSet, force, warnings } = answer;
  if (readingToSet === null) return null;
  const rounding = shownReadingRounding(answer);
  const number = formatNumber(readingToSet.value, rounding);
  const unit = formatUnit(readingToSet.unit);
  const gravest = byGravity(warnings)[0];
  return (
    <section ref={ref} tabIndex={-1} className={styles.panel} data-released={isReleased} aria-label={text.readingToSet}>
      <div className={styles.head}>
        <h2>{isReleased ? text.releasedReading : text.readingToSet}</h2>
        {gravest === undefined || gravest.weight === 'note' ? null : <WarningMark weight={gravest.weight} />}
      </div>
      <p
        className={styles.reading}
        style={{ '--characters': number.length, '--unit-characters': unit.length } as CSSProperties}
      >
        <strong className={styles.number}>{number}</strong> <span className={styles.unit}>{unit}</span>
      </p>
      {force === null ? null : (
        <p className={styles.force}>{text.forForce(writeForce(force), answer.pair?.strandsPulled ?? 1)}</p>
      )}
    </section>
  );
}
