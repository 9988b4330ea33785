// Why a file was not imported, in one sentence after another.

import { expect, test } from 'vitest';
import { readRunSheet } from '../../../../src/contract/read-run-sheet.ts';
import { importProblemText } from '../../../../src/web/features/calibrate/import-problem-text.ts';

function textFor(sheet: string): string {
  const read = readRunSheet(sheet);
  if (read.ok) throw new Error('The sheet was read.');
  return importProblemText(read.problem);
}

test('names line and column of a bad cell, and what is needed there', () => {
  expect(textFor('run,direction,force (kN),reading (bar)\n1,up,0,0\n1,up,100,x\n')).toBe(
    'Line 3, column reading: "x" is not a number. Needed: a number, for example 1234.5.',
  );
});

test('says the header that is needed and the line that was given, and the line once', () => {
  const text = textFor('Dear Sir,');
  expect(text).toMatch(/^Line 1 is not the header of a run sheet\. Needed: a header such as run,direction/);
  expect(text).toMatch(/Given: Dear Sir,$/);
  expect(text.match(/line 1/gi)).toHaveLength(1);
});
