// Norris: a straight line with repeats. The certified values carry 15 digits; 11 are asked of double arithmetic.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const because = 'eleven of the fifteen certified digits, what double arithmetic keeps of a well-scaled fit';
const points = reference.data.rows_as_printed.map(([y, x]) => ({ x: Number(x), y: Number(y) }));
const { results } = reference;

describe('NIST StRD Norris', () => {
  const fit = outcomeValue(fitPolynomial(points, 1));

  it('gives the certified coefficients and their standard deviations', () => {
    for (const [power, parameter] of results.parameters.entries()) {
      expectDigits(fit.coefficients[power] ?? Number.NaN, { certified: parameter.estimate, digits: 11, because });
      expectDigits(fit.standardErrors[power] ?? Number.NaN, {
        certified: parameter.standard_deviation,
        digits: 11,
        because,
      });
    }
  });

  it('gives the certified residual standard deviation and R squared', () => {
    expectDigits(fit.residualStandardDeviation, {
      certified: results.residual_standard_deviation,
      digits: 11,
      because,
    });
    expectDigits(fit.rSquared, { certified: results.r_squared, digits: 11, because });
    expect(fit.degreesOfFreedom).toBe(points.length - 2);
  });

  it('would not accept the residual standard deviation with n for n - 2', () => {
    const wrong = Math.sqrt(fit.residualSumOfSquares / points.length);
    expect(() => expectDigits(wrong, { certified: results.residual_standard_deviation, digits: 11, because })).toThrow(
      because,
    );
  });
});
