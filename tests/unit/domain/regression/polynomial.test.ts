import { describe, expect, it } from 'vitest';
import {
  crossingBetween,
  crossings,
  derivative,
  evaluate,
  multiply,
  shift,
} from '../../../../src/domain/regression/polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';

const because = 'a simple root, found to the last bits of a double';

describe('polynomials', () => {
  it('evaluates, differentiates, multiplies and shifts', () => {
    expect(evaluate([1, 2, 3], 2)).toBe(17);
    expect(derivative([1, 2, 3])).toEqual([2, 6]);
    expect(multiply([1, 1], [-1, 1])).toEqual([-1, 0, 1]);
    expect(shift([0, 0, 0, 1], 2)).toEqual([8, 12, 6, 1]);
  });

  it('finds every crossing of a degree-six polynomial, ascending', () => {
    const roots = [-1.9, -0.7, -1e-3, 0.2, 1.1, 1.8];
    const polynomial = roots.reduce<readonly number[]>((product, root) => multiply(product, [-root, 1]), [1]);
    const found = crossings(polynomial, -2, 2);
    expect(found).toHaveLength(6);
    for (const [index, root] of roots.entries()) {
      expectDigits(found[index] ?? Number.NaN, { certified: root, digits: 11, because });
    }
    expect(crossings(polynomial, -1, 1)).toHaveLength(3);
  });

  it('finds a crossing at an end, none where the curve only touches or stays away, none of a constant', () => {
    expect(crossings([-1, 1], 0, 1)).toEqual([1]);
    expect(crossings([-1, 1], 1, 2)).toEqual([1]);
    expect(crossings([1, 0, 1], -2, 2)).toEqual([]);
    expect(crossings([3], -2, 2)).toEqual([]);
    expect(crossings([0, 0, 0], -2, 2)).toEqual([]);
    expect(crossings([-1, 1, 0, 0], 0, 2)).toEqual([1]);
  });

  it('keeps the relative digits of a crossing near zero', () => {
    expectDigits(crossingBetween([-1e-9, 1, 0.5], -2, 2), {
      certified: 1e-9 - 0.5e-18,
      digits: 14,
      because: 'the series of the root, whose next term is 1e-18 of it',
    });
  });

  it('throws where there is no change of sign to find', () => {
    for (const constant of [0, 1, Number.NaN]) {
      expect(() => crossingBetween([constant, 1], 0, 1)).toThrow(RangeError);
    }
  });

  it('finds a crossing where Newton steps alone would run away', () => {
    expectDigits(crossingBetween([-1e-6, 0, 0, 1], -1, 2), { certified: 0.01, digits: 14, because });
  });
});
