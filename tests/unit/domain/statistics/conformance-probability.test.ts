import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../../../src/domain/statistics/conformance-probability.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('conformance probability', () => {
  const two = { low: -2, high: 2 };

  it('is a half at one limit when the other is far away, and symmetric', () => {
    const at = (estimate: number) => conformanceProbability({ estimate, standardUncertainty: 0.1 }, two);
    expectDigits(at(2), { certified: 0.5, digits: 12, because: 'the normal distribution is symmetric' });
    expectDigits(at(1.9), { certified: at(-1.9), digits: 12, because: 'the limits are symmetric' });
  });

  it('loses both tails of a wide distribution', () => {
    expectDigits(conformanceProbability({ estimate: 0, standardUncertainty: 2 }, two), {
      certified: '0.6827',
      digits: 'as-printed',
      because: 'within one standard deviation, JCGM 100:2008 Table G.1',
    });
  });

  it('is certain without uncertainty, limits included', () => {
    const exact = (estimate: number) => conformanceProbability({ estimate, standardUncertainty: 0 }, two);
    expect([exact(2), exact(-2), exact(2.0001)]).toEqual([1, 1, 0]);
  });
});
