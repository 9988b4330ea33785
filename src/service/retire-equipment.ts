// Taking a part out of use: it stays in the register with all that rests on it, and no new pair is formed with it.

import type { z } from 'zod';
import type { RetirementAnswer, retirementBody } from '../contract/correction.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { findPart } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';
import { pairOf } from './show-part.ts';

/**
 * Takes a part out of use, today unless another day is named. Problems: `unknown-equipment`, `part-retired` when it was
 * before, `part-in-use` while a pair has it, `date-in-future`.
 */
export function retireEquipment(
  plant: Plant,
  tag: string,
  { on: asked, reason }: z.output<typeof retirementBody>,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<RetirementAnswer>> {
  return performAction(plant, {
    ...by,
    action: 'retire-equipment',
    decide: (at) => {
      const part = findPart(plant.state, tag);
      if (!part.ok) return part;
      const subject = part.value.tag;
      const retired = plant.state.retired.get(subject);
      if (retired !== undefined) {
        return fail('part-retired', `${subject} was already taken out of use on ${retired.on}: ${retired.reason}`, {
          where: 'tag',
          given: subject,
        });
      }
      const pair = pairOf(plant.state, subject);
      if (pair !== null) {
        return fail('part-in-use', `${subject} belongs to pair ${pair}; part that pair first.`, {
          where: 'tag',
          needed: 'a part that is in no pair',
          given: subject,
        });
      }
      const on = asked ?? plant.today();
      if (daysBetween(plant.today(), on) > 0) {
        return fail('date-in-future', `${subject} cannot have been taken out of use on ${on}, after today.`, {
          where: 'on',
          needed: `${plant.today()} or earlier`,
          given: on,
        });
      }
      return succeed([{ at, actor: by.actor.id, kind: 'equipment-retired/1', subject, body: { on, reason } }]);
    },
    answer: (subject) => {
      const retired = plant.state.retired.get(subject);
      return retired === undefined ? fail('not-found', `${subject} is in use.`) : succeed({ tag: subject, ...retired });
    },
  });
}
