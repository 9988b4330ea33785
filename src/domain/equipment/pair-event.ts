// What can happen to a pair or one of its parts between calibrations. What each does to the standing is said by the rules.

import type { PlantDay } from '../dates/plant-day.ts';

/** Words of the trade: common practice, no source for the list as a whole. */
export const pairEventKinds = [
  'dropped',
  'overload',
  'repair',
  'seals-replaced',
  'hose-changed',
  'pointer-off-zero',
  'strand-break',
  'member-swapped',
] as const;
export type PairEventKind = (typeof pairEventKinds)[number];

export interface PairEvent {
  readonly what: PairEventKind;
  readonly on: PlantDay;
  readonly note: string;
}
