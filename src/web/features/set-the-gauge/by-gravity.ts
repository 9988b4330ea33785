// Puts warnings in the order a person must heed them.

import type { LookupAnswer } from '../../../contract/lookup.ts';

type LookupWarning = LookupAnswer['warnings'][number];

const gravity = ['refuse', 'stop', 'caution', 'note'] as const satisfies readonly LookupWarning['weight'][];

/** Answers the same warnings, gravest first; those of one weight stay in the order they came in. */
export function byGravity(warnings: readonly LookupWarning[]): readonly LookupWarning[] {
  return [...warnings].sort((a, b) => gravity.indexOf(a.weight) - gravity.indexOf(b.weight));
}
