// What a conditional verdict by the guard band means, in one line.

import type { AcceptanceResult } from '../../domain/calibration/acceptance-result.ts';
import { words } from '../words/desk-words.ts';

/** Nothing where no result was judged with a guard band to a conditional verdict. */
export function ConditionalNote({ results }: { readonly results: readonly AcceptanceResult[] }) {
  const guarded = results.find(
    ({ verdict, guardedLimit }) => guardedLimit !== null && verdict.startsWith('conditional'),
  );
  const note = guarded === undefined ? null : words.charts.conditional(guarded.verdict);
  return note === null ? null : <p>{note}</p>;
}
