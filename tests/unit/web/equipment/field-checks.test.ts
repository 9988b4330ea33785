// What the forms of the register refuse before anything is sent, and what they only caution at.

import { describe, expect, test } from 'vitest';
import { force } from '../../../../src/domain/units/force.ts';
import {
  dayCheck,
  graduationCaution,
  numberCheck,
  quantityCheck,
  tagCheck,
  wholeCheck,
} from '../../../../src/web/features/equipment/field-checks.ts';

describe('a quantity', () => {
  const check = quantityCheck(force, 'Rated force');

  test('is taken with any unit of its kind', () => {
    expect(check('60 kip')).toBeNull();
    expect(check('267 kN')).toBeNull();
  });

  test('is refused under the name the page gives it', () => {
    expect(check('0 kip')).toMatch(/^Rated force: a force above zero/);
    expect(check('60 psi')).toContain('psi');
  });
});

describe('a number', () => {
  test('of strands is whole, and the words show a whole number', () => {
    const check = wholeCheck(1, 60);
    expect(check('2')).toBeNull();
    expect(check('1,5')).toBe('"1,5" is not a whole number; write it like 2.');
    expect(check('1.5')).toBe('"1.5" is not a whole number; write it like 2.');
    expect(check('61')).toContain('from 1 to 60');
  });

  test('lies above its lower bound where that is excluded', () => {
    const check = numberCheck({ low: 0, high: 10, isAbove: true });
    expect(check('0.25')).toBeNull();
    expect(check('0')).toContain('above 0');
    expect(check('10.5')).toContain('at most 10');
    expect(numberCheck({ low: 1, high: 4 })('1')).toBeNull();
  });
});

test('a tag and a day are refused in words', () => {
  expect([tagCheck('J-1'), dayCheck('2026-02-28')]).toEqual([null, null]);
  expect(tagCheck('J 1')).toContain('cannot be a tag');
  expect(dayCheck('2026-02-30')).toContain('not a day that exists');
});

describe('a graduation', () => {
  test.each(['1 psi', '20 psi', '50 psi', '0.5 bar', '0.002 MPa', '1e2 psi'])('of %s is usual', (typed) => {
    expect(graduationCaution(typed)).toBeNull();
  });

  test.each(['30 psi', '25 psi', '0.4 bar', '150 psi'])('of %s is cautioned at', (typed) => {
    expect(graduationCaution(typed)).toContain(typed);
  });

  test('that cannot be read is left to the check', () => {
    expect([graduationCaution(''), graduationCaution('30'), graduationCaution('0 psi')]).toEqual([null, null, null]);
  });
});
