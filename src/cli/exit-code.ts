// From an outcome to the exit code scripts rely on.

import type { LookupAnswer } from '../contract/lookup.ts';
import type { ProblemCode } from '../domain/problem.ts';

export const exitCodes = { done: 0, badInput: 1, refused: 2, stop: 3, caution: 4 } as const;

const refusals: readonly ProblemCode[] = [
  'pair-parted',
  'not-calibrated',
  'void-by-event',
  'on-hold',
  'outside-calibrated-range',
  'above-jack-rating',
  'above-gauge-span',
  'above-stress-ceiling',
  'clock-behind-ledger',
  'curve-not-as-approved',
  'nothing-to-release',
  'role-not-allowed',
  'approver-is-enterer',
  'already-decided',
  'already-withdrawn',
  'already-settled',
  'review-stale',
  'ledger-broken',
  'head-not-found',
  'ledger-locked',
  'ledger-conflict',
  'ledger-write-failed',
  'backup-altered',
  'restore-loses-entries',
];

/** Every problem that is not a refusal or a stop is bad input. */
export function exitCodeOfProblem(code: ProblemCode): number {
  if (code === 'release-needed') return exitCodes.stop;
  return refusals.includes(code) ? exitCodes.refused : exitCodes.badInput;
}

export function exitCodeOfLookup(answer: Pick<LookupAnswer, 'outcome' | 'warnings'>, strict: boolean): number {
  if (answer.outcome === 'refused') return exitCodes.refused;
  if (answer.outcome === 'withheld') return exitCodes.stop;
  const cautions = answer.warnings.some(({ weight }) => weight === 'caution');
  return strict && cautions ? exitCodes.caution : exitCodes.done;
}
