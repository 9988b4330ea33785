// Invented pulls of a plant with one planted cause, and what the verdict of gauge or strand makes of them. Used by the
// script in tests/benchmark/ and by a smaller test beside the verdict's.

import { addPlantDays } from '../src/domain/dates/plant-day.ts';
import type { Pull } from '../src/domain/drift/bed-ratios.ts';
import { type Cause, gaugeOrStrand, noticeableOfPractice } from '../src/domain/drift/gauge-or-strand.ts';
import { outcomeValue } from './outcome-value.ts';
import { seededScatter, seededUniform } from './unit/domain/calibration/seeded-scatter.ts';

/** How pairs and reels meet. Every bed is pulled by one pair from two reels but where it says otherwise. */
export const layouts = {
  /** 4 pairs, 8 reels, 24 beds, whichever came. */
  mixed: { pairs: 4, reels: 8, beds: 24 },
  /** The same over 10 beds. */
  'mixed, few beds': { pairs: 4, reels: 8, beds: 10 },
  /** Reels are used up one after the other, two at a time for 6 beds; 4 pairs as they come. */
  'reels one after the other': { pairs: 4, reels: 8, beds: 24 },
  /** 2 pairs, so that either is as far from the other. */
  'two pairs': { pairs: 2, reels: 8, beds: 24 },
  /** Each pair has its own two reels and nobody else pulls them. */
  'own reels': { pairs: 4, reels: 8, beds: 24 },
  /** Each pair has its own two reels, but for 2 beds of 24 in which a neighbour pulled them. */
  'own reels, two beds lent': { pairs: 4, reels: 8, beds: 24 },
} as const;
export type Layout = keyof typeof layouts;

export type Planted = 'none' | 'pair' | 'reel';

/** In %: what there is when nothing is wrong, and what is planted. Scatter of practice (common practice, no source). */
export interface PlantedSize {
  readonly planted: number;
  readonly pairs: number;
  readonly reels: number;
  readonly beds: number;
  readonly pull: number;
}
export const sizeOfPractice: PlantedSize = { planted: 3, pairs: 0.3, reels: 0.3, beds: 0.4, pull: 1 };

const pullsOfReel = 10;

export function inventPulls(layout: Layout, planted: Planted, size: PlantedSize, seed: number): readonly Pull[] {
  const { pairs, reels, beds } = layouts[layout];
  const normal = seededScatter(seed);
  const uniform = seededUniform(seed + 1_000_003);
  const any = (count: number): number => Math.floor(uniform() * count);
  const effectsOf = (count: number, sd: number, off: boolean): readonly number[] =>
    Array.from({ length: count }, (_, index) => sd * normal() + (off && index === 0 ? size.planted : 0));
  const pairEffects = effectsOf(pairs, size.pairs, planted === 'pair');
  const reelEffects = effectsOf(reels, size.reels, planted === 'reel');
  return Array.from({ length: beds }, (_, bed) => {
    const pair = layout === 'own reels' || layout === 'own reels, two beds lent' ? bed % pairs : any(pairs);
    const lent = layout === 'own reels, two beds lent' && bed < 2 ? 1 : 0;
    const first = reelOf(layout, { bed, pair: (pair + lent) % pairs, any: any(reels), reels });
    const bedEffect = size.beds * normal();
    return [
      first,
      layout.startsWith('mixed') || layout === 'two pairs' ? (first + 1 + any(reels - 1)) % reels : first + 1,
    ].flatMap((reel) =>
      Array.from({ length: pullsOfReel }, (): Pull => {
        const off = (pairEffects[pair] ?? 0) + (reelEffects[reel] ?? 0) + bedEffect + size.pull * normal();
        return {
          day: addPlantDays('2026-01-01', bed),
          bed: 'A',
          pair: `P-${pair}`,
          reel: `R-${reel}`,
          gaugeForceKn: 150 * (1 + off / 100),
          elongationForceKn: 150,
        };
      }),
    );
  }).flat();
}

function reelOf(
  layout: Layout,
  { bed, pair, any, reels }: { bed: number; pair: number; any: number; reels: number },
): number {
  if (layout === 'reels one after the other') return 2 * Math.floor(bed / 6);
  if (layout === 'own reels' || layout === 'own reels, two beds lent') return (2 * pair) % reels;
  return any;
}

export type Found =
  | 'right'
  | 'right among several'
  | 'right kind, wrong one'
  | 'wrong kind'
  | 'not told apart'
  | 'nothing'
  | 'too little';
export const outcomes: readonly Found[] = [
  'right',
  'right among several',
  'right kind, wrong one',
  'wrong kind',
  'not told apart',
  'nothing',
  'too little',
];

/** What was made of it; with nothing planted `right` is nothing, and any cause named is the wrong kind. */
export function judgePlanted(pulls: readonly Pull[], planted: Planted): Found {
  const { verdict } = outcomeValue(
    gaugeOrStrand(pulls, { causes: ['pair', 'reel'], noticeablePercent: noticeableOfPractice, level: 0.95 }),
  );
  if (verdict.kind === 'too-little-data' || verdict.kind === 'no-scatter') return 'too little';
  if (verdict.kind === 'cannot-be-told-apart') return 'not told apart';
  if (verdict.kind === 'nothing-stands-out') return planted === 'none' ? 'right' : 'nothing';
  if (planted === 'none' || verdict.cause !== (planted satisfies Cause)) return 'wrong kind';
  const right = planted === 'pair' ? 'P-0' : 'R-0';
  if (!verdict.suspects.includes(right)) return 'right kind, wrong one';
  return verdict.suspects.length === 1 ? 'right' : 'right among several';
}

/** How often each came out, over so many invented plants. */
export function confusion(
  layout: Layout,
  planted: Planted,
  { size, trials, seed }: { readonly size: PlantedSize; readonly trials: number; readonly seed: number },
): Readonly<Record<Found, number>> {
  const counts: Record<Found, number> = {
    right: 0,
    'right among several': 0,
    'right kind, wrong one': 0,
    'wrong kind': 0,
    'not told apart': 0,
    nothing: 0,
    'too little': 0,
  };
  for (let trial = 0; trial < trials; trial += 1) {
    counts[judgePlanted(inventPulls(layout, planted, size, seed + trial * 7919), planted)] += 1;
  }
  return counts;
}
