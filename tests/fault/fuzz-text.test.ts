// Modest runs of run sheets and of command lines made to break their readers; fuzz-many.ts runs many more of the same.

import { expect, it } from 'vitest';
import { fuzzCommandLine } from './fuzz-command-line.ts';
import { fuzzRunSheetCsv } from './fuzz-run-sheet-csv.ts';

it('reads a run sheet to the numbers in its cells, or refuses it', () => {
  const figures = fuzzRunSheetCsv(3000, 20_261);
  expect(figures.faults).toEqual([]);
  expect(Math.min(figures.accepted, figures.refused)).toBeGreaterThan(300);
});

it('ends every command with a documented exit code and JSON where it was asked for', async () => {
  const figures = await fuzzCommandLine(400, 20_262);
  expect(figures.faults).toEqual([]);
  expect(Math.min(figures.accepted, figures.refused)).toBeGreaterThan(20);
}, 120_000);
