// Where a key leads from a cell, as in a spreadsheet. What the keys change is in use-table-keys.ts.

import { columnIndex } from './paste-block.ts';
import { type CellPlace, gridColumns, type RunGrid } from './run-grid.ts';

export interface MovingKey {
  readonly key: string;
  readonly shift: boolean;
  /** Ctrl, or Command on a Mac. */
  readonly control: boolean;
}

/** Answers the place a key leads to, the same place at an edge, null where the key does not move. */
export function placeAfterKey(grid: RunGrid, from: CellPlace, { key, shift, control }: MovingKey): CellPlace | null {
  const columns = gridColumns(grid);
  const lastColumn = columns.length - 1;
  const lastRow = grid.rows.length - 1;
  const column = columnIndex(columns, from.column);
  const at = (row: number, index: number): CellPlace => ({
    row: Math.min(Math.max(0, row), lastRow),
    column: columns[Math.min(Math.max(0, index), lastColumn)] ?? from.column,
  });
  switch (key) {
    case 'ArrowUp':
      return at(control ? 0 : from.row - 1, column);
    case 'ArrowDown':
      return at(control ? lastRow : from.row + 1, column);
    case 'ArrowLeft':
      return at(from.row, control ? 0 : column - 1);
    case 'ArrowRight':
      return at(from.row, control ? lastColumn : column + 1);
    case 'Home':
      return at(control ? 0 : from.row, 0);
    case 'End':
      return at(control ? lastRow : from.row, lastColumn);
    case 'Enter':
      return shift ? placeBefore(from.row, column, lastRow, at) : placeBelow(from.row, column, lastRow, lastColumn, at);
    default:
      return null;
  }
}

type At = (row: number, column: number) => CellPlace;

/** Enter goes down, and from the last row to the top of the next column: a cycle is read off the sheet column by column. */
function placeBelow(row: number, column: number, lastRow: number, lastColumn: number, at: At): CellPlace {
  if (row < lastRow) return at(row + 1, column);
  return column < lastColumn ? at(0, column + 1) : at(row, column);
}

function placeBefore(row: number, column: number, lastRow: number, at: At): CellPlace {
  if (row > 0) return at(row - 1, column);
  return column > 0 ? at(lastRow, column - 1) : at(row, column);
}
