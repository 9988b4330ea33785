// Published tables of Student t, F, chi-square and Grubbs critical values.

import { describe, expect, it } from 'vitest';
import { chiSquareUpperProbability } from '../../../src/domain/statistics/chi-square-upper-probability.ts';
import { fUpperProbability } from '../../../src/domain/statistics/f-upper-probability.ts';
import { grubbsCriticalValue } from '../../../src/domain/statistics/grubbs.ts';
import { normalQuantile } from '../../../src/domain/statistics/normal-quantile.ts';
import { studentQuantile } from '../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { results } = reference;
const printed = { digits: 'as-printed', because: 'the digits the table prints' } as const;
const exact = { digits: 10, because: 'two independent programs in double arithmetic' } as const;

describe('published quantile tables', () => {
  it('agree with the quantile of Student t', () => {
    for (const { df, p, published, computed } of results.student_t) {
      expectDigits(studentQuantile(p, df), { certified: published, ...printed });
      expectDigits(studentQuantile(p, df), { certified: computed, ...exact });
    }
  });

  it('agree with the upper probability of F', () => {
    for (const { df1, df2, p, published, computed } of results.F) {
      // The tables print the value, the program has its probability: what is printed is the exact value, rounded, and the
      // exact value has that probability.
      expectDigits(computed, { certified: published, ...printed });
      expectDigits(fUpperProbability(computed, df1, df2), { certified: 1 - p, ...exact });
    }
  });

  it('agree with the upper probability of chi square, even and odd degrees', () => {
    for (const { df, p, published, computed } of results.chi_square) {
      expectDigits(computed, { certified: published, ...printed });
      expectDigits(chiSquareUpperProbability(computed, df), { certified: 1 - p, ...exact });
    }
  });

  it('agree with the normal quantile, whose square is chi square of one degree', () => {
    const [first] = results.chi_square;
    expectDigits(normalQuantile(0.975) ** 2, { certified: first?.computed ?? Number.NaN, ...exact });
    expectDigits(normalQuantile(0.025), { certified: -normalQuantile(0.975), ...exact });
  });

  it('agree with the critical values of Grubbs, where the table itself is right', () => {
    const right = results.grubbs.filter((row) => !('published_value_is_wrong_or_approximate' in row));
    expect(right.length).toBeGreaterThan(20);
    for (const { n, alpha, sides, published, computed } of right) {
      const twoSided = sides === 2 ? alpha : 2 * alpha;
      expectDigits(grubbsCriticalValue(n, twoSided), { certified: published, ...printed });
      expectDigits(grubbsCriticalValue(n, twoSided), { certified: computed, ...exact });
    }
  });

  it('would not accept degrees of freedom that are one off, nor F with its two degrees exchanged', () => {
    const [first] = results.student_t;
    expect(() => expectDigits(studentQuantile(0.975, 2), { certified: first?.published ?? '', ...printed })).toThrow(
      printed.because,
    );
    const handbook = results.F.at(-1);
    const exchanged = fUpperProbability(handbook?.computed ?? 0, handbook?.df2 ?? 0, handbook?.df1 ?? 0);
    expect(() => expectDigits(exchanged, { certified: 0.05, ...exact })).toThrow(exact.because);
  });
});
