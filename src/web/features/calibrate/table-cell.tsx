// One cell of the table of points: a text, kept as typed.

import { memo } from 'react';
import styles from './point-table.module.css';
import type { CellHandlers } from './use-table-keys.ts';

interface TableCellProps {
  readonly id: string;
  readonly row: number;
  readonly columnIndex: number;
  readonly text: string;
  readonly label: string;
  readonly isBad: boolean;
  readonly isMarked: boolean;
  /** What counts where the cell is blank. */
  readonly placeholder?: string | undefined;
  readonly handlers: CellHandlers;
}

export const TableCell = memo(function TableCell(props: TableCellProps) {
  const { id, row, columnIndex, text, label, isBad, isMarked, placeholder, handlers } = props;
  return (
    <td className={styles.cell} data-marked={isMarked}>
      <input
        id={id}
        className={styles.input}
        data-row={row}
        data-column={columnIndex}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        aria-label={label}
        aria-invalid={isBad || undefined}
        aria-describedby={isBad ? `${id}-bad` : undefined}
        placeholder={placeholder}
        value={text}
        {...handlers}
      />
    </td>
  );
});
