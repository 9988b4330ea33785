// Reporting what happened to a pair, and settling it. What an event does to the standing comes from the rules.

import type { PairEventAnswer } from '../contract/event.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { actingEvents } from '../domain/equipment/event-effect.ts';
import type { PairEvent } from '../domain/equipment/pair-event.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { findPair } from './find-record.ts';
import { approvedCalibrations } from './pair-basis.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

interface By {
  readonly actor: Actor;
  readonly retry: Retry | null;
}

/** Reports an event. Problems: `unknown-pair`, `pair-parted`, `date-in-future`, `field-invalid` for a day before the pair. */
export function reportEvent(plant: Plant, tag: string, event: PairEvent, by: By): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action: 'report-event',
    decide: (at) => {
      const record = findPair(plant.state, tag);
      if (!record.ok) return record;
      const { parted, formedOn, tag: subject } = record.value.pair;
      const today = plant.today();
      if (event.on > today) {
        return fail('date-in-future', `${event.on} lies after today, ${today}.`, {
          where: 'on',
          needed: `${today} or earlier`,
          given: event.on,
        });
      }
      if (event.on < formedOn) {
        return fail('field-invalid', `The pair ${subject} was formed on ${formedOn}.`, {
          where: 'on',
          needed: `${formedOn} or later`,
          given: event.on,
        });
      }
      if (parted !== undefined && parted.on < event.on) {
        return fail('pair-parted', `The pair ${subject} was parted on ${parted.on}: ${parted.reason}`, {
          given: subject,
        });
      }
      return succeed([{ at, actor: by.actor.id, kind: 'event-reported/1', subject, body: { event } }]);
    },
    answer: (subject) => findPair(plant.state, subject),
  });
}

/** Settles an event with a reason: it does nothing from then on. Problems: `unknown-pair`, `unknown-event`, `already-settled`. */
export function settleEvent(
  plant: Plant,
  tag: string,
  { seq, reason }: { readonly seq: number; readonly reason: string },
  by: By,
): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action: 'settle-event',
    decide: (at) => {
      const record = findPair(plant.state, tag);
      if (!record.ok) return record;
      const subject = record.value.pair.tag;
      const event = record.value.events.find((each) => each.seq === seq);
      if (event === undefined) {
        return fail('unknown-event', `Entry ${seq} reports no event of pair ${subject}.`, {
          where: 'event',
          needed: record.value.events.map((each) => each.seq).join(', ') || 'nothing was reported of this pair',
          given: String(seq),
        });
      }
      if (event.settled !== undefined) {
        return fail('already-settled', `This event was settled by ${event.settled.by}: ${event.settled.reason}`, {
          where: 'event',
          given: String(seq),
        });
      }
      return succeed([{ at, actor: by.actor.id, kind: 'event-settled/1', subject, body: { event: seq, reason } }]);
    },
    answer: (subject) => findPair(plant.state, subject),
  });
}

/** Answers the events of a pair, the latest first, each with what it does on a day by the rules it was reported under. */
export function listEvents(plant: Plant, record: PairRecord, on: PlantDay): readonly PairEventAnswer[] {
  const [current = null] = approvedCalibrations(plant, record, on);
  const acting = actingEvents(record.events, current, on);
  return [...record.events]
    .map(({ seq, what, on: day, note, reportedBy, reportedAt, effect, settled }) => ({
      seq,
      what,
      on: day,
      note,
      reportedBy,
      reportedAt,
      settled: settled ?? null,
      byRules: effect,
      acting: acting.find((each) => each.seq === seq)?.effect ?? ('none' as const),
    }))
    .sort((a, b) => b.on.localeCompare(a.on) || b.seq - a.seq);
}
