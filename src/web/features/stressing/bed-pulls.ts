// The pulls of a bed as they follow each other: which strands come next, what a re-pull repeats, what keeping one does.

import type { BedPattern } from '../../../domain/stressing/bed-pattern.ts';
import type { PullEntry } from '../../../domain/stressing/pull.ts';
import type { BedDraft, KeptPull, PullText } from './bed-draft.ts';

/** Answers the strands to pull next, as many as the jack pulls together; fewer or none at the end. */
export function nextPositions(
  { positions }: BedPattern,
  pulls: readonly KeptPull[],
  together: number,
): readonly string[] {
  const pulled = new Set(pulls.flatMap((pull) => pull.positions));
  return positions
    .map(({ id }) => id)
    .filter((id) => !pulled.has(id))
    .slice(0, together);
}

const blank = { preload: '', final: '', elongation: '', reason: '', note: '' };

/** Answers a pull to type: of the strands that come next, or null where all are pulled. */
export function openNext(pattern: BedPattern, pulls: readonly KeptPull[], together: number): PullText | null {
  const positions = nextPositions(pattern, pulls, together);
  return positions.length === together ? { positions: [...positions], ...blank, repullOf: null } : null;
}

/** Answers the pull that repeats the last one of a strand; null where the strand was not pulled. */
export function openAgain(pulls: readonly KeptPull[], id: string): PullText | null {
  const index = pulls.findLastIndex(({ positions }) => positions.includes(id));
  const before = pulls[index];
  return before === undefined ? null : { positions: [...before.positions], ...blank, repullOf: index + 1 };
}

/** Answers the draft with the open pull kept, and the next one open: the same again, or what follows in the pattern. */
export function keepPull(
  draft: BedDraft,
  entry: PullEntry,
  next: { readonly pattern: BedPattern; readonly together: number; readonly again: boolean },
): BedDraft {
  if (draft.open === null) return draft;
  const kept: KeptPull = { ...draft.open, gaugeForce: entry.gaugeForce };
  const pulls = [...draft.pulls, kept];
  const [first = ''] = kept.positions;
  const open = next.again ? openAgain(pulls, first) : openNext(next.pattern, pulls, next.together);
  return { ...draft, pulls, open };
}
