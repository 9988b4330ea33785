// The cell that the repair of an entry check would be written into.

import type { SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import { cellOfCheck } from './cell-of-check.ts';
import { type CellPlace, type RunGrid, readCell } from './run-grid.ts';
import type { GridPoints } from './sheet-from-grid.ts';

/**
 * Null where the check names no single point, and where the value stands in a set value the cycles share: writing there
 * would change the points of the other cycles as well.
 */
export function cellOfRepair(
  where: string,
  field: SetQuantity,
  { grid, set, points }: { readonly grid: RunGrid; readonly set: SetQuantity; readonly points: GridPoints },
): CellPlace | null {
  const observed = cellOfCheck(where, points);
  if (observed === null || field !== set) return observed;
  const { row, column } = observed;
  if (column.kind === 'level' || grid.cycles[column.cycle]?.hasOwnLevels !== true) return null;
  const kind = column.kind === 'falling' ? 'ownFallingLevel' : 'ownLevel';
  const own: CellPlace = { row, column: { kind, cycle: column.cycle } };
  return readCell(grid, own).trim() === '' ? null : own;
}
