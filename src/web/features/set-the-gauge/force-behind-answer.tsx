// What the inverse look-up says: the force with its interval, or why there is none.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { Figure } from '../../controls/figure.tsx';
import { formatNumber, formatQuantity, formatUnit } from '../../controls/format-number.ts';
import { words } from '../../words/words.ts';
import { NoReading } from './no-reading.tsx';
import { writeForce, writeLevel } from './rounding.ts';
import { WarningList } from './warning-list.tsx';

interface ForceBehindAnswerProps {
  readonly answer: LookupAnswer | null;
  readonly error: unknown;
}

export function ForceBehindAnswer({ answer, error }: ForceBehindAnswerProps) {
  const text = words.setTheGauge;
  if (answer === null) return <NoReading error={error} onRetry={null} />;
  const { force, reading, forceInterval, outcome } = answer;
  return (
    <div aria-live="polite">
      {outcome === 'withheld' ? <p>{text.behindWithheld}</p> : null}
      {outcome === 'given' && force !== null && reading !== null ? (
        <Figure
          label={text.behindAnswer(formatQuantity(reading, { rule: 'as-typed' }))}
          value={formatNumber(force.value, { rule: 'significant-digits', digits: 4 })}
          unit={formatUnit(force.unit)}
          size="large"
          note={
            forceInterval === null
              ? text.noInterval
              : text.intervalText(
                  writeLevel(forceInterval.level),
                  writeForce({ value: forceInterval.low, unit: forceInterval.unit }),
                  writeForce({ value: forceInterval.high, unit: forceInterval.unit }),
                )
          }
        />
      ) : null}
      <WarningList warnings={answer.warnings} />
    </div>
  );
}
