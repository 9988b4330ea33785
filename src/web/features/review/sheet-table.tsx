// The run sheet as it was entered: the cycles side by side, each with its points in the order they were taken.

import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { formatNumber, formatQuantity, formatUnit } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import styles from './sheet-table.module.css';

const asTyped = { rule: 'as-typed' } as const;

export function SheetTable({ sheet }: { readonly sheet: CalibrationAnswer['sheet'] }) {
  const { review, charts } = words;
  const columns = [
    review.directionColumn,
    `${charts.force}, ${formatUnit(sheet.units.force)}`,
    `${charts.reading}, ${formatUnit(sheet.units.reading)}`,
  ];
  return (
    <section className={styles.sheet} aria-labelledby="sheet-title">
      <h2 id="sheet-title">{review.dataTitle}</h2>
      <div className={styles.cycles}>
        {sheet.cycles.map(({ points, ramExtension }, cycle) => (
          <ScrollTable
            // biome-ignore lint/suspicious/noArrayIndexKey: a cycle is named by its place in the sheet
            key={cycle}
            headingLevel={3}
            title={review.cycle(cycle + 1, ramExtension === undefined ? null : formatQuantity(ramExtension, asTyped))}
            columns={columns}
          >
            {points.map((point, row) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a point is named by its place in the sheet
              <tr key={row}>
                <td>{review.direction[point.direction]}</td>
                <NumberCell>{formatNumber(point.force, asTyped)}</NumberCell>
                <NumberCell>{formatNumber(point.reading, asTyped)}</NumberCell>
              </tr>
            ))}
          </ScrollTable>
        ))}
      </div>
    </section>
  );
}
