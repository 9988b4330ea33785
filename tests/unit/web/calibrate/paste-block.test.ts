// Pasting from a spreadsheet, copying for one, and taking a paste back.

import { describe, expect, it } from 'vitest';
import { redoStep, startHistory, takeStep, undoStep } from '../../../../src/web/features/calibrate/grid-history.ts';
import { copyBlock, pasteBlock, readBlock } from '../../../../src/web/features/calibrate/paste-block.ts';
import {
  emptyGrid,
  mostCycles,
  readCell,
  withCycle,
  writeCell,
} from '../../../../src/web/features/calibrate/run-grid.ts';

const level = { kind: 'level' } as const;
const rising = (cycle: number) => ({ kind: 'rising', cycle }) as const;
const corner = { row: 0, column: level };

describe('pasting a block', () => {
  it('reads tabs, any line ends, a last line end and quoted cells', () => {
    expect(readBlock('0\t0\r\n5\t"710"\r\n')).toEqual([
      ['0', '0'],
      ['5', '710'],
    ]);
    expect(readBlock('')).toEqual([]);
    expect(readBlock('5\n\n10')).toEqual([['5'], [''], ['10']]);
  });

  it('keeps bad texts of the block', () => {
    const { grid } = pasteBlock(emptyGrid(1, 1), corner, readBlock('0\tnone\n5\t52,40'));
    expect(readCell(grid, { row: 0, column: rising(0) })).toBe('none');
    expect(readCell(grid, { row: 1, column: rising(0) })).toBe('52,40');
  });

  it('puts a block anywhere and leaves the rest alone', () => {
    const before = writeCell(emptyGrid(3, 4), { row: 1, column: rising(2) }, '740');
    const { grid, addedCycles, addedLevels } = pasteBlock(before, { row: 2, column: rising(1) }, [
      ['1', '2'],
      ['3', '4'],
    ]);
    expect([addedCycles, addedLevels]).toEqual([0, 0]);
    expect(copyBlock(grid, { row: 2, column: rising(1) }, { row: 3, column: rising(2) })).toBe('1\t2\n3\t4');
    expect(readCell(grid, { row: 1, column: rising(2) })).toBe('740');
  });

  it('follows the columns shown, falling ones included', () => {
    const grid = withCycle(emptyGrid(1, 1), 0, { showsFalling: true });
    const pasted = pasteBlock(grid, corner, [['5', '710', '700']]).grid;
    expect(pasted.rows[0]?.cycles[0]).toMatchObject({ rising: '710', falling: '700' });
  });

  it('adds levels and cycles where the block is larger than the table', () => {
    const pasted = pasteBlock(emptyGrid(1, 1), { row: 1, column: level }, [
      ['5', 'a', 'b', 'c'],
      ['10', 'd', 'e', 'f'],
      ['15', 'g', 'h', 'i'],
    ]);
    expect([pasted.addedLevels, pasted.addedCycles, pasted.leftOut]).toEqual([2, 2, 0]);
    expect(readCell(pasted.grid, { row: 3, column: rising(2) })).toBe('i');
  });

  it('says how many cells the largest table has no place for', () => {
    const wide = [Array.from({ length: mostCycles + 3 }, (_, index) => String(index))];
    const pasted = pasteBlock(emptyGrid(1, 1), corner, wide);
    expect(pasted.leftOut).toBe(2);
    expect(pasted.grid.cycles).toHaveLength(mostCycles);
  });

  it('comes back whole when it is copied out again', () => {
    const text = '0\t0\t0\n5\t710\t720\n10\t1440\tnone';
    const { grid } = pasteBlock(emptyGrid(2, 2), corner, readBlock(text));
    expect(copyBlock(grid, { row: 2, column: rising(1) }, corner)).toBe(text);
  });
});

describe('undoing', () => {
  it('takes a paste back to exactly what was there, and forward again', () => {
    const before = writeCell(emptyGrid(1, 1), corner, '52,40');
    const { grid } = pasteBlock(before, corner, [
      ['1', '2'],
      ['3', '4'],
      ['5', '6'],
    ]);
    const history = takeStep(startHistory(before), grid, null);
    const undone = undoStep(history);
    expect(undone.present).toEqual(before);
    expect(redoStep(undone).present).toEqual(grid);
  });

  it('counts typing on in one cell as one step', () => {
    const empty = emptyGrid(1, 1);
    const typed = ['7', '71', '710'].reduce(
      (history, text) => takeStep(history, writeCell(history.present, { row: 1, column: rising(0) }, text), 'a cell'),
      startHistory(empty),
    );
    expect(typed.past).toHaveLength(1);
    expect(undoStep(typed).present).toEqual(empty);
  });

  it('has nothing to undo at the start and nothing to redo after a new step', () => {
    const start = startHistory(emptyGrid(1, 1));
    expect(undoStep(start)).toBe(start);
    const undone = undoStep(takeStep(start, emptyGrid(2, 1), null));
    const anew = takeStep(undone, emptyGrid(3, 1), null);
    expect(redoStep(anew)).toBe(anew);
  });
});
