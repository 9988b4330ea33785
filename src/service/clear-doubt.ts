// Clearing a doubt: somebody looked into it and says why the calibration still holds. The doubt stays visible, struck out.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord } from '../ledger/plant-state.ts';
import { doubtsAbout } from './doubts-of.ts';
import { findCalibration, findPair } from './find-record.ts';
import { type Actor, commandLineActor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/**
 * Clears one doubt about a calibration. Problems: `unknown-calibration`, `unknown-doubt`, `already-settled`,
 * `approver-is-enterer`: to clear it is to approve it once more.
 */
export function clearDoubt(
  plant: Plant,
  number: string,
  { doubt: name, reason }: { readonly doubt: string; readonly reason: string },
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<CalibrationRecord>> {
  return performAction(plant, {
    ...by,
    action: 'clear-doubt',
    decide: (at) => {
      const record = findCalibration(plant.state, number);
      if (!record.ok) return record;
      const pair = findPair(plant.state, record.value.pair);
      if (!pair.ok) return pair;
      const { enteredBy, number: subject } = record.value;
      if ([by.actor.id, commandLineActor(by.actor.id).id].includes(enteredBy)) {
        return fail(
          'approver-is-enterer',
          `${subject} was entered by ${enteredBy}; somebody else clears doubts about it.`,
          {
            where: 'actor',
            needed: 'a person other than the one who entered the run sheet',
            given: by.actor.id,
          },
        );
      }
      const doubts =
        record.value.status === 'approved' ? doubtsAbout(plant, pair.value, record.value, plant.today()) : [];
      const doubt = doubts.find((each) => each.name === name);
      if (doubt === undefined) {
        return fail('unknown-doubt', `Nothing called "${name}" puts ${subject} in doubt.`, {
          where: 'doubt',
          needed: doubts.map((each) => each.name).join('; ') || 'there is no doubt about it',
          given: name,
        });
      }
      if (doubt.cleared !== null) {
        return fail('already-settled', `This doubt was cleared by ${doubt.cleared.by}: ${doubt.cleared.reason}`, {
          where: 'doubt',
          given: name,
        });
      }
      return succeed([{ at, actor: by.actor.id, kind: 'doubt-cleared/1', subject, body: { doubt: name, reason } }]);
    },
    answer: (subject) => findCalibration(plant.state, subject),
  });
}
