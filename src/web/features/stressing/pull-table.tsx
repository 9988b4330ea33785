// Every pull of a bed with its findings, a re-pull beside the first and never in its place.

import type { StressingAnswer } from '../../../contract/stressing-answer.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';

type Pull = StressingAnswer['pullsFound'][number];
type Quantity = Parameters<typeof formatQuantity>[0];

const asTyped = (quantity: Quantity): string => formatQuantity(quantity, { rule: 'as-typed' });
const force = (quantity: Quantity): string => formatQuantity(quantity, { rule: 'significant-digits', digits: 4 });

export function PullTable({ pulls }: { readonly pulls: readonly Pull[] }) {
  const text = words.stressing;
  return (
    <ScrollTable title={text.pullsTitle} columns={text.pullColumns} numbersFrom={2}>
      {pulls.map((pull) => (
        <tr key={pull.number}>
          <th scope="row">{pull.number}</th>
          <td>
            {pull.positions.join(', ')}
            {pull.repullOf === undefined ? null : <div>{text.repullOf(pull.repullOf)}</div>}
          </td>
          <NumberCell>{asTyped(pull.preloadReading)}</NumberCell>
          <NumberCell>{asTyped(pull.finalReading)}</NumberCell>
          <NumberCell>{asTyped(pull.elongation)}</NumberCell>
          <NumberCell>{force(pull.gaugeForce)}</NumberCell>
          <NumberCell>{force(pull.elongationForce)}</NumberCell>
          <NumberCell>
            {pull.agreementPercent > 0 ? '+' : ''}
            {formatNumber(pull.agreementPercent, { rule: 'decimals', decimals: 1 })}
          </NumberCell>
          <td data-sentence="true">
            {text.position[pull.outcome === 'within' ? 'within' : 'out']}
            {pull.reason === undefined ? null : <div>{text.reasons[pull.reason]}</div>}
            {pull.note === undefined ? null : <div>{pull.note}</div>}
          </td>
        </tr>
      ))}
      {pulls.length === 0 ? (
        <tr>
          <td colSpan={text.pullColumns.length}>{text.noPullsYet}</td>
        </tr>
      ) : null}
    </ScrollTable>
  );
}
