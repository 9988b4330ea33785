// The rows of the table of readings, or why there are none. It is opened in readings-part.tsx.

import { useMemo } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import type { ReadingsAnswer } from '../../../contract/readings-table.ts';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { readingsOnDevice } from '../../offline/readings-on-device.ts';
import { inLanguage } from '../../words/sentence.ts';
import { words } from '../../words/words.ts';
import { NoReading } from './no-reading.tsx';
import { problemErrorOf } from './problem-error-of.ts';
import styles from './readings-part.module.css';

export interface ReadingsTableProps {
  readonly device: ReadyDevice;
  readonly line: PairLine;
}

export function ReadingsTable({ device, line }: ReadingsTableProps) {
  const { snapshot, day } = device;
  const readings = useMemo(() => readingsOnDevice(snapshot, line.tag, {}, day), [snapshot, line.tag, day]);
  if (!readings.ok) return <NoReading error={problemErrorOf(readings.problem)} onRetry={null} />;
  return <Rows answer={readings.value} />;
}

function Rows({ answer }: { readonly answer: ReadingsAnswer }) {
  const text = words.setTheGauge;
  if (answer.outcome !== 'given') {
    return <p>{answer.warnings[0] === undefined ? text.readingsNone : inLanguage(answer.warnings[0].message)}</p>;
  }
  const number = (value: number, step: number): string => formatNumber(value, { rule: 'to-step', step });
  return (
    <>
      <p className={styles.lead}>{text.readingsLead(answer.asOf, answer.dueDate ?? text.noDueDate)}</p>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{text.readingsForce(formatUnit(answer.unit))}</th>
            <th scope="col">{text.readingsSet(formatUnit(answer.readingUnit))}</th>
            <th scope="col">{text.readingsError}</th>
          </tr>
        </thead>
        <tbody>
          {answer.rows.map((row) => (
            <tr key={row.force}>
              <th scope="row">{formatNumber(row.force, { rule: 'as-typed' })}</th>
              <td className={styles.reading}>
                {row.readingToSet === null ? text.readingsCannot : number(row.readingToSet, answer.gaugeStep)}
              </td>
              <td>
                {row.roundingErrorPercent === null
                  ? ''
                  : text.percent(formatNumber(row.roundingErrorPercent, { rule: 'decimals', decimals: 1 }))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul className={styles.notes}>
        {answer.warnings.map(({ code, message }) => (
          <li key={code}>{inLanguage(message)}</li>
        ))}
        {answer.rowWarnings.map(({ code, message }) => (
          <li key={code}>{text.readingsAt(writeForces(answer, code), inLanguage(message))}</li>
        ))}
      </ul>
    </>
  );
}

/** Which forces of the table carry a warning: "6 to 16, 46 to 50 kip". */
function writeForces({ rows, unit }: ReadingsAnswer, code: string): string {
  const runs: { from: number; to: number }[] = [];
  let isRunning = false;
  for (const row of rows) {
    const isConcerned = row.warnings.includes(code);
    const last = runs.at(-1);
    if (isConcerned && isRunning && last !== undefined) last.to = row.force;
    else if (isConcerned) runs.push({ from: row.force, to: row.force });
    isRunning = isConcerned;
  }
  const write = (value: number): string => formatNumber(value, { rule: 'as-typed' });
  const { readingsRun } = words.setTheGauge;
  const parts = runs.map(({ from, to }) => (from === to ? write(from) : readingsRun(write(from), write(to))));
  return `${parts.join(', ')} ${formatUnit(unit)}`;
}
