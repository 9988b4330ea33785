// The two other readings of a pull: the preload before it, and the one never to pass.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import { words } from '../../words/words.ts';
import styles from './other-readings.module.css';
import { shownReadingRounding, writeForce } from './rounding.ts';

const isKnownReason = (because: string): because is keyof typeof words.setTheGauge.doNotExceedBecause =>
  Object.hasOwn(words.setTheGauge.doNotExceedBecause, because);

const reasonText = (because: string): string =>
  isKnownReason(because) ? words.setTheGauge.doNotExceedBecause[because] : because;

export function OtherReadings({ answer }: { readonly answer: LookupAnswer }) {
  const text = words.setTheGauge;
  const { preload, doNotExceed } = answer;
  const because = doNotExceed === null ? null : reasonText(doNotExceed.because);
  const isUnchecked = answer.warnings.some(({ code }) => code === 'ceiling-not-checked');
  const rounding = shownReadingRounding(answer);
  return (
    <div className={styles.readings}>
      {preload === null ? (
        <Figure label={text.preload} value={text.noPreload} size="large" note={text.noPreloadWhy} />
      ) : (
        <Figure
          label={text.preload}
          value={formatNumber(preload.readingToSet.value, rounding)}
          unit={formatUnit(preload.readingToSet.unit)}
          size="large"
          note={text.preloadForce(writeForce(preload.force))}
        />
      )}
      {doNotExceed === null || because === null ? null : (
        <Figure
          label={text.doNotExceed}
          value={formatNumber(doNotExceed.reading.value, rounding)}
          unit={formatUnit(doNotExceed.reading.unit)}
          size="large"
          note={isUnchecked ? text.ceilingNotChecked(because) : because}
        />
      )}
    </div>
  );
}
