// Withdrawing a calibration: no look-up rests on it from then on, and the one before it is in force again.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord } from '../ledger/plant-state.ts';
import { checkMayDropRun } from './doubts-of.ts';
import { findCalibration, findPair } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

/**
 * Withdraws a calibration that was approved, or one that waits for a decision. Problems: `unknown-calibration`,
 * `already-withdrawn`, `already-decided` for one that was rejected, those of `checkMayDropRun`.
 */
export function withdrawCalibration(
  plant: Plant,
  number: string,
  reason: string,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<CalibrationRecord>> {
  return performAction(plant, {
    ...by,
    action: 'withdraw-calibration',
    decide: (at) => {
      const record = findCalibration(plant.state, number);
      if (!record.ok) return record;
      const { number: subject, status, withdrawn, decidedBy } = record.value;
      const facts = { where: 'number', given: subject };
      if (status === 'withdrawn') {
        const message = `${subject} was already withdrawn by ${withdrawn?.by}: ${withdrawn?.reason}`;
        return fail('already-withdrawn', message, facts);
      }
      if (status === 'rejected') {
        return fail('already-decided', `${subject} was rejected by ${decidedBy}; no look-up rests on it.`, facts);
      }
      const pair = findPair(plant.state, record.value.pair);
      if (!pair.ok) return pair;
      const mayDrop = checkMayDropRun(plant, pair.value, record.value, by.actor.id);
      if (!mayDrop.ok) return mayDrop;
      return succeed([{ at, actor: by.actor.id, kind: 'calibration-withdrawn/1', subject, body: { reason } }]);
    },
    answer: (subject) => findCalibration(plant.state, subject),
  });
}
