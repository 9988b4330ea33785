import { describe, expect, it } from 'vitest';
import { grubbsTest } from '../../../../src/domain/statistics/grubbs.ts';
import { outcomeValue } from '../../../outcome-value.ts';

describe('Grubbs test', () => {
  it('needs three values', () => {
    for (const values of [[], [1], [1, 2]]) {
      expect(grubbsTest(values, 0.05)).toMatchObject({ ok: false, problem: { code: 'too-few-points' } });
    }
  });

  it('finds no outlier among equal values', () => {
    expect(outcomeValue(grubbsTest([7, 7, 7, 7], 0.05))).toMatchObject({ statistic: 0, isOutlier: false });
  });

  it('finds a low outlier as well as a high one', () => {
    const values = [10.1, 9.9, 10, 10.2, 9.8, 10.05];
    expect(outcomeValue(grubbsTest([...values, 2], 0.05))).toMatchObject({ index: 6, isOutlier: true });
    expect(outcomeValue(grubbsTest([18, ...values], 0.05))).toMatchObject({ index: 0, isOutlier: true });
    expect(outcomeValue(grubbsTest(values, 0.05)).isOutlier).toBe(false);
  });
});
