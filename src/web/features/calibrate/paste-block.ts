// Pasting a block copied from a spreadsheet into the table, and copying one out of it. Texts stay as they are.

import Papa from 'papaparse';
import {
  type CellPlace,
  type GridColumn,
  gridColumns,
  mostCycles,
  mostLevels,
  type RunGrid,
  readCell,
  withCycleCount,
  withRowCount,
  writeCells,
} from './run-grid.ts';

export type Block = readonly (readonly string[])[];

export interface Pasted {
  readonly grid: RunGrid;
  readonly rows: number;
  readonly columns: number;
  readonly addedLevels: number;
  readonly addedCycles: number;
  /** Cells of the block the largest table has no place for. */
  readonly leftOut: number;
}

/** The cells of a copied text: tabs between columns, line ends between rows, quotes as spreadsheets write them. */
export function readBlock(text: string): Block {
  const withoutLastEnd = text.replace(/(\r\n|\n|\r)$/, '');
  if (withoutLastEnd === '') return [];
  return Papa.parse<string[]>(withoutLastEnd, { delimiter: '\t' }).data.map((row) => row.map((cell) => cell.trim()));
}

/** Puts a block with its upper left corner at a cell; levels and cycles are added where the table is too small. */
export function pasteBlock(grid: RunGrid, at: CellPlace, block: Block): Pasted {
  const width = Math.max(0, ...block.map((row) => row.length));
  const roomy = growFor(grid, at, block.length, width);
  const columns = gridColumns(roomy);
  const first = columnIndex(columns, at.column);
  const writes = block.flatMap((row, rowIndex) =>
    row.flatMap((text, index) => {
      const column = columns[first + index];
      const place = at.row + rowIndex;
      return column === undefined || place >= roomy.rows.length ? [] : [{ row: place, column, text }];
    }),
  );
  const cells = block.reduce((count, row) => count + row.length, 0);
  return {
    grid: writeCells(roomy, writes),
    rows: block.length,
    columns: width,
    addedLevels: roomy.rows.length - grid.rows.length,
    addedCycles: roomy.cycles.length - grid.cycles.length,
    leftOut: cells - writes.length,
  };
}

function growFor(grid: RunGrid, at: CellPlace, height: number, width: number): RunGrid {
  const neededRows = Math.min(at.row + height, Math.max(mostLevels + 1, grid.rows.length));
  let roomy = neededRows > grid.rows.length ? withRowCount(grid, neededRows) : grid;
  const first = columnIndex(gridColumns(grid), at.column);
  while (gridColumns(roomy).length < first + width && roomy.cycles.length < mostCycles) {
    roomy = withCycleCount(roomy, roomy.cycles.length + 1);
  }
  return roomy;
}

/** The texts between two corners, both included, as a spreadsheet takes them. */
export function copyBlock(grid: RunGrid, from: CellPlace, to: CellPlace): string {
  return placesBetween(grid, from, to)
    .map((row) => row.map((place) => readCell(grid, place)).join('\t'))
    .join('\n');
}

/** The places between two corners, row by row. */
export function placesBetween(grid: RunGrid, from: CellPlace, to: CellPlace): readonly (readonly CellPlace[])[] {
  const columns = gridColumns(grid);
  const [left, right] = inOrder(columnIndex(columns, from.column), columnIndex(columns, to.column));
  const [top, bottom] = inOrder(from.row, to.row);
  return Array.from({ length: bottom - top + 1 }, (_, index) =>
    columns.slice(left, right + 1).map((column) => ({ row: top + index, column })),
  );
}

export function columnIndex(columns: readonly GridColumn[], wanted: GridColumn): number {
  return columns.findIndex((column) => isSameColumn(column, wanted));
}

export function isSameColumn(one: GridColumn, other: GridColumn): boolean {
  if (one.kind === 'level' || other.kind === 'level') return one.kind === other.kind;
  return one.kind === other.kind && one.cycle === other.cycle;
}

const inOrder = (one: number, other: number): readonly [number, number] => (one <= other ? [one, other] : [other, one]);
