// Wampler2: a polynomial of degree 5 with coefficients 1, 0.1, 0.01 and so on, exactly.
// No calibration takes degree 5; it is fitted here by the code that fits 1 to 3.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { digitsLeft, largestError } from '../nist-strd-wampler1/digits-of-degree-five.ts';
import reference from './case.json' with { type: 'json' };

const points = reference.data.rows_as_printed.map(([y, x]) => ({ x: Number(x), y: Number(y) }));
const ys = points.map(({ y }) => y);
const { results } = reference;
const because = 'one rounding of y times the condition number, carried from scaled x back to x';

describe('NIST StRD Wampler2', () => {
  const fit = outcomeValue(fitPolynomial(points, 5));

  it('gives the certified coefficients', () => {
    for (const [power, { estimate }] of results.parameters.entries()) {
      const digits = digitsLeft(ys, power, Number(estimate));
      expect(digits).toBeGreaterThan(6);
      expectDigits(fit.coefficients[power] ?? Number.NaN, { certified: estimate, digits, because });
    }
  });

  it('gives no scatter, but for rounding, and R squared of one', () => {
    const digits = -Math.log10(largestError(ys));
    expectDigits(fit.residualStandardDeviation, { certified: results.residual_standard_deviation, digits, because });
    expectDigits(fit.rSquared, { certified: results.r_squared, digits: 'as-printed', because });
    expect(fit.degreesOfFreedom).toBe(results.anova.residual.df);
  });

  it('would not accept degree 4', () => {
    const lower = outcomeValue(fitPolynomial(points, 4));
    const { estimate } = results.parameters[4] ?? { estimate: '' };
    expect(() =>
      expectDigits(lower.coefficients[4] ?? Number.NaN, { certified: estimate, digits: 1, because }),
    ).toThrow(because);
    const digits = -Math.log10(largestError(ys));
    expect(() => expectDigits(lower.residualStandardDeviation, { certified: 0, digits, because })).toThrow(because);
  });
});
