// Into which cell the repair of an entry check would be written.

import { describe, expect, it } from 'vitest';
import { cellOfRepair } from '../../../../src/web/features/calibrate/cell-of-repair.ts';
import { emptyGrid, withCycle, writeCells } from '../../../../src/web/features/calibrate/run-grid.ts';
import { pointsFromGrid } from '../../../../src/web/features/calibrate/sheet-from-grid.ts';

const grid = withCycle(
  writeCells(emptyGrid(2, 2), [
    { row: 1, column: { kind: 'level' }, text: '10' },
    { row: 1, column: { kind: 'rising', cycle: 0 }, text: '1440' },
    { row: 1, column: { kind: 'ownLevel', cycle: 1 }, text: '11' },
    { row: 1, column: { kind: 'rising', cycle: 1 }, text: '1580' },
  ]),
  1,
  { hasOwnLevels: true },
);
const at = { grid, set: 'force', points: pointsFromGrid(grid, 'force') } as const;

describe('the cell of a repair', () => {
  it('is that of the observed value', () => {
    expect(cellOfRepair('cycles[0].points[0].reading', 'reading', at)).toEqual({
      row: 1,
      column: { kind: 'rising', cycle: 0 },
    });
  });

  it('is the own set value of a cycle that states one', () => {
    expect(cellOfRepair('cycles[1].points[0].force', 'force', at)).toEqual({
      row: 1,
      column: { kind: 'ownLevel', cycle: 1 },
    });
  });

  it('is none where the set value is shared, since other cycles would change with it', () => {
    expect(cellOfRepair('cycles[0].points[0].force', 'force', at)).toBeNull();
  });

  it('is none where the check names no single point', () => {
    expect(cellOfRepair('units.reading', 'reading', at)).toBeNull();
    expect(cellOfRepair('cycles[0].points[9].reading', 'reading', at)).toBeNull();
  });
});
