// From the place an entry check names, `cycles[1].points[3].reading`, to the cell of the table it was typed in.

import type { CellPlace } from './run-grid.ts';
import type { GridPoints } from './sheet-from-grid.ts';

/** Null where the check names no single point. Of the two quantities of a point its observed one is shown. */
export function cellOfCheck(where: string, { placeOf }: GridPoints): CellPlace | null {
  const match = /^cycles\[(\d+)\]\.points\[(\d+)\]/.exec(where);
  return match === null ? null : (placeOf[Number(match[1])]?.[Number(match[2])] ?? null);
}
