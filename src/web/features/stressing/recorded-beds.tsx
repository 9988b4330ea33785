// The beds in the ledger, the latest day first.

import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { stressingListAnswer } from '../../../contract/stressing-answer.ts';
import { get, NoConnectionError } from '../../app/http-client.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';

export function RecordedBeds() {
  const text = words.stressing;
  const recorded = useQuery({
    queryKey: ['stressing-records'],
    queryFn: () => get('/api/stressing-records', stressingListAnswer),
  });
  if (recorded.isPending) return <WaitingNote />;
  if (recorded.error instanceof NoConnectionError) return <p role="status">{text.notLoaded}</p>;
  if (recorded.isError) return <ProblemNote error={recorded.error} onRetry={() => void recorded.refetch()} />;
  const { records } = recorded.data;
  return (
    <ScrollTable title={text.recordedTitle} columns={text.recordColumns} numbersFrom={5}>
      {records.map((record) => (
        <tr key={record.number}>
          <th scope="row">
            <Link href={`/stressing/${encodeURIComponent(record.number)}`}>{record.number}</Link>
          </th>
          <td>{record.bed}</td>
          <td>{record.on}</td>
          <td>
            <Link href={`/equipment/${encodeURIComponent(record.pair)}`}>{record.pair}</Link>
          </td>
          <td>{record.strand}</td>
          <NumberCell>{record.pulls}</NumberCell>
          <NumberCell>{record.outOfWindow}</NumberCell>
          <NumberCell>{formatNumber(record.meanRatio, { rule: 'decimals', decimals: 3 })}</NumberCell>
        </tr>
      ))}
      {records.length === 0 ? (
        <tr>
          <td colSpan={text.recordColumns.length}>{text.noneRecorded}</td>
        </tr>
      ) : null}
    </ScrollTable>
  );
}
