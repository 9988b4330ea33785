// The rows of the steps of a pull, and how many steps. It is opened in steps-part.tsx.

import { useMemo, useState } from 'react';
import type { LookupAnswer } from '../../../contract/lookup.ts';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { type StepReading, stepsOnDevice } from '../../offline/steps-on-device.ts';
import { words } from '../../words/words.ts';
import chooser from './chooser.module.css';
import { NoReading } from './no-reading.tsx';
import { problemErrorOf } from './problem-error-of.ts';
import styles from './readings-part.module.css';
import { shownReadingRounding, writeForce } from './rounding.ts';

export interface StepListProps {
  readonly device: ReadyDevice;
  readonly answer: LookupAnswer;
}

/** Steps from the preload to the final force that crews work in. Common practice, no source. */
const usualSteps = [1, 2, 4, 5] as const;
const firstSteps = 4;

export function StepList({ device, answer }: StepListProps) {
  const text = words.setTheGauge;
  const [count, setCount] = useState<number>(firstSteps);
  const { snapshot, day } = device;
  const steps = useMemo(() => stepsOnDevice(snapshot, answer, count, day), [snapshot, answer, count, day]);
  const rounding = shownReadingRounding(answer);
  const unit = formatUnit(answer.readingToSet?.unit ?? '');
  return (
    <>
      <fieldset>
        <legend className={chooser.legend}>{text.stepsCount}</legend>
        <div className={chooser.row}>
          {usualSteps.map((usual) => (
            <button
              key={usual}
              type="button"
              className={chooser.key}
              aria-pressed={usual === count}
              onClick={() => setCount(usual)}
            >
              {usual}
            </button>
          ))}
        </div>
      </fieldset>
      {steps.ok ? (
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">{text.stepColumn}</th>
              <th scope="col">{text.force}</th>
              <th scope="col">{text.readingsSet(unit)}</th>
            </tr>
          </thead>
          <tbody>
            {steps.value.map((step, index) => (
              <tr key={step.force.value}>
                <th scope="row">{nameOf(step, index)}</th>
                <td>{writeForce(step.force)}</td>
                <td className={styles.reading}>
                  {step.readingToSet === null ? text.readingsCannot : formatNumber(step.readingToSet.value, rounding)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <NoReading error={problemErrorOf(steps.problem)} onRetry={null} />
      )}
    </>
  );
}

function nameOf({ kind }: StepReading, index: number): string {
  const text = words.setTheGauge;
  if (kind === 'preload') return text.preload;
  return kind === 'final' ? text.stepFinal : text.stepNumber(index);
}
