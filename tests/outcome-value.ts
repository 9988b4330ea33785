// The value of an outcome that must have succeeded for the test to mean anything.

import type { Outcome } from '../src/domain/problem.ts';

export function outcomeValue<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`${outcome.problem.code}: ${outcome.problem.message}`);
  return outcome.value;
}
