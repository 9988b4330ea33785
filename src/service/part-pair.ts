// Parting a pair: either part was taken away, so its curve is void from that day on.

import { daysBetween, type PlantDay } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { PairRecord } from '../ledger/plant-state.ts';
import { findPair } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Parts a pair, today unless another day is named. Problems: `unknown-pair`, `pair-parted` when it was before, `field-invalid` for the day. */
export function partPair(
  plant: Plant,
  tag: string,
  parting: { readonly reason: string; readonly on?: PlantDay | undefined },
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const record = findPair(plant.state, tag);
      if (!record.ok) return record;
      const { pair } = record.value;
      if (pair.parted !== undefined) {
        return fail('pair-parted', `The pair ${pair.tag} was already parted on ${pair.parted.on}.`);
      }
      const on = parting.on ?? plant.today();
      if (daysBetween(plant.today(), on) > 0 || daysBetween(pair.formedOn, on) < 0) {
        return fail('field-invalid', `The pair ${pair.tag} cannot have been parted on ${on}.`, {
          where: 'on',
          needed: `a day from ${pair.formedOn}, when it was formed, to today, ${plant.today()}`,
          given: on,
        });
      }
      const body = { on, reason: parting.reason };
      return succeed([{ at, actor: by.actor.id, kind: 'pair-parted/1', subject: pair.tag, body }]);
    },
    answer: (subject) => findPair(plant.state, subject),
  });
}
