// Approving or rejecting a submitted calibration: never by the one who entered it, and only exactly what was reviewed.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord } from '../ledger/plant-state.ts';
import { checkMayDropRun } from './doubts-of.ts';
import { findCalibration, findPair } from './find-record.ts';
import { judgeCalibration } from './judge-calibration.ts';
import { type Actor, commandLineActor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

interface By {
  readonly actor: Actor;
  readonly retry: Retry | null;
}

/**
 * Approves a calibration. Problems: `approver-is-enterer`, `already-decided`, `review-stale` when curve, sheet, rules, parts
 * or certificate are no longer what was reviewed, `field-missing` when it fails a rule and the note does not say why it is accepted.
 */
export function approveCalibration(
  plant: Plant,
  number: string,
  approval: { readonly reviewHash: string; readonly note?: string | undefined },
  by: By,
): Promise<Outcome<CalibrationRecord>> {
  return performAction(plant, {
    ...by,
    action: 'approve-calibration',
    decide: (at) => {
      const record = findUndecided(plant, number);
      if (!record.ok) return record;
      if ([by.actor.id, commandLineActor(by.actor.id).id].includes(record.value.enteredBy)) {
        return fail('approver-is-enterer', `${number} was entered by ${by.actor.id}; somebody else must approve it.`, {
          where: 'actor',
          needed: 'a person other than the one who entered the run sheet',
          given: by.actor.id,
        });
      }
      const judged = judgeCalibration(plant, record.value);
      if (!judged.ok) return judged;
      if (judged.value.reviewHash !== approval.reviewHash) {
        return fail('review-stale', `${number} is no longer what was reviewed; read it again before approving.`, {
          where: 'reviewHash',
          needed: judged.value.reviewHash,
          given: approval.reviewHash,
        });
      }
      const note = approval.note?.trim();
      if (judged.value.needsNote && (note ?? '').length < 5) {
        return fail(
          'field-missing',
          'This calibration fails a rule or holds an error; approving it needs a note that says why.',
          {
            where: 'note',
            needed: 'a note of at least five characters',
            given: note ?? '',
          },
        );
      }
      const { response, fit } = judged.value.fit.curve;
      const { rules, rulesHash } = plant.state;
      const body = {
        reviewed: approval.reviewHash,
        ...(note ? { note } : {}),
        curve: { response, degree: fit.degree, coefficients: fit.coefficients },
        certificate: judged.value.parts.certificate,
        parts: judged.value.reviewedParts,
        rulesHash,
        ...(rulesHash === null ? { rules } : {}),
      };
      return succeed([{ at, actor: by.actor.id, kind: 'calibration-approved/2', subject: record.value.number, body }]);
    },
    answer: (subject) => findCalibration(plant.state, subject),
  });
}

/** Rejects a calibration with a reason. Problems: `already-decided`, those of `checkMayDropRun`. */
export function rejectCalibration(
  plant: Plant,
  number: string,
  reason: string,
  by: By,
): Promise<Outcome<CalibrationRecord>> {
  return performAction(plant, {
    ...by,
    action: 'reject-calibration',
    decide: (at) => {
      const record = findUndecided(plant, number);
      if (!record.ok) return record;
      const pair = findPair(plant.state, record.value.pair);
      if (!pair.ok) return pair;
      const mayDrop = checkMayDropRun(plant, pair.value, record.value, by.actor.id);
      if (!mayDrop.ok) return mayDrop;
      return succeed([
        { at, actor: by.actor.id, kind: 'calibration-rejected/1', subject: record.value.number, body: { reason } },
      ]);
    },
    answer: (subject) => findCalibration(plant.state, subject),
  });
}

function findUndecided(plant: Plant, number: string): Outcome<CalibrationRecord> {
  const record = findCalibration(plant.state, number);
  if (!record.ok || record.value.status === 'submitted') return record;
  return fail(
    'already-decided',
    `${record.value.number} was already ${record.value.status} by ${record.value.decidedBy}.`,
    {
      where: 'number',
      given: record.value.status,
    },
  );
}
