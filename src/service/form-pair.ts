// Forming a pair: one jack with one gauge, neither of them in another pair.

import type { z } from 'zod';
import type { pairBody } from '../contract/equipment.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
import type { Equipment } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { PairRecord, PlantState } from '../ledger/plant-state.ts';
import { checkTagFree, findEquipment, findPair } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/** Forms a pair. Problems: `tag-taken`, `unknown-equipment`, `part-retired`, `part-in-use`, `date-in-future`. */
export function formPair(
  plant: Plant,
  input: z.output<typeof pairBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<PairRecord>> {
  return performAction(plant, {
    ...by,
    action: 'register-equipment',
    decide: (at) => {
      const { state } = plant;
      const free = checkTagFree(state, input.tag);
      if (!free.ok) return free;
      const jack = findEquipment(state, 'jack', input.jack, 'jack');
      if (!jack.ok) return jack;
      const gauge = findEquipment(state, 'gauge', input.gauge, 'gauge');
      if (!gauge.ok) return gauge;
      const pump = input.pump === undefined ? null : findEquipment(state, 'pump', input.pump, 'pump');
      if (pump !== null && !pump.ok) return pump;
      const inService = checkInService(state, [jack.value, gauge.value, ...(pump === null ? [] : [pump.value])]);
      if (!inService.ok) return inService;
      const inUse = checkPartsFree(state, jack.value.tag, gauge.value.tag);
      if (!inUse.ok) return inUse;
      const formedOn = input.formedOn ?? plant.today();
      if (daysBetween(plant.today(), formedOn) > 0) {
        return fail('date-in-future', `A pair cannot have been formed on ${formedOn}, after today.`, {
          where: 'formedOn',
          needed: `${plant.today()} or earlier`,
          given: formedOn,
        });
      }
      const pair = {
        tag: input.tag,
        jack: jack.value.tag,
        gauge: gauge.value.tag,
        ...(pump === null ? {} : { pump: pump.value.tag }),
        ...(input.hose === undefined ? {} : { hose: input.hose }),
        formedOn,
      };
      return succeed([{ at, actor: by.actor.id, kind: 'pair-formed/1', subject: input.tag, body: { pair } }]);
    },
    answer: (tag) => findPair(plant.state, tag),
  });
}

function checkInService(state: PlantState, parts: readonly Equipment[]): Outcome<void> {
  for (const { kind, tag } of parts) {
    const retired = state.retired.get(tag);
    if (retired === undefined) continue;
    return fail('part-retired', `The ${kind} ${tag} was taken out of use on ${retired.on}: ${retired.reason}`, {
      where: kind,
      needed: `a ${kind} in use`,
      given: tag,
    });
  }
  return succeed(undefined);
}

function checkPartsFree(state: PlantState, jack: string, gauge: string): Outcome<void> {
  for (const { pair } of state.pairs.values()) {
    if (pair.parted !== undefined) continue;
    if (pair.jack === jack) return partInUse('jack', jack, pair.tag);
    if (pair.gauge === gauge) return partInUse('gauge', gauge, pair.tag);
  }
  return succeed(undefined);
}

function partInUse(kind: 'jack' | 'gauge', tag: string, pair: string): Outcome<never> {
  return fail('part-in-use', `The ${kind} ${tag} belongs to pair ${pair}; part that pair first.`, {
    where: kind,
    needed: `a ${kind} that is in no pair`,
    given: tag,
  });
}
