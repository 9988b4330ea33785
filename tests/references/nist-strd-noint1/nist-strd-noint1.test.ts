// NoInt1: a line through the origin, which no calibration is, checked through the same fit: each point stands beside its
// image (-x, -y), which makes the intercept 0 and leaves the slope. Both sums of squares double and so do the degrees of
// freedom, 2n - 2 for n - 1: s and R squared (about zero, the mean of y) stay, the slope's standard error is over sqrt(2).

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const because = 'a sum over few points, some roundings of the fifteen certified digits';
const digits = 13;
const points = reference.data.rows_as_printed
  .map(([y, x]) => ({ x: Number(x), y: Number(y) }))
  .flatMap(({ x, y }) => [
    { x, y },
    { x: -x, y: -y },
  ]);
const { results } = reference;
const [slope] = results.parameters;

describe('NIST StRD NoInt1', () => {
  const fit = outcomeValue(fitPolynomial(points, 1));

  it('gives the certified slope and its standard deviation, and no intercept', () => {
    expect(fit.coefficients[0]).toBe(0);
    expectDigits(fit.coefficients[1] ?? Number.NaN, { certified: slope?.estimate ?? '', digits, because });
    expectDigits((fit.standardErrors[1] ?? Number.NaN) * Math.SQRT2, {
      certified: slope?.standard_deviation ?? '',
      digits,
      because,
    });
  });

  it('gives the certified scatter, sum of squares and R squared', () => {
    expectDigits(fit.residualStandardDeviation, { certified: results.residual_standard_deviation, digits, because });
    expectDigits(fit.residualSumOfSquares / 2, { certified: results.anova.residual.ss, digits, because });
    expectDigits(fit.rSquared, { certified: results.r_squared, digits, because });
    expect(fit.degreesOfFreedom / 2).toBe(results.anova.residual.df);
  });

  it('would not accept a line that need not pass through the origin, nor s with one degree of freedom more', () => {
    const free = outcomeValue(
      fitPolynomial(
        points.filter(({ x }) => x > 0),
        1,
      ),
    );
    const certified = slope?.estimate ?? '';
    expect(() => expectDigits(free.coefficients[1] ?? Number.NaN, { certified, digits, because })).toThrow(because);
    const wrong = Math.sqrt(fit.residualSumOfSquares / (points.length - 1));
    expect(() => expectDigits(wrong, { certified: results.residual_standard_deviation, digits, because })).toThrow(
      because,
    );
  });
});
