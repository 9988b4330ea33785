// The answer for one pair and one target: the number, a refusal, a stop, or that nobody answered. Never an old number.

import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { Dial } from '../../dial/dial.tsx';
import { words } from '../../words/words.ts';
import { BasisList } from './basis-list.tsx';
import type { Target } from './choice.ts';
import { faceOfAnswer } from './face-of-answer.ts';
import { HowSure } from './how-sure.tsx';
import styles from './lookup-part.module.css';
import { NoReading } from './no-reading.tsx';
import { OtherReadings } from './other-readings.tsx';
import { ReadingPanel } from './reading-panel.tsx';
import { RefusedPanel } from './refused-panel.tsx';
import { useLookup } from './use-lookup.ts';
import { WarningList } from './warning-list.tsx';
import { WithheldPanel } from './withheld-panel.tsx';

interface LookupPartProps {
  readonly line: PairLine;
  readonly choice: { readonly pair: string; readonly target: Target };
  /** What stands under the face on a wide screen, at the end on a telephone. */
  readonly children: ReactNode;
}

export function LookupPart({ line, choice, children }: LookupPartProps) {
  const lookup = useLookup(choice.pair, choice.target);
  const [released, setReleased] = useState<LookupAnswer | null>(null);
  const panel = useRef<HTMLElement>(null);
  // The form that was sent is gone; the number it asked for takes the focus.
  useEffect(() => {
    if (released !== null) panel.current?.focus();
  }, [released]);
  if (lookup.isPending) return <WaitingNote text={words.setTheGauge.checking} />;
  const latest = lookup.data;
  // Without an answer no number stands here. Of an earlier answer the release form alone stays, for somebody types in it.
  if (lookup.isError && (released !== null || latest?.outcome !== 'withheld')) {
    return (
      <>
        <NoReading error={lookup.error} onRetry={() => lookup.refetch()} />
        {children}
      </>
    );
  }
  if (latest === undefined) return null;
  const answer = !lookup.isError && standsStill(released, latest) ? released : latest;
  const isGiven = answer.outcome === 'given';
  const face = lookup.isError ? null : faceOfAnswer(answer);
  return (
    <div className={styles.answer}>
      <div className={styles.number} aria-live="polite">
        {lookup.isError ? <NoReading error={lookup.error} onRetry={() => lookup.refetch()} /> : null}
        {isGiven ? (
          <div className={styles.readings}>
            <ReadingPanel ref={panel} answer={answer} isReleased={answer === released} />
            <OtherReadings answer={answer} />
          </div>
        ) : null}
        {answer.outcome === 'refused' ? <RefusedPanel answer={answer} /> : null}
        {answer.outcome === 'withheld' ? (
          <WithheldPanel answer={answer} choice={choice} onReleased={setReleased} />
        ) : null}
        <WarningList
          warnings={answer.warnings.filter(({ weight }) => isGiven || weight === 'caution' || weight === 'note')}
        />
      </div>
      {face === null ? null : (
        <div className={styles.dial}>
          <Dial face={face} />
        </div>
      )}
      {lookup.isError ? null : (
        <div className={styles.rest}>
          {isGiven ? <HowSure answer={answer} /> : null}
          <BasisList answer={answer} line={line} askedAt={lookup.dataUpdatedAt} />
        </div>
      )}
      <div className={styles.after}>{children}</div>
    </div>
  );
}

/** A release holds as long as the pair is still stopped, on the same calibration and the same day as when it was given. */
function standsStill(released: LookupAnswer | null, latest: LookupAnswer): released is LookupAnswer {
  return (
    released !== null &&
    latest.outcome === 'withheld' &&
    latest.standing === released.standing &&
    latest.calibration?.number === released.calibration?.number &&
    latest.asOf.slice(0, 10) === released.asOf.slice(0, 10)
  );
}
