// Grubbs' test of eight uranium values, one of them far off.

import { describe, expect, it } from 'vitest';
import { grubbsCriticalValue, grubbsTest } from '../../../src/domain/statistics/grubbs.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed } = reference;
const exact = { digits: 12, because: 'a recomputation given to 15 digits' } as const;

describe('NIST handbook 1.3.5.17.1, Grubbs test for outliers', () => {
  const test = outcomeValue(grubbsTest(data.x, 0.05));

  it('finds the outlier', () => {
    expect(data.x[test.index]).toBe(results.outlier);
    expect(test.isOutlier).toBe(results.reject);
  });

  it('gives the statistic and the critical values', () => {
    expectDigits(test.statistic, {
      certified: results.G,
      digits: 4,
      because: 'the page cuts off after its fourth decimal',
    });
    expectDigits(test.statistic, { certified: recomputed.G, ...exact });
    expectDigits(test.critical, { certified: recomputed['critical_two_sided_0.05'], ...exact });
    // One-sided at 5 % is two-sided at 10 %.
    const oneSided = grubbsCriticalValue(data.x.length, 0.1);
    expectDigits(oneSided, {
      certified: results['critical_one_sided_upper_0.05'],
      digits: 'as-printed',
      because: 'the digits the page prints',
    });
  });

  it('would not accept the deviation with n for n - 1, nor one-sided for two-sided', () => {
    const wrong = test.statistic * Math.sqrt(data.x.length / (data.x.length - 1));
    expect(() => expectDigits(wrong, { certified: recomputed.G, ...exact })).toThrow(exact.because);
    const oneSided = grubbsCriticalValue(data.x.length, 0.1);
    expect(() => expectDigits(oneSided, { certified: recomputed['critical_two_sided_0.05'], ...exact })).toThrow(
      exact.because,
    );
  });
});
