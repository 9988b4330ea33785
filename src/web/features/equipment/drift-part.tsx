// How the pair moved over its calibrations, the forecast where there is one, and what it says of the interval.

import { useQuery } from '@tanstack/react-query';
import { type DriftAnswer, driftAnswer } from '../../../contract/drift.ts';
import { get } from '../../app/http-client.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { formatQuantity } from '../../controls/format-number.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './drift-part.module.css';

export function DriftPart({ tag }: { readonly tag: string }) {
  const drift = useQuery({
    queryKey: ['drift', tag],
    queryFn: () => get(`/api/pairs/${encodeURIComponent(tag)}/drift`, driftAnswer),
  });
  return (
    <section className={styles.part} aria-labelledby="drift-title">
      <h2 id="drift-title">{words.drift.title}</h2>
      {drift.isPending ? <WaitingNote /> : null}
      {drift.isError ? <ProblemNote error={drift.error} onRetry={() => void drift.refetch()} /> : null}
      {drift.data === undefined ? null : <DriftShown answer={drift.data} />}
    </section>
  );
}

function DriftShown({ answer }: { readonly answer: DriftAnswer }) {
  const { drift: text } = words;
  const limit = String(answer.limitPercent);
  return (
    <>
      <p className={styles.lead}>{text.lead(limit)}</p>
      <p className={styles.finding}>{text.forecast(answer.forecast, limit)}</p>
      <p className={styles.finding}>{text.interval(answer.interval)}</p>
      {answer.changes.length === 0 ? null : (
        <ScrollTable title={text.changesTitle} headingLevel={3} columns={text.changeColumns} numbersFrom={4}>
          {answer.changes.map((change) => (
            <tr key={change.to}>
              <th scope="row">{change.from}</th>
              <td>{change.to}</td>
              <td>{change.on}</td>
              <td>{text.verdicts[change.verdict]}</td>
              <NumberCell>{text.signed(change.changePercent)}</NumberCell>
              <NumberCell>{formatQuantity(change.at, { rule: 'significant-digits', digits: 4 })}</NumberCell>
              <NumberCell>{change.percentPerYear === null ? text.none : text.signed(change.percentPerYear)}</NumberCell>
              <NumberCell>{change.normalizedError === null ? text.none : change.normalizedError.toFixed(2)}</NumberCell>
            </tr>
          ))}
        </ScrollTable>
      )}
      <ScrollTable
        title={text.historyTitle(formatQuantity(answer.force, { rule: 'as-typed' }))}
        headingLevel={3}
        columns={text.historyColumns}
        numbersFrom={2}
      >
        {answer.history.map((point) => (
          <tr key={point.calibration}>
            <th scope="row">{point.calibration}</th>
            <td>{point.day}</td>
            <NumberCell>{text.signed(point.driftPercent)}</NumberCell>
            <NumberCell>{point.expandedUncertaintyPercent.toFixed(2)}</NumberCell>
          </tr>
        ))}
      </ScrollTable>
    </>
  );
}
