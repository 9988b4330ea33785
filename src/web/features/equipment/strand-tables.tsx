// The plant's own sizes of strand and its reels, each with the figures of its mill certificate as they were typed.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { ScrollTable } from '../../charts/scroll-table.tsx';
import { formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';

type Quantity = Parameters<typeof formatQuantity>[0];

const asTyped = (quantity: Quantity): string => formatQuantity(quantity, { rule: 'as-typed' });

/** A plant that works by the table alone is shown no empty tables. */
export function StrandTables({ register }: { readonly register: EquipmentAnswer }) {
  return (
    <>
      {register.strands.length === 0 ? null : <SizeTable strands={register.strands} />}
      {register.reels.length === 0 ? null : <ReelTable reels={register.reels} />}
    </>
  );
}

function SizeTable({ strands }: Pick<EquipmentAnswer, 'strands'>) {
  const text = words.strands;
  const columns = [
    text.designation,
    text.grade,
    text.area,
    text.breakingLoad,
    text.yieldLoad,
    text.modulus,
    text.certificate,
  ];
  return (
    <ScrollTable title={text.sizesTitle} columns={columns} numbersFrom={columns.length}>
      {strands.map((strand) => (
        <tr key={strand.designation}>
          <th scope="row">{strand.designation}</th>
          <td>{strand.grade}</td>
          <td>{asTyped(strand.area)}</td>
          <td>{asTyped(strand.breakingLoad)}</td>
          <td>
            {asTyped(strand.yieldLoad)}
            <div>{text.yieldBases[strand.yieldBasis]}</div>
          </td>
          <td>{asTyped(strand.modulus)}</td>
          <td>{strand.certificate}</td>
        </tr>
      ))}
    </ScrollTable>
  );
}

function ReelTable({ reels }: Pick<EquipmentAnswer, 'reels'>) {
  const text = words.strands;
  const columns = [text.reel, text.strand, text.heat, text.area, text.breakingLoad, text.modulus, text.certificate];
  return (
    <ScrollTable title={text.reelsTitle} columns={columns} numbersFrom={columns.length}>
      {reels.map((reel) => (
        <tr key={reel.id}>
          <th scope="row">{reel.id}</th>
          <td>{reel.strandId}</td>
          <td>{reel.heat ?? ''}</td>
          <td>{asTyped(reel.area)}</td>
          <td>{asTyped(reel.breakingLoad)}</td>
          <td>{asTyped(reel.modulus)}</td>
          <td>{reel.certificate}</td>
        </tr>
      ))}
    </ScrollTable>
  );
}
