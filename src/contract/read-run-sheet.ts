// A run sheet from a file or a paste, whichever of the two formats it is in.

import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import { fail, type Outcome } from '../domain/problem.ts';
import { readRunSheetCsv } from './run-sheet-csv.ts';
import { readRunSheetJson } from './run-sheet-json.ts';

/** Larger than any run sheet; a file above it is refused unread. */
export const largestSheetBytes = 1_000_000;

export function readRunSheet(text: string): Outcome<RunSheet> {
  if (text.length > largestSheetBytes) {
    return fail(
      'body-too-large',
      `The file has ${text.length} characters; a run sheet has at most ${largestSheetBytes}.`,
      {
        needed: `at most ${largestSheetBytes} characters`,
        given: `${text.length} characters`,
      },
    );
  }
  return text.trimStart().startsWith('{') ? readRunSheetJson(text) : readRunSheetCsv(text);
}
