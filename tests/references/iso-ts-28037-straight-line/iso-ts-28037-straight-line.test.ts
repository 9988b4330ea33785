// ISO/TS 28037: the straight line with equal uncertainties (clause 6.3) and with unknown equal ones (Annex E).
// The cases with unequal weights and with uncertainty in x are not least squares of y on x and are not tested here.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed } = reference;
const printed = { digits: 'as-printed', because: 'the digits the specification prints' } as const;
const exact = { digits: 12, because: 'an exact recomputation given to 15 digits' } as const;
const pointsOf = (y: readonly number[]) => data.x.map((x, index) => ({ x, y: y[index] ?? Number.NaN }));

describe('ISO/TS 28037 straight line', () => {
  it('gives Annex E: coefficients, standard uncertainties, sum of squares', () => {
    const fit = outcomeValue(fitPolynomial(pointsOf(data.cases.annexE.y), 1));
    const [a = Number.NaN, b = Number.NaN] = fit.coefficients;
    const [uA = Number.NaN, uB = Number.NaN] = fit.standardErrors;
    expectDigits(a, { certified: results.annexE.a, ...printed });
    expectDigits(b, { certified: results.annexE.b, ...printed });
    expectDigits(uA, { certified: results.annexE.u_a, ...printed });
    expectDigits(uB, { certified: results.annexE.u_b, ...printed });
    expectDigits(uA, { certified: recomputed.annexE.u_a, ...exact });
    expectDigits(uB, { certified: recomputed.annexE.u_b, ...exact });
    expectDigits(fit.residualSumOfSquares, { certified: recomputed.annexE.chi2, ...exact });
    expect(fit.degreesOfFreedom).toBe(results.annexE.df);
  });

  it('gives clause 6.3 with equal uncertainties: coefficients and chi squared', () => {
    const fit = outcomeValue(fitPolynomial(pointsOf(data.cases.equal.y), 1));
    const [a = Number.NaN, b = Number.NaN] = fit.coefficients;
    expectDigits(a, { certified: results.equal.a, ...printed });
    expectDigits(b, { certified: results.equal.b, ...printed });
    const u = data.cases.equal.u_y[0] ?? Number.NaN;
    expectDigits(fit.residualSumOfSquares / u ** 2, { certified: results.equal.chi2_obs, ...printed });
  });

  it('would not accept the standard uncertainty with n for n - 2', () => {
    const fit = outcomeValue(fitPolynomial(pointsOf(data.cases.annexE.y), 1));
    const wrong = (fit.standardErrors[0] ?? Number.NaN) * Math.sqrt(4 / 6);
    expect(() => expectDigits(wrong, { certified: results.annexE.u_a, ...printed })).toThrow(printed.because);
  });
});
