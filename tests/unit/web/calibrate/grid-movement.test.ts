// Where keys lead in the table of points.

import { describe, expect, it } from 'vitest';
import { placeAfterKey } from '../../../../src/web/features/calibrate/grid-movement.ts';
import { cellId, emptyGrid } from '../../../../src/web/features/calibrate/run-grid.ts';

const grid = emptyGrid(2, 3);
const level = { kind: 'level' } as const;
const rising = (cycle: number) => ({ kind: 'rising', cycle }) as const;

function leadsTo(
  key: string,
  from: Parameters<typeof placeAfterKey>[1],
  held: 'shift' | 'control' | 'nothing' = 'nothing',
) {
  const place = placeAfterKey(grid, from, { key, shift: held === 'shift', control: held === 'control' });
  return place === null ? null : cellId(place);
}

describe('moving in the table', () => {
  const middle = { row: 1, column: rising(0) };

  it.each([
    ['ArrowUp', 'cell-0-rising-0'],
    ['ArrowDown', 'cell-2-rising-0'],
    ['ArrowLeft', 'cell-1-level'],
    ['ArrowRight', 'cell-1-rising-1'],
    ['Home', 'cell-1-level'],
    ['End', 'cell-1-rising-1'],
    ['Enter', 'cell-2-rising-0'],
  ])('%s leads to %s', (key, place) => {
    expect(leadsTo(key, middle)).toBe(place);
  });

  it('stays at the edges', () => {
    expect(leadsTo('ArrowUp', { row: 0, column: level })).toBe('cell-0-level');
    expect(leadsTo('ArrowLeft', { row: 0, column: level })).toBe('cell-0-level');
    expect(leadsTo('ArrowRight', { row: 3, column: rising(1) })).toBe('cell-3-rising-1');
    expect(leadsTo('Enter', { row: 3, column: rising(1) })).toBe('cell-3-rising-1');
  });

  it('goes from the last row of a column to the top of the next with Enter, and back with Shift', () => {
    expect(leadsTo('Enter', { row: 3, column: rising(0) })).toBe('cell-0-rising-1');
    expect(leadsTo('Enter', { row: 0, column: rising(1) }, 'shift')).toBe('cell-3-rising-0');
  });

  it('leads to the ends of the table with Ctrl', () => {
    expect(leadsTo('Home', middle, 'control')).toBe('cell-0-level');
    expect(leadsTo('End', middle, 'control')).toBe('cell-3-rising-1');
    expect(leadsTo('ArrowDown', middle, 'control')).toBe('cell-3-rising-0');
  });

  it('does not move with a key that types', () => {
    expect(leadsTo('5', middle)).toBeNull();
    expect(leadsTo('Tab', middle)).toBeNull();
  });
});
