// From the texts of the table to the points of a run sheet, with every text that is no measured value.
// The way back, from an imported run sheet to a table, is in grid-from-sheet.ts.

import { readMeasured } from '../../../contract/run-sheet-csv.ts';
import type { RunSheetCycle, RunSheetPoint, SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import type { ProblemCode } from '../../../domain/problem.ts';
import { type LengthUnit, length } from '../../../domain/units/length.ts';
import { parseQuantity, type Quantity } from '../../../domain/units/quantity.ts';
import { type CellPlace, cellId, type GridColumn, gridColumns, type RunGrid, readCell } from './run-grid.ts';

export interface BadCell extends CellPlace {
  /** `level-missing`: something was observed at a level nobody wrote down. */
  readonly code: ProblemCode | 'level-missing';
  readonly given: string;
}

export interface BadRamExtension {
  readonly cycle: number;
  readonly given: string;
}

export interface GridPoints {
  readonly cycles: readonly RunSheetCycle[];
  /** For each cycle and point of `cycles` the cell of its observed value. */
  readonly placeOf: readonly (readonly CellPlace[])[];
  readonly badCells: readonly BadCell[];
  readonly badRamExtensions: readonly BadRamExtension[];
}

interface PlacedPoint {
  readonly point: RunSheetPoint;
  readonly place: CellPlace;
}

/**
 * Answers the points the table holds: a cell left blank is a point not taken, a column that is not shown is left out.
 * Rising points go down the table, falling ones come back up it. A cycle without any point is no cycle.
 */
export function pointsFromGrid(grid: RunGrid, set: SetQuantity): GridPoints {
  const badCells = findBadCells(grid);
  const bad = new Set(badCells.map(cellId));
  const cycles: RunSheetCycle[] = [];
  const placeOf: (readonly CellPlace[])[] = [];
  const badRamExtensions: BadRamExtension[] = [];
  for (const [cycle, settings] of grid.cycles.entries()) {
    const rows = grid.rows.map((_, row) => row);
    const rising = rows.flatMap((row) => readPoint(grid, { row, cycle, direction: 'up', set, bad }));
    const falling = settings.showsFalling
      ? rows.toReversed().flatMap((row) => readPoint(grid, { row, cycle, direction: 'down', set, bad }))
      : [];
    const points = [...rising, ...falling];
    const ramExtension = readRamExtension(settings.ramExtension);
    if (ramExtension === 'bad') badRamExtensions.push({ cycle, given: settings.ramExtension });
    if (points.length === 0) continue;
    cycles.push({
      points: points.map(({ point }) => point),
      ...(ramExtension === null || ramExtension === 'bad' ? {} : { ramExtension }),
    });
    placeOf.push(points.map(({ place }) => place));
  }
  return { cycles, placeOf, badCells, badRamExtensions };
}

function readRamExtension(text: string): Quantity<LengthUnit> | null | 'bad' {
  if (text.trim() === '') return null;
  const read = parseQuantity(length, text);
  return read.ok && read.value.value >= 0 ? read.value : 'bad';
}

function findBadCells(grid: RunGrid): readonly BadCell[] {
  const columns = gridColumns(grid);
  return grid.rows.flatMap((_, row) => columns.flatMap((column) => judgeCell(grid, { row, column })));
}

function judgeCell(grid: RunGrid, place: CellPlace): readonly BadCell[] {
  const given = readCell(grid, place);
  if (given.trim() !== '') {
    const read = readMeasured(given, '');
    return read.ok ? [] : [{ ...place, code: read.problem.code, given }];
  }
  return place.column.kind === 'level' && isLevelMissing(grid, place.row)
    ? [{ ...place, code: 'level-missing', given }]
    : [];
}

function isLevelMissing(grid: RunGrid, row: number): boolean {
  return gridColumns(grid).some((column) => {
    if (column.kind !== 'rising' && column.kind !== 'falling') return false;
    return readCell(grid, { row, column }).trim() !== '' && ownLevelText(grid, row, column) === '';
  });
}

/** The level a cycle states for itself, blank where its column of own levels is not shown. */
function ownLevelText(grid: RunGrid, row: number, column: GridColumn & { readonly cycle: number }): string {
  if (grid.cycles[column.cycle]?.hasOwnLevels !== true) return '';
  const kind = column.kind === 'falling' ? 'ownFallingLevel' : 'ownLevel';
  return readCell(grid, { row, column: { kind, cycle: column.cycle } }).trim();
}

function readPoint(
  grid: RunGrid,
  at: {
    readonly row: number;
    readonly cycle: number;
    readonly direction: 'up' | 'down';
    readonly set: SetQuantity;
    readonly bad: ReadonlySet<string>;
  },
): readonly PlacedPoint[] {
  const { row, cycle, direction, set, bad } = at;
  const column = { kind: direction === 'up' ? 'rising' : 'falling', cycle } as const;
  const place: CellPlace = { row, column };
  const own = ownLevelText(grid, row, column);
  const levelPlace: CellPlace =
    own === ''
      ? { row, column: { kind: 'level' } }
      : { row, column: { kind: direction === 'up' ? 'ownLevel' : 'ownFallingLevel', cycle } };
  if (readCell(grid, place).trim() === '' || bad.has(cellId(place)) || bad.has(cellId(levelPlace))) return [];
  const level = readMeasured(readCell(grid, levelPlace), '');
  const observed = readMeasured(readCell(grid, place), '');
  if (!level.ok || !observed.ok) return [];
  const point =
    set === 'force'
      ? { direction, force: level.value, reading: observed.value }
      : { direction, force: observed.value, reading: level.value };
  return [{ point, place }];
}
