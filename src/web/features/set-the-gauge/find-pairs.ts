// Finds pairs by any part of a tag and puts those a crew can use first.

import type { PairLine } from '../../../contract/equipment.ts';
import type { Standing } from '../../../domain/lookup/standing.ts';

const usefulness: readonly Standing[] = [
  'ready',
  'due-soon',
  'drifting',
  'overdue',
  'in-doubt',
  'on-hold',
  'not-calibrated',
];

const byTag = new Intl.Collator('en', { numeric: true });

/** Answers the pairs whose own, jack's or gauge's tag holds the text, usable ones first, parted ones last. */
export function findPairs(pairs: readonly PairLine[], text: string): readonly PairLine[] {
  const wanted = text.trim().toLowerCase();
  return pairs
    .filter(({ tag, jack, gauge }) => [tag, jack, gauge].some((part) => part.toLowerCase().includes(wanted)))
    .sort(
      (a, b) =>
        Number(a.parted) - Number(b.parted) ||
        usefulness.indexOf(a.standing) - usefulness.indexOf(b.standing) ||
        byTag.compare(a.tag, b.tag),
    );
}
