// The answer for one pair and one target, computed on the device: the number, a refusal or a stop.

import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { Dial } from '../../dial/dial.tsx';
import { lookUpOnDevice } from '../../offline/answer-on-device.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { BasisList } from './basis-list.tsx';
import { type Target, targetFields } from './choice.ts';
import { DeviceNote } from './device-note.tsx';
import { faceOfAnswer } from './face-of-answer.ts';
import { HowSure } from './how-sure.tsx';
import styles from './lookup-part.module.css';
import { NoReading } from './no-reading.tsx';
import { OtherReadings } from './other-readings.tsx';
import { problemErrorOf } from './problem-error-of.ts';
import { ReadingPanel } from './reading-panel.tsx';
import { RefusedPanel } from './refused-panel.tsx';
import { StepsPart } from './steps-part.tsx';
import { WarningList } from './warning-list.tsx';
import { WithheldPanel } from './withheld-panel.tsx';

interface LookupPartProps {
  readonly device: ReadyDevice;
  readonly line: PairLine;
  readonly choice: { readonly pair: string; readonly target: Target };
  /** What stands under the face on a wide screen, at the end on a telephone. */
  readonly children: ReactNode;
}

export function LookupPart({ device, line, choice, children }: LookupPartProps) {
  const { snapshot, day } = device;
  const { pair, target } = choice;
  const lookup = useMemo(
    () => lookUpOnDevice(snapshot, pair, targetFields(target), day),
    [snapshot, pair, target, day],
  );
  const [released, setReleased] = useState<LookupAnswer | null>(null);
  const panel = useRef<HTMLElement>(null);
  // The form that was sent is gone; the number it asked for takes the focus.
  useEffect(() => {
    if (released !== null) panel.current?.focus();
  }, [released]);
  if (!lookup.ok) {
    return (
      <>
        <NoReading error={problemErrorOf(lookup.problem)} onRetry={null} />
        {children}
      </>
    );
  }
  const latest = lookup.value;
  const answer = standsStill(released, latest) ? released : latest;
  const isGiven = answer.outcome === 'given';
  const face = faceOfAnswer(answer);
  return (
    <div className={styles.answer}>
      <div className={styles.number} aria-live="polite">
        <DeviceNote device={device} />
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
      <div className={styles.rest}>
        {isGiven ? <HowSure answer={answer} /> : null}
        {isGiven && answer !== released ? <StepsPart device={device} answer={answer} /> : null}
        <BasisList answer={answer} line={line} device={device} />
      </div>
      <div className={styles.after}>{children}</div>
    </div>
  );
}

/** A release holds as long as the pair is stopped by nothing else, on the same calibration and the same day as when it was given. */
function standsStill(released: LookupAnswer | null, latest: LookupAnswer): released is LookupAnswer {
  return (
    released !== null &&
    latest.outcome === 'withheld' &&
    latest.warnings.every(({ code, weight }) => weight !== 'stop' || isAmong(released.warnings, code)) &&
    latest.standing === released.standing &&
    latest.calibration?.number === released.calibration?.number &&
    latest.asOf.slice(0, 10) === released.asOf.slice(0, 10)
  );
}

function isAmong(warnings: LookupAnswer['warnings'], code: string): boolean {
  return warnings.some((warning) => warning.code === code);
}
