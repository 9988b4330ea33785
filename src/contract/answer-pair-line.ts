// One line of a list of pairs, by the same code on the server and on a device.

import type { PlantDay } from '../domain/dates/plant-day.ts';
import { isPartedOn, type PairFacts, standingOn } from '../domain/lookup/pair-snapshot.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import type { PairLine } from './equipment.ts';

/** Answers how a pair is listed on a day. */
export function answerPairLine(
  facts: PairFacts,
  besides: Pick<PairLine, 'waiting' | 'readingUnit' | 'forceUnit'>,
  on: PlantDay,
  rules: RuleProfile,
): PairLine {
  const { pair, inForce } = facts;
  const { standing, because, dueDate, daysLeft } = standingOn(facts, on, rules);
  return {
    tag: pair.tag,
    jack: pair.jack,
    gauge: pair.gauge,
    pump: pair.pump ?? null,
    standing,
    because,
    calibratedOn: inForce?.calibratedOn ?? null,
    dueDate,
    daysLeft,
    waiting: besides.waiting,
    parted: isPartedOn(pair, on),
    readingUnit: besides.readingUnit,
    forceUnit: besides.forceUnit,
  };
}
