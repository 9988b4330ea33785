import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalizedError } from '../../../../src/domain/statistics/normalized-error.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('the number E_n', () => {
  it('is the difference over the joint expanded uncertainty, worked by hand with 3-4-5', () => {
    const actual = normalizedError({ value: 10, expanded: 0.3 }, { value: 11, expanded: 0.4 }) ?? Number.NaN;
    expectDigits(actual, { certified: 2, digits: 14, because: 'worked by hand' });
  });

  it('is null where both are known exactly, equal or not', () => {
    expect(normalizedError({ value: 10, expanded: 0 }, { value: 10, expanded: 0 })).toBeNull();
    expect(normalizedError({ value: 10, expanded: 0 }, { value: 11, expanded: 0 })).toBeNull();
  });

  it('is the same from either side', () => {
    const any = fc.record({
      value: fc.double({ min: -1e3, max: 1e3, noNaN: true }),
      expanded: fc.double({ min: 0.001, max: 10, noNaN: true }),
    });
    fc.assert(fc.property(any, any, (a, b) => normalizedError(a, b) === normalizedError(b, a)));
  });
});
