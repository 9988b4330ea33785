// Putting a pair on hold and lifting the hold, each with a reason.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { findPair } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

interface By {
  readonly actor: Actor;
  readonly retry: Retry | null;
}

/** Places a hold; everybody at the bed may. Problems: `unknown-pair`, `on-hold` when there is one already. */
export function placeHold(plant: Plant, tag: string, reason: string, by: By): Promise<Outcome<PairRecord>> {
  return changeHold(plant, 'place-hold', tag, by, (record, at) =>
    record.hold === null
      ? succeed([{ at, actor: by.actor.id, kind: 'hold-placed/1', subject: record.pair.tag, body: { reason } }])
      : fail('on-hold', `The pair ${record.pair.tag} is already on hold: ${record.hold.reason}`),
  );
}

/** Lifts a hold; quality alone may. Problems: `unknown-pair`, `field-invalid` when there is none. */
export function liftHold(plant: Plant, tag: string, reason: string, by: By): Promise<Outcome<PairRecord>> {
  return changeHold(plant, 'lift-hold', tag, by, (record, at) =>
    record.hold !== null
      ? succeed([{ at, actor: by.actor.id, kind: 'hold-lifted/1', subject: record.pair.tag, body: { reason } }])
      : fail('field-invalid', `The pair ${record.pair.tag} is not on hold.`, { where: 'pair', given: record.pair.tag }),
  );
}

function changeHold(
  plant: Plant,
  action: 'place-hold' | 'lift-hold',
  tag: string,
  by: By,
  entriesFor: (record: PairRecord, at: string) => ReturnType<Parameters<typeof performAction>[1]['decide']>,
): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action,
    decide: (at) => {
      const record = findPair(plant.state, tag);
      return record.ok ? entriesFor(record.value, at) : record;
    },
    answer: (subject) => findPair(plant.state, subject),
  });
}
