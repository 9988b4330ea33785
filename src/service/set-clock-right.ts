// A clock that ran ahead wrote an entry of a day to come, and every look-up waits for that day: taking it back.
// The entry stays as it is; look-ups of a clock behind the ledger are refused in pair-basis.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant } from './plant.ts';

export interface ClockSetRight {
  /** The instant the clock had run ahead to. */
  readonly ahead: string;
  readonly at: string;
}

/**
 * Says that the clock is right now and was ahead before. Problem: `field-invalid` where the ledger has no entry of a later
 * instant than now.
 */
export async function setClockRight(plant: Plant, reason: string, actor: Actor): Promise<Outcome<ClockSetRight>> {
  let ahead = '';
  return performAction<ClockSetRight>(plant, {
    action: 'set-clock-right',
    actor,
    retry: null,
    decide(at) {
      const { newestAt } = plant.state;
      if (newestAt === null || newestAt <= at) {
        return fail('field-invalid', `No entry of this ledger is of a later instant than now, ${at}.`, {
          needed: 'a ledger with an entry of a day to come',
          given: newestAt ?? 'no entry',
        });
      }
      ahead = newestAt;
      return succeed([{ at, actor: actor.id, kind: 'clock-set-right/1', subject: 'plant', body: { ahead, reason } }]);
    },
    answer: () => succeed({ ahead, at: plant.state.newestAt ?? '' }),
  });
}
