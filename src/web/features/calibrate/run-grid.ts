// The table of a run sheet while it is typed: every cell is the text as typed, a bad one included.
// What the texts mean as numbers is in sheet-from-grid.ts, pasting in paste-block.ts, undoing in grid-history.ts.

/** The texts of one level in one cycle. `own...` replaces the level shared by the cycles where it is not blank. */
export interface CycleCells {
  readonly ownLevel: string;
  readonly rising: string;
  readonly ownFallingLevel: string;
  readonly falling: string;
}

export interface GridRow {
  /** The set value the cycles share. */
  readonly level: string;
  readonly cycles: readonly CycleCells[];
}

export interface GridCycle {
  readonly showsFalling: boolean;
  readonly hasOwnLevels: boolean;
  /** How far the ram was out, as typed: "75 mm". */
  readonly ramExtension: string;
}

export interface RunGrid {
  readonly cycles: readonly GridCycle[];
  readonly rows: readonly GridRow[];
}

export type CellKind = 'level' | 'ownLevel' | 'rising' | 'ownFallingLevel' | 'falling';

/** A column on the screen; the shared level belongs to no cycle. */
export type GridColumn =
  | { readonly kind: 'level' }
  | { readonly kind: Exclude<CellKind, 'level'>; readonly cycle: number };

export interface CellPlace {
  readonly row: number;
  readonly column: GridColumn;
}

/** More than any calibration has; the contract refuses more cycles. */
export const mostCycles = 12;
export const mostLevels = 60;

const emptyCells: CycleCells = { ownLevel: '', rising: '', ownFallingLevel: '', falling: '' };
const emptyCycle: GridCycle = { showsFalling: false, hasOwnLevels: false, ramExtension: '' };

/** A fresh table: a zero row, then the levels. */
export function emptyGrid(cycles: number, levels: number): RunGrid {
  const row = (level: string): GridRow => ({ level, cycles: Array.from({ length: cycles }, () => emptyCells) });
  return {
    cycles: Array.from({ length: cycles }, () => emptyCycle),
    rows: [row('0'), ...Array.from({ length: levels }, () => row(''))],
  };
}

export function gridColumns(grid: RunGrid): readonly GridColumn[] {
  const ofCycles = grid.cycles.flatMap((settings, cycle): GridColumn[] => [
    ...(settings.hasOwnLevels ? [{ kind: 'ownLevel', cycle } as const] : []),
    { kind: 'rising', cycle },
    ...(settings.showsFalling && settings.hasOwnLevels ? [{ kind: 'ownFallingLevel', cycle } as const] : []),
    ...(settings.showsFalling ? [{ kind: 'falling', cycle } as const] : []),
  ]);
  return [{ kind: 'level' }, ...ofCycles];
}

/** The name of a cell in the page, to link to it. */
export function cellId({ row, column }: CellPlace): string {
  return column.kind === 'level' ? `cell-${row}-level` : `cell-${row}-${column.kind}-${column.cycle}`;
}

export function readCell(grid: RunGrid, { row, column }: CellPlace): string {
  const found = grid.rows[row];
  if (found === undefined) return '';
  return column.kind === 'level' ? found.level : (found.cycles[column.cycle]?.[column.kind] ?? '');
}

export function writeCell(grid: RunGrid, place: CellPlace, text: string): RunGrid {
  return writeCells(grid, [{ ...place, text }]);
}

/** Writes several cells at once; places outside the table are passed over. */
export function writeCells(grid: RunGrid, writes: readonly (CellPlace & { readonly text: string })[]): RunGrid {
  const rows = [...grid.rows];
  for (const { row, column, text } of writes) {
    const before = rows[row];
    if (before === undefined) continue;
    if (column.kind === 'level') {
      rows[row] = { ...before, level: text };
    } else {
      const { cycle, kind } = column;
      rows[row] = {
        ...before,
        cycles: before.cycles.map((cells, index) => (index === cycle ? { ...cells, [kind]: text } : cells)),
      };
    }
  }
  return { ...grid, rows };
}

/** An imported sheet may be larger than what can be added by hand; it never shrinks by being asked to grow. */
function within(wanted: number, present: number, most: number): number {
  return Math.min(Math.max(1, wanted), Math.max(most, present));
}

/** Adds empty cycles or takes the last ones away; one stays. */
export function withCycleCount(grid: RunGrid, wanted: number): RunGrid {
  const count = within(wanted, grid.cycles.length, mostCycles);
  const last = grid.cycles.at(-1) ?? emptyCycle;
  const added = { ...last, ramExtension: '' };
  return {
    cycles: Array.from({ length: count }, (_, index) => grid.cycles[index] ?? added),
    rows: grid.rows.map((row) => ({
      ...row,
      cycles: Array.from({ length: count }, (_, index) => row.cycles[index] ?? emptyCells),
    })),
  };
}

/** Adds empty levels at the end or takes the last ones away; the zero row counts as one of `wanted` rows. */
export function withRowCount(grid: RunGrid, wanted: number): RunGrid {
  const count = within(wanted, grid.rows.length, mostLevels + 1);
  const empty: GridRow = { level: '', cycles: grid.cycles.map(() => emptyCells) };
  return { ...grid, rows: Array.from({ length: count }, (_, index) => grid.rows[index] ?? empty) };
}

export function withCycle(grid: RunGrid, cycle: number, change: Partial<GridCycle>): RunGrid {
  return {
    ...grid,
    cycles: grid.cycles.map((settings, index) => (index === cycle ? { ...settings, ...change } : settings)),
  };
}

/** Whether anything was typed besides the zero that a fresh table starts with. */
export function isUntouched(grid: RunGrid): boolean {
  return (
    grid.cycles.every(({ ramExtension }) => ramExtension === '') &&
    grid.rows.every(
      ({ level, cycles }, index) =>
        (level === '' || (index === 0 && level === '0')) &&
        cycles.every((cells) => Object.values(cells).every((text) => text === '')),
    )
  );
}

/** How many cells hold a text. */
export function countTyped({ rows }: RunGrid): number {
  return countTexts(rows.flatMap(({ level, cycles }) => [level, ...cycles.flatMap((cells) => Object.values(cells))]));
}

/** How many readings a cycle holds, rising and falling. */
export function countInCycle({ rows }: RunGrid, cycle: number): number {
  return countTexts(rows.flatMap(({ cycles }) => [cycles[cycle]?.rising ?? '', cycles[cycle]?.falling ?? '']));
}

/** How many cells of a row hold a text. */
export function countInRow({ cycles, rows }: RunGrid, row: number): number {
  return countTyped({ cycles, rows: rows.slice(row, row + 1) });
}

const countTexts = (texts: readonly string[]): number => texts.filter((text) => text !== '').length;
