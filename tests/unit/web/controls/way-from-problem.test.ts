// Where a problem leads on to.

import { expect, test } from 'vitest';
import type { ProblemCode } from '../../../../src/domain/problem.ts';
import { NoConnectionError, ProblemError } from '../../../../src/web/app/http-client.ts';
import { wayFromProblem } from '../../../../src/web/controls/way-from-problem.ts';

const problem = (code: ProblemCode): ProblemError => new ProblemError({ detail: 'There is no such thing.', code });

test('what does not exist leads to the page that lists what does', () => {
  expect(wayFromProblem(problem('unknown-pair'))?.href).toBe('/equipment');
  expect(wayFromProblem(problem('unknown-calibration'))?.href).toBe('/review');
});

test('what may pass is tried again', () => {
  expect(wayFromProblem(problem('ledger-locked'))).toBeNull();
  expect(wayFromProblem(new NoConnectionError('no answer'))).toBeNull();
});
