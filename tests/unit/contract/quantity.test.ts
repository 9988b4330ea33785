import { describe, expect, it } from 'vitest';
import { readPositiveQuantity, readSignedQuantity } from '../../../src/contract/quantity.ts';
import { force } from '../../../src/domain/units/force.ts';

describe('a quantity above zero, in a body or a file', () => {
  it('is kept as typed, from text and from its parts alike', () => {
    expect(readPositiveQuantity(force, '31 Kips', 'force')).toEqual({ ok: true, value: { value: 31, unit: 'kip' } });
    expect(readPositiveQuantity(force, { value: 31, unit: 'KN' }, 'force')).toEqual({
      ok: true,
      value: { value: 31, unit: 'kN' },
    });
    expect(readPositiveQuantity(force, '1e-9 N', 'force')).toMatchObject({ ok: true });
    expect(readPositiveQuantity(force, '1e12 kip', 'force')).toMatchObject({ ok: true });
  });

  it.each([
    ['0 kip', 'number-out-of-range'],
    ['-3 kip', 'number-out-of-range'],
    ['\u22123 kip', 'number-out-of-range'],
    ['1e-400 kip', 'number-out-of-range'],
    ['1e-10 kip', 'number-out-of-range'],
    ['1e13 kip', 'number-out-of-range'],
    ['3 mN', 'unit-ambiguous'],
    ['1e400 kip', 'number-out-of-range'],
    [{ value: 0, unit: 'kip' }, 'number-out-of-range'],
    [{ value: -1, unit: 'kip' }, 'number-out-of-range'],
    [{ value: Number.NaN, unit: 'kip' }, 'number-out-of-range'],
    [{ value: Number.POSITIVE_INFINITY, unit: 'kip' }, 'number-out-of-range'],
    [{ value: 3, unit: 'ton' }, 'unit-ambiguous'],
    [{ value: 3, unit: '' }, 'unit-missing'],
    [{ value: 3, unit: '__proto__' }, 'unit-unknown'],
    ['3', 'unit-missing'],
    ['3 ton', 'unit-ambiguous'],
    ['', 'not-a-number'],
    ['31,000 lbf', 'ambiguous-number'],
  ])('is refused otherwise: %j is %s', (input, code) => {
    expect(readPositiveQuantity(force, input, '--force')).toMatchObject({
      ok: false,
      problem: { code, where: '--force' },
    });
  });
});

describe('a quantity of either sign', () => {
  it.each([
    ['-0.4 kip', { value: -0.4, unit: 'kip' }],
    ['0 kN', { value: 0, unit: 'kN' }],
    [
      { value: 0.4, unit: 'kip' },
      { value: 0.4, unit: 'kip' },
    ],
  ])('is read as it was given: %j', (input, value) => {
    expect(readSignedQuantity(force, input, 'effect')).toEqual({ ok: true, value });
  });

  it.each(['-1e13 kN', '1e13 kN'])('is refused where its size cannot be: %j', (input) => {
    expect(readSignedQuantity(force, input, 'effect')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'effect', given: input },
    });
  });
});
