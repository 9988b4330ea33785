// The table of a run sheet while it is typed.

import { describe, expect, it } from 'vitest';
import {
  cellId,
  countTyped,
  emptyGrid,
  gridColumns,
  isUntouched,
  mostCycles,
  mostLevels,
  readCell,
  withCycle,
  withCycleCount,
  withRowCount,
  writeCell,
} from '../../../../src/web/features/calibrate/run-grid.ts';

const level = { kind: 'level' } as const;
const rising = (cycle: number) => ({ kind: 'rising', cycle }) as const;

describe('run grid', () => {
  it('starts with a zero row and blank levels', () => {
    const grid = emptyGrid(3, 10);
    expect(grid.rows).toHaveLength(11);
    expect(grid.rows.map((row) => row.level)).toEqual(['0', ...Array(10).fill('')]);
    expect(isUntouched(grid)).toBe(true);
  });

  it('shows one column for the levels and one for each cycle', () => {
    expect(gridColumns(emptyGrid(2, 5))).toEqual([level, rising(0), rising(1)]);
  });

  it('shows falling points and own set values of a cycle where asked', () => {
    const grid = withCycle(emptyGrid(2, 5), 1, { showsFalling: true, hasOwnLevels: true });
    expect(gridColumns(grid).map((column) => cellId({ row: 0, column }))).toEqual([
      'cell-0-level',
      'cell-0-rising-0',
      'cell-0-ownLevel-1',
      'cell-0-rising-1',
      'cell-0-ownFallingLevel-1',
      'cell-0-falling-1',
    ]);
  });

  it('keeps a text exactly as typed, even one that is no number', () => {
    const grid = writeCell(emptyGrid(1, 2), { row: 1, column: rising(0) }, ' 52,40 ?');
    expect(readCell(grid, { row: 1, column: rising(0) })).toBe(' 52,40 ?');
    expect(isUntouched(grid)).toBe(false);
    expect(countTyped(grid)).toBe(2);
  });

  it('passes over a place outside the table', () => {
    const grid = emptyGrid(1, 1);
    expect(writeCell(grid, { row: 9, column: level }, '5')).toEqual(grid);
  });

  it('keeps what was typed when cycles and levels are added', () => {
    const typed = writeCell(emptyGrid(1, 1), { row: 1, column: rising(0) }, '710');
    const larger = withRowCount(withCycleCount(typed, 3), 6);
    expect(readCell(larger, { row: 1, column: rising(0) })).toBe('710');
    expect(larger.rows).toHaveLength(6);
    expect(larger.rows.every((row) => row.cycles.length === 3)).toBe(true);
  });

  it('never shrinks a larger imported table by being asked to grow', () => {
    const imported = emptyGrid(mostCycles + 8, mostLevels + 8);
    expect(withCycleCount(imported, imported.cycles.length + 1).cycles).toHaveLength(mostCycles + 8);
    expect(withRowCount(imported, imported.rows.length + 1).rows).toHaveLength(mostLevels + 9);
  });

  it('stays between one cycle and row and the most there may be', () => {
    const grid = emptyGrid(2, 2);
    expect(withCycleCount(grid, 0).cycles).toHaveLength(1);
    expect(withCycleCount(grid, 99).cycles).toHaveLength(mostCycles);
    expect(withRowCount(grid, 0).rows).toHaveLength(1);
    expect(withRowCount(grid, 999).rows).toHaveLength(mostLevels + 1);
  });
});
