// What happened to a pair and what it does to its standing, by the rule profile. The kinds of event are in pair-event.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import type { RuleName, RuleProfile } from '../rules/rule-profile.ts';
import type { PairEvent, PairEventKind } from './pair-event.ts';

/** By the value of the limit: nothing, a caution, a stop until quality settles it, a curve that is void. */
export const eventEffects = ['none', 'caution', 'stop', 'void'] as const;
export type EventEffect = (typeof eventEffects)[number];

/** The limit of the profile that says what an event does. */
export const ruleOfEvent = {
  dropped: 'eventDropped',
  overload: 'eventOverload',
  repair: 'eventRepair',
  'seals-replaced': 'eventSeals',
  'hose-changed': 'eventHose',
  'pointer-off-zero': 'eventPointer',
  'strand-break': 'eventStrandBreak',
  'member-swapped': 'eventMemberSwapped',
} as const satisfies Readonly<Record<PairEventKind, RuleName>>;

/** What an event does where the profile, set before there were events, does not say. House rule: nothing passes unseen. */
const withoutRule: EventEffect = 'stop';

/** Answers what an event of a kind does by a profile. */
export function effectOfEvent(what: PairEventKind, rules: RuleProfile): EventEffect {
  const limit = rules[ruleOfEvent[what]];
  return limit === undefined ? withoutRule : (eventEffects[limit.value] ?? withoutRule);
}

export interface EventOfPair extends PairEvent {
  readonly seq: number;
  /** By the rules in force when it was reported. */
  readonly effect: EventEffect;
  readonly settled?: { readonly reason: string } | undefined;
}

export interface ActingEvent {
  readonly seq: number;
  readonly what: PairEventKind;
  readonly effect: Exclude<EventEffect, 'none'>;
  /** One sentence. */
  readonly because: string;
}

/**
 * Answers which events of a pair still do something on a day: those not settled, not of a later day and not older than the
 * calibration in force. Which came first on the calibration day itself nobody wrote down, so such an event acts until it is
 * settled. Gravest first. Source: the profile's limits `event...`; the order on one day is a house rule.
 */
export function actingEvents(
  events: readonly EventOfPair[],
  current: { readonly calibratedOn: PlantDay } | null,
  on: PlantDay,
): readonly ActingEvent[] {
  return events
    .flatMap((event): readonly ActingEvent[] => {
      const { effect } = event;
      if (effect === 'none' || event.settled !== undefined || event.on > on) return [];
      if (current !== null && event.on < current.calibratedOn) return [];
      return [{ seq: event.seq, what: event.what, effect, because: writeEvent(event, effect) }];
    })
    .sort((a, b) => eventEffects.indexOf(b.effect) - eventEffects.indexOf(a.effect) || a.seq - b.seq);
}

const sentences: Readonly<Record<PairEventKind, string>> = {
  dropped: 'A part was dropped',
  overload: 'The pair was overloaded',
  repair: 'A part was repaired',
  'seals-replaced': 'Seals were replaced',
  'hose-changed': 'The hose was changed',
  'pointer-off-zero': 'The pointer does not return to zero',
  'strand-break': 'A strand broke',
  'member-swapped': 'A member of the pair was swapped',
};

const follows: Readonly<Record<ActingEvent['effect'], string>> = {
  void: 'the curve is void until the pair is calibrated again',
  stop: 'quality settles it, or the pair is calibrated again',
  caution: 'heed it until the next calibration',
};

function writeEvent({ what, on, note }: PairEvent, effect: ActingEvent['effect']): string {
  const told = note === '' ? '' : ` (${note})`;
  return `${sentences[what]} on ${on}${told}; ${follows[effect]}.`;
}
