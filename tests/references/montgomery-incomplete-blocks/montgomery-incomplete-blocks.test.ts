// An unbalanced two-way layout with published effects: catalysts in batches too small for all of them.

import { describe, expect, it } from 'vitest';
import { fitAdditive } from '../../../src/domain/statistics/additive-fit.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed } = reference;
const exact = { digits: 11, because: 'simple fractions, through the eigenvalues of a matrix of counts' } as const;

describe('balanced incomplete blocks', () => {
  const observations = data.time.map((y, index) => ({
    y,
    levels: [data.catalyst[index] ?? '', data.batch[index] ?? ''],
  }));
  const fit = fitAdditive(observations);
  const catalysts = Object.keys(recomputed.effects);
  /** An effect against the mean of all four, as the book gives it. */
  const effectOf = (catalyst: string) =>
    fit.contrast(
      catalysts.map((level) => ({ factor: 0, level, weight: (level === catalyst ? 1 : 0) - 1 / catalysts.length })),
    );

  it('give the effects of the catalysts, adjusted for the batches', () => {
    for (const [catalyst, certified] of Object.entries(recomputed.effects)) {
      expectDigits(effectOf(catalyst)?.estimate ?? Number.NaN, { certified, ...exact });
      const [numerator, denominator] = Object.entries(results.effects_FROM_MEMORY)
        .flatMap(([name, fraction]) => (name === catalyst ? fraction.split('/') : []))
        .map(Number);
      expectDigits((numerator ?? 0) / (denominator ?? 1), { certified, ...exact });
    }
  });

  it('give the error, its degrees of freedom and the standard error of a difference', () => {
    expect(fit.degreesOfFreedom).toBe(results.error_degrees_of_freedom);
    expectDigits(fit.residualStandardDeviation ** 2, { certified: results.error_mean_square_FROM_MEMORY, ...exact });
    const difference = fit.contrast([
      { factor: 0, level: '1', weight: 1 },
      { factor: 0, level: '2', weight: -1 },
    ]);
    expectDigits(difference?.standardError ?? Number.NaN, {
      certified: recomputed.standard_error_of_a_difference,
      ...exact,
    });
  });

  it('would not be met by plain means, which leave the batches in', () => {
    const meanOf = (catalyst: string) => {
      const times = observations.flatMap(({ y, levels }) => (levels[0] === catalyst ? [y] : []));
      return times.reduce((sum, y) => sum + y, 0) / times.length;
    };
    const grand = data.time.reduce((sum, y) => sum + y, 0) / data.time.length;
    expect(() => expectDigits(meanOf('1') - grand, { certified: -1.125, ...exact })).toThrow(exact.because);
  });
});
