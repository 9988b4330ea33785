import { describe, expect, it } from 'vitest';
import { studentQuantile, twoSidedStudentFactor } from '../../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('quantile of Student t', () => {
  it('is two-sided at the level asked for', () => {
    expectDigits(twoSidedStudentFactor(0.95, 10), {
      certified: '2.228',
      digits: 'as-printed',
      because: 'NIST/SEMATECH e-Handbook 1.3.6.7.2 at 0.975',
    });
  });

  it('throws where there is no quantile', () => {
    for (const [probability, degrees] of [
      [1, 5],
      [0, 5],
      [1.2, 5],
      [0.975, 0],
      [Number.NaN, 5],
    ] as const) {
      expect(() => studentQuantile(probability, degrees)).toThrow(RangeError);
    }
  });
});
