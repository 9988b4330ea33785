// From texts to points and back, with every text that is none.

import { describe, expect, it } from 'vitest';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import { cellOfCheck } from '../../../../src/web/features/calibrate/cell-of-check.ts';
import { gridFromSheet } from '../../../../src/web/features/calibrate/grid-from-sheet.ts';
import { pasteBlock, readBlock } from '../../../../src/web/features/calibrate/paste-block.ts';
import { placeWords } from '../../../../src/web/features/calibrate/place-words.ts';
import {
  cellId,
  emptyGrid,
  type RunGrid,
  withCycle,
  writeCell,
} from '../../../../src/web/features/calibrate/run-grid.ts';
import { pointsFromGrid } from '../../../../src/web/features/calibrate/sheet-from-grid.ts';

const corner = { row: 0, column: { kind: 'level' } } as const;
const filled = (text: string, grid: RunGrid = emptyGrid(1, 1)): RunGrid =>
  pasteBlock(grid, corner, readBlock(text)).grid;

describe('points of the table', () => {
  it('takes the levels as force and the cells as reading where the force was set', () => {
    const { cycles, badCells } = pointsFromGrid(filled('0\t0\n5\t710'), 'force');
    expect(badCells).toEqual([]);
    expect(cycles).toEqual([
      {
        points: [
          { direction: 'up', force: 0, reading: 0 },
          { direction: 'up', force: 5, reading: 710 },
        ],
      },
    ]);
  });

  it('turns the two about where the reading was set', () => {
    const { cycles } = pointsFromGrid(filled('1000\t6.9'), 'reading');
    expect(cycles[0]?.points[0]).toEqual({ direction: 'up', force: 6.9, reading: 1000 });
  });

  it('comes back up the table with the falling points and leaves out a column that is not shown', () => {
    const grid = withCycle(emptyGrid(1, 1), 0, { showsFalling: true });
    const typed = filled('0\t0\t10\n5\t710\t690', grid);
    expect(
      pointsFromGrid(typed, 'force').cycles[0]?.points.map(({ direction, reading }) => [direction, reading]),
    ).toEqual([
      ['up', 0],
      ['up', 710],
      ['down', 690],
      ['down', 10],
    ]);
    const hidden = withCycle(typed, 0, { showsFalling: false });
    expect(pointsFromGrid(hidden, 'force').cycles[0]?.points).toHaveLength(2);
  });

  it('takes a set value of the cycle itself before the shared one', () => {
    const grid = withCycle(filled('0\t0\n5\t710'), 0, { hasOwnLevels: true });
    const own = writeCell(grid, { row: 1, column: { kind: 'ownLevel', cycle: 0 } }, '5.02');
    expect(pointsFromGrid(own, 'force').cycles[0]?.points.map(({ force }) => force)).toEqual([0, 5.02]);
  });

  it('leaves out a blank cell and a cycle without points', () => {
    const { cycles, placeOf } = pointsFromGrid(filled('0\t\t0\n5\t\t710', emptyGrid(2, 1)), 'force');
    expect(cycles).toHaveLength(1);
    expect(placeOf[0]?.map(cellId)).toEqual(['cell-0-rising-1', 'cell-1-rising-1']);
  });

  it.each([
    ['52,40', 'ambiguous-number'],
    ['abc', 'not-a-number'],
    ['-5', 'number-out-of-range'],
    ['1e400', 'number-out-of-range'],
    ['NaN', 'not-a-number'],
  ])('names the cell that holds "%s" as %s and keeps the other points', (text, code) => {
    const { badCells, cycles } = pointsFromGrid(filled(`0\t0\n5\t${text}`), 'force');
    expect(badCells).toEqual([{ row: 1, column: { kind: 'rising', cycle: 0 }, code, given: text }]);
    expect(cycles[0]?.points).toHaveLength(1);
  });

  it('names a level that is blank although something was observed at it', () => {
    const { badCells } = pointsFromGrid(filled('0\t0\n\t710'), 'force');
    expect(badCells).toEqual([{ row: 1, column: { kind: 'level' }, code: 'level-missing', given: '' }]);
  });

  it('names a shared level that cannot be read once, not once a cycle', () => {
    const { badCells, cycles } = pointsFromGrid(filled('0\t0\t0\nfive\t710\t720', emptyGrid(2, 1)), 'force');
    expect(badCells.map(cellId)).toEqual(['cell-1-level']);
    expect(cycles.map(({ points }) => points.length)).toEqual([1, 1]);
  });

  it('reads how far the ram was out and names what is no length', () => {
    const out = withCycle(filled('0\t0\n5\t710'), 0, { ramExtension: '75 mm' });
    expect(pointsFromGrid(out, 'force').cycles[0]?.ramExtension).toEqual({ value: 75, unit: 'mm' });
    const bad = withCycle(out, 0, { ramExtension: '75' });
    expect(pointsFromGrid(bad, 'force').badRamExtensions).toEqual([{ cycle: 0, given: '75' }]);
  });

  it('finds the cell an entry check names', () => {
    const points = pointsFromGrid(filled('0\t\t0\n5\t\t710', emptyGrid(2, 1)), 'force');
    const place = cellOfCheck('cycles[0].points[1].reading', points);
    expect(place === null ? null : placeWords(place, 'force')).toBe('Cycle 2, row 2, reading');
    expect(cellOfCheck('calibratedOn', points)).toBeNull();
  });
});

describe('an imported sheet', () => {
  const sheet: RunSheet = {
    units: { force: 'kip', reading: 'psi' },
    set: 'force',
    cycles: [
      {
        ramExtension: { value: 3, unit: 'in' },
        points: [
          { direction: 'up', force: 0, reading: 0 },
          { direction: 'up', force: 10, reading: 1440 },
          { direction: 'up', force: 20, reading: 2860 },
          { direction: 'down', force: 10, reading: 1400 },
          { direction: 'down', force: 0, reading: 0 },
        ],
      },
      {
        points: [
          { direction: 'up', force: 10.1, reading: 1450 },
          { direction: 'up', force: 20, reading: 2870 },
        ],
      },
    ],
  };

  it('gives the same points back', () => {
    const { cycles, badCells } = pointsFromGrid(gridFromSheet(sheet), 'force');
    expect(badCells).toEqual([]);
    expect(cycles).toEqual(sheet.cycles);
  });

  it('shows falling points and own set values only in the cycles that have them', () => {
    const { cycles } = gridFromSheet(sheet);
    expect(cycles.map(({ showsFalling, hasOwnLevels }) => [showsFalling, hasOwnLevels])).toEqual([
      [true, false],
      [false, true],
    ]);
  });
});
