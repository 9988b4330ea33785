import { describe, expect, it } from 'vitest';
import {
  actingEvents,
  type EventOfPair,
  effectOfEvent,
  ruleOfEvent,
} from '../../../../src/domain/equipment/event-effect.ts';
import { pairEventKinds } from '../../../../src/domain/equipment/pair-event.ts';
import type { RuleProfile } from '../../../../src/domain/rules/rule-profile.ts';
import { shippedProfiles } from '../../../../src/domain/rules/shipped-profiles.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const current = { calibratedOn: '2026-03-02' };
const event = (facts: Partial<EventOfPair> = {}, profile = rules): EventOfPair => {
  const { what = 'dropped' } = facts;
  return { seq: 20, what, on: '2026-04-01', note: '', effect: effectOfEvent(what, profile), ...facts };
};
const act = (events: readonly EventOfPair[], on = '2026-06-01') =>
  actingEvents(events, current, on).map(({ what, effect }) => `${what}: ${effect}`);

describe('what an event does', () => {
  it.each(pairEventKinds)('is said by the rules for every kind: %s', (what) => {
    for (const [value, effect] of (['none', 'caution', 'stop', 'void'] as const).entries()) {
      const profile = {
        ...rules,
        [ruleOfEvent[what]]: { value, provenance: 'plant', source: 'a test' },
      } as RuleProfile;
      expect(effectOfEvent(what, profile)).toBe(effect);
      expect(act([event({ what }, profile)])).toEqual(effect === 'none' ? [] : [`${what}: ${effect}`]);
    }
  });

  it('is a stop by rules that were set before there were events', () => {
    const { eventDropped: _without, ...older } = rules;
    expect(effectOfEvent('dropped', older)).toBe('stop');
    for (const profile of shippedProfiles) expect(profile.eventRepair?.value).toBe(3);
  });

  it('ends with the next calibration of a later day: which came first on one day nobody wrote down', () => {
    expect(act([event({ on: '2026-03-01' })])).toEqual([]);
    expect(act([event({ on: '2026-03-02' })])).toEqual(['dropped: stop']);
    expect(act([event({ on: '2026-03-03' })])).toEqual(['dropped: stop']);
  });

  it('ends when it is settled, and begins on its day', () => {
    expect(act([event({ settled: { reason: 'checked against the master gauge' } })])).toEqual([]);
    expect(act([event()], '2026-03-31')).toEqual([]);
    expect(act([event()], '2026-04-01')).toEqual(['dropped: stop']);
  });

  it('comes gravest first, with one sentence that says what follows', () => {
    const events = [event(), event({ seq: 21, what: 'repair', note: 'new piston rod' })];
    expect(act(events)).toEqual(['repair: void', 'dropped: stop']);
    const [gravest] = actingEvents(events, current, '2026-06-01');
    expect(gravest?.because).toBe(
      'A part was repaired on 2026-04-01 (new piston rod); the curve is void until the pair is calibrated again.',
    );
  });

  it('also holds for a pair that was never calibrated', () => {
    expect(actingEvents([event()], null, '2026-06-01')).toHaveLength(1);
  });
});
