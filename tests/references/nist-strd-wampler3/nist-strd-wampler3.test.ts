// Wampler3: the polynomial of Wampler1 with large scatter around it; the certified values carry 15 digits.
// No calibration takes degree 5; it is fitted here by the code that fits 1 to 3.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { digitsLeft } from '../nist-strd-wampler1/digits-of-degree-five.ts';
import reference from './case.json' with { type: 'json' };

const points = reference.data.rows_as_printed.map(([y, x]) => ({ x: Number(x), y: Number(y) }));
const ys = points.map(({ y }) => y);
const { results } = reference;
const because = 'one rounding of y times the condition number, carried from scaled x back to x';
const scatter = {
  digits: 11,
  because:
    'the scatter is a thousandth of y, which costs three of sixteen digits, and the condition number of 39 two more',
} as const;

describe('NIST StRD Wampler3', () => {
  const fit = outcomeValue(fitPolynomial(points, 5));

  it('gives the certified coefficients and their standard deviations', () => {
    for (const [power, { estimate, standard_deviation }] of results.parameters.entries()) {
      const digits = digitsLeft(ys, power, Number(estimate));
      expectDigits(fit.coefficients[power] ?? Number.NaN, { certified: estimate, digits, because });
      expectDigits(fit.standardErrors[power] ?? Number.NaN, { certified: standard_deviation, ...scatter });
      expectDigits(Math.sqrt(fit.covariance[power]?.[power] ?? Number.NaN), {
        certified: standard_deviation,
        ...scatter,
      });
    }
  });

  it('gives the certified residual standard deviation, sum of squares and R squared', () => {
    expectDigits(fit.residualStandardDeviation, { certified: results.residual_standard_deviation, ...scatter });
    expectDigits(fit.residualSumOfSquares, { certified: results.anova.residual.ss, ...scatter });
    expectDigits(fit.rSquared, { certified: results.r_squared, digits: 'as-printed', because: 'what is certified' });
    expect(fit.degreesOfFreedom).toBe(results.anova.residual.df);
  });

  it('would not accept the residual standard deviation with n for n - 6, nor degree 4', () => {
    const certified = results.residual_standard_deviation;
    const wrong = Math.sqrt(fit.residualSumOfSquares / points.length);
    expect(() => expectDigits(wrong, { certified, ...scatter })).toThrow(scatter.because);
    const lower = outcomeValue(fitPolynomial(points, 4));
    expect(() => expectDigits(lower.residualStandardDeviation, { certified, ...scatter })).toThrow(scatter.because);
  });
});
