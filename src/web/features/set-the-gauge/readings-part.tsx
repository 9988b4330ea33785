// The table of readings of a pair over its range, opened on demand, for printing or for looking one force up after another.

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { PairLine } from '../../../contract/equipment.ts';
import { type ReadingsAnswer, readingsAnswer } from '../../../contract/readings-table.ts';
import { get, ProblemError } from '../../app/http-client.ts';
import { formatNumber, formatUnit } from '../../controls/format-number.ts';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/words.ts';
import { NoReading } from './no-reading.tsx';
import styles from './readings-part.module.css';

/** Answers the table, or the refusal that stands in its place. */
async function askReadings(pair: string): Promise<ReadingsAnswer> {
  try {
    return await get(`/api/pairs/${encodeURIComponent(pair)}/readings`, readingsAnswer);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const withoutRows = readingsAnswer.safeParse(error.problem.answer);
    if (!withoutRows.success || withoutRows.data.outcome === 'given') throw error;
    return withoutRows.data;
  }
}

export function ReadingsPart({ line }: { readonly line: PairLine }) {
  const text = words.setTheGauge;
  const [isOpen, setIsOpen] = useState(false);
  const readings = useQuery({
    queryKey: ['readings', line.tag],
    queryFn: () => askReadings(line.tag),
    enabled: isOpen,
    gcTime: 0,
  });
  return (
    <details className={styles.part} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{text.readingsTitle(line.tag)}</summary>
      {readings.isError ? <NoReading error={readings.error} onRetry={() => readings.refetch()} /> : null}
      {isOpen && readings.isPending ? <WaitingNote text={text.checking} /> : null}
      {readings.data === undefined || readings.isError ? null : <ReadingsTable answer={readings.data} />}
    </details>
  );
}

function ReadingsTable({ answer }: { readonly answer: ReadingsAnswer }) {
  const text = words.setTheGauge;
  if (answer.outcome !== 'given') {
    return <p>{answer.warnings[0]?.message ?? text.readingsNone}</p>;
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
          <li key={code}>{message}</li>
        ))}
        {answer.rowWarnings.map(({ code, message }) => (
          <li key={code}>{text.readingsAt(writeForces(answer, code), message)}</li>
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
