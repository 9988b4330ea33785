import { describe, expect, it } from 'vitest';
import { fUpperProbability } from '../../../../src/domain/statistics/f-upper-probability.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('upper probability of F', () => {
  it('is one at zero', () => {
    expect(fUpperProbability(0, 1, 10)).toBe(1);
  });

  it('does not lose a probability far below the rounding of one', () => {
    // With 2 and n degrees of freedom the upper probability is exactly (1 + 2 F / n)^(-n / 2).
    for (const [statistic, degrees] of [
      [3, 20],
      [1000, 20],
      [1e4, 2],
    ] as const) {
      expectDigits(fUpperProbability(statistic, 2, degrees), {
        certified: (1 + (2 * statistic) / degrees) ** (-degrees / 2),
        digits: 12,
        because: 'a closed form; the argument near 1 costs up to four of sixteen digits',
      });
    }
  });

  it('throws on a negative or missing statistic', () => {
    for (const statistic of [-1, Number.NaN]) expect(() => fUpperProbability(statistic, 1, 10)).toThrow(RangeError);
    expect(() => fUpperProbability(1, 0, 10)).toThrow(RangeError);
  });
});
