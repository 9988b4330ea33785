// A problem beside a field.

import { expect, test } from 'vitest';
import { force } from '../../../../src/domain/units/force.ts';
import { parseQuantity } from '../../../../src/domain/units/quantity.ts';
import { problemSentence } from '../../../../src/web/controls/problem-sentence.ts';

test('what was needed follows the message', () => {
  expect(problemSentence({ message: '"31 stone" is not a unit.', needed: 'N, kN, kip' })).toBe(
    '"31 stone" is not a unit. Needed: N, kN, kip.',
  );
});

test('what the message names already is not said twice', () => {
  expect(problemSentence({ message: 'A force needs a unit: N, kN.', needed: 'N, kN' })).toBe(
    'A force needs a unit: N, kN.',
  );
  expect(problemSentence({ message: 'There is no such pair.' })).toBe('There is no such pair.');
});

test('an unknown unit is answered with the list of those that are known', () => {
  const read = parseQuantity(force, '31 stone');
  expect(read.ok).toBe(false);
  if (!read.ok) expect(problemSentence(read.problem)).toMatch(/Needed: N, kN, .*long-tonf\.$/);
});
