// Finds the problem that belongs beside one field of a form.

import { ProblemError } from '../app/http-client.ts';
import { problemSentence } from './problem-sentence.ts';

/** Answers the words to show beside the field, null when the error is not about it. `where` may go deeper than the field. */
export function problemForField(error: unknown, field: string): string | null {
  if (!(error instanceof ProblemError)) return null;
  const { code, where, detail, needed } = error.problem;
  if (where === undefined) return null;
  const isHere = where === field || where.startsWith(`${field}.`) || where.startsWith(`${field}[`);
  return isHere ? problemSentence({ message: detail, code, needed }) : null;
}
