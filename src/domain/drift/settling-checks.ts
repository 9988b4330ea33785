// Which check would settle whether a pair or a strand is the cause, as codes; the words are the pages'.

import type { Pull } from './bed-ratios.ts';
import type { Cause, GaugeOrStrandVerdict } from './gauge-or-strand.ts';

export type SettlingCheck =
  /** Read the pair's gauge against a master gauge or a load cell. */
  | { readonly check: 'master-gauge'; readonly pair: string }
  | { readonly check: 'pull-reel-with-another-pair'; readonly reel: string; readonly pair: string }
  | { readonly check: 'pull-another-reel-with-pair'; readonly pair: string; readonly reel: string }
  /** Compare area and modulus of the reel with its mill certificate. */
  | { readonly check: 'mill-certificate'; readonly reel: string }
  /** Look at the length, the anchorages and the temperature of the bed. */
  | { readonly check: 'bed-record'; readonly bed: string }
  | { readonly check: 'more-pulls'; readonly units: number };

/**
 * Answers which checks would settle a verdict, the one that settles most first; none where nothing stands out.
 * A suspect pair: the master gauge. A suspect reel: its mill certificate, and another pair where only one pulled it. Not told
 * apart: whichever was pulled only together is pulled apart, the reel by another pair or the pair on another reel, then the
 * master gauge. Source: design of the program, "Calculations" 13 (c); the order is a house rule.
 */
export function settlingChecks(verdict: GaugeOrStrandVerdict, pulls: readonly Pull[]): readonly SettlingCheck[] {
  switch (verdict.kind) {
    case 'too-little-data':
      return [{ check: 'more-pulls', units: verdict.needed - verdict.given }];
    case 'no-scatter':
    case 'nothing-stands-out':
      return [];
    case 'likelier':
      return verdict.suspects.flatMap((name) => ofSuspect(verdict.cause, name, pulls));
    case 'cannot-be-told-apart': {
      const namesOf = (cause: Cause) => verdict.suspects.filter((each) => each.cause === cause).map(({ name }) => name);
      const [pair] = namesOf('pair');
      const [reel] = namesOf('reel');
      const apart = pair === undefined || reel === undefined ? [] : pulledApart(pair, reel, pulls);
      return [...apart, ...verdict.suspects.flatMap(({ cause, name }) => ofSuspect(cause, name, pulls))].filter(
        (each, index, all) => all.findIndex((other) => JSON.stringify(other) === JSON.stringify(each)) === index,
      );
    }
  }
}

function ofSuspect(cause: Cause, name: string, pulls: readonly Pull[]): readonly SettlingCheck[] {
  if (cause === 'pair') return [{ check: 'master-gauge', pair: name }];
  if (cause === 'bed') return [{ check: 'bed-record', bed: name }];
  const pairs = new Set(pulls.filter(({ reel }) => reel === name).map(({ pair }) => pair));
  const [only] = pairs;
  const other = pairs.size === 1 && only !== undefined ? anotherThan(only, 'pair', pulls) : undefined;
  const certificate: SettlingCheck = { check: 'mill-certificate', reel: name };
  return other === undefined
    ? [certificate]
    : [certificate, { check: 'pull-reel-with-another-pair', reel: name, pair: other }];
}

function pulledApart(pair: string, reel: string, pulls: readonly Pull[]): readonly SettlingCheck[] {
  const otherPair = anotherThan(pair, 'pair', pulls);
  if (otherPair !== undefined) return [{ check: 'pull-reel-with-another-pair', reel, pair: otherPair }];
  const otherReel = anotherThan(reel, 'reel', pulls);
  return otherReel === undefined ? [] : [{ check: 'pull-another-reel-with-pair', pair, reel: otherReel }];
}

/** The one that pulled, or was pulled, most besides: it is known best. */
function anotherThan(name: string, of: 'pair' | 'reel', pulls: readonly Pull[]): string | undefined {
  const counts = new Map<string, number>();
  for (const pull of pulls) if (pull[of] !== name) counts.set(pull[of], (counts.get(pull[of]) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0];
}
