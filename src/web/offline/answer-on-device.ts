// Look-ups and the list of pairs computed on the device from what it holds of the plant, by the server's own code.
// What it holds is kept by snapshot-keeper.ts; whether that may still be worked by is in domain/lookup/snapshot-age.ts.

import { answerLookup, type PairOnDay } from '../../contract/answer-lookup.ts';
import { answerPairLine } from '../../contract/answer-pair-line.ts';
import type { PairLine } from '../../contract/equipment.ts';
import type { LookupAnswer, LookupQuery } from '../../contract/lookup.ts';
import type { PairTaken, PlantSnapshot } from '../../contract/plant-snapshot.ts';
import type { PlantDay } from '../../domain/dates/plant-day.ts';
import { basisOn } from '../../domain/lookup/pair-snapshot.ts';
import type { Warning } from '../../domain/lookup/warning.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';

/** The day at the plant by the device's clock, and what speaks against the device itself. */
export interface DeviceDay {
  readonly on: PlantDay;
  readonly warnings: readonly Warning[];
}

/** Answers a look-up as the server would on that day. Problems: `unknown-pair`, those of the query. */
export function lookUpOnDevice(
  snapshot: PlantSnapshot,
  tag: string,
  query: LookupQuery,
  day: DeviceDay,
): Outcome<LookupAnswer> {
  const pair = pairOnDay(snapshot, tag, day);
  return pair.ok ? answerLookup(pair.value, query, null) : pair;
}

/** Answers how every pair stands on that day, by tag. */
export function pairLinesOnDevice({ pairs, rules }: PlantSnapshot, { on }: Pick<DeviceDay, 'on'>): readonly PairLine[] {
  return pairs
    .map((pair) => answerPairLine(pair, besides(pair), on, rules))
    .sort((a, b) => a.tag.localeCompare(b.tag, 'en', { numeric: true }));
}

function besides({ waiting, gauge, jack, worksBy }: PairTaken) {
  return {
    waiting,
    readingUnit: gauge.fullScale.unit,
    forceUnit: worksBy?.curve.units.force ?? jack.ratedForce.unit,
  };
}

/** Answers a pair with what look-ups of it rest on that day. Problems: `unknown-pair`, or why nothing can be computed of it. */
export function pairOnDay(snapshot: PlantSnapshot, tag: string, { on, warnings }: DeviceDay): Outcome<PairOnDay> {
  const taken = snapshot.pairs.find(({ pair }) => pair.tag.toLowerCase() === tag.toLowerCase());
  if (taken === undefined) return fail('unknown-pair', `No pair has the tag "${tag}".`, { where: 'pair', given: tag });
  if (taken.problem !== null) return fail(taken.problem.code, taken.problem.message);
  const basis = basisOn(taken, snapshot, on);
  return succeed({ snapshot: taken, basis: { ...basis, besides: [...warnings, ...basis.besides] }, on });
}
