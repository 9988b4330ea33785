// ISO/TS 28037: the straight line with equal and unequal uncertainties (clauses 6.3 and 11) and with unknown equal ones
// (Annex E). The case of clause 7 (uncertainty in x too) is a model the program does not offer.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { fitWeightedLine, lineUncertaintyAt, valueOnLine } from '../../../src/domain/regression/fit-weighted-line.ts';
import { invert } from '../../../src/domain/regression/invert.ts';
import { predict, slopeAt, standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
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
    const covariance = fit.covariance[0]?.[1] ?? Number.NaN;
    expectDigits(covariance, { certified: results.annexE.cov_ab, ...printed });
    expectDigits(covariance, { certified: recomputed.annexE.cov, ...exact });
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

  describe('with equal uncertainties that are known', () => {
    // The fit estimates the uncertainty of y from the scatter, s; here it is known, u. Every standard uncertainty of the
    // fit is proportional to the one used, so that u / s carries it over.
    const fit = outcomeValue(fitPolynomial(pointsOf(data.cases.equal.y), 1));
    const u = data.cases.equal.u_y[0] ?? Number.NaN;
    const known = u / fit.residualStandardDeviation;
    const { inverse, forward } = results.equal;

    it('gives clause 6.3: standard uncertainties and covariance of intercept and slope', () => {
      const [uA = Number.NaN, uB = Number.NaN] = fit.standardErrors.map((error) => error * known);
      const covariance = (fit.covariance[0]?.[1] ?? Number.NaN) * known ** 2;
      expectDigits(uA, { certified: results.equal.u_a, ...printed });
      expectDigits(uB, { certified: results.equal.u_b, ...printed });
      expectDigits(covariance, { certified: results.equal.cov_ab, ...printed });
      expectDigits(uA, { certified: recomputed.equal.u_a, ...exact });
      expectDigits(uB, { certified: recomputed.equal.u_b, ...exact });
      expectDigits(covariance, { certified: recomputed.equal.cov_ab, ...exact });
    });

    it('gives clause 11.1: the x behind a y that has that uncertainty too, and its standard uncertainty', () => {
      const x = outcomeValue(invert(fit, inverse.y0));
      const uncertainty = (standardErrorOfPrediction(fit, x, 'observation') * known) / slopeAt(fit, x);
      expectDigits(x, { certified: inverse.x, ...printed });
      expectDigits(uncertainty, { certified: inverse.u_x, ...printed });
      expectDigits(x, { certified: recomputed.equal.x0, ...exact });
      expectDigits(uncertainty, { certified: recomputed.equal.u_x0, ...exact });
    });

    it('gives clause 11.2: the y at an x with an uncertainty of its own, recomputed', () => {
      const { x, u_x } = forward;
      const uncertainty = Math.hypot(standardErrorOfPrediction(fit, x, 'mean-response') * known, slopeAt(fit, x) * u_x);
      expectDigits(predict(fit, x), { certified: recomputed.equal['y_at_3.5'], ...exact });
      expectDigits(uncertainty, { certified: recomputed.equal['u_y_at_3.5_u_x_0.2'], ...exact });
    });

    it('would not accept the uncertainty of the line alone at the inverse, nor of an observation forward', () => {
      const x = outcomeValue(invert(fit, inverse.y0));
      const narrow = (standardErrorOfPrediction(fit, x, 'mean-response') * known) / slopeAt(fit, x);
      expect(() => expectDigits(narrow, { certified: inverse.u_x, ...printed })).toThrow(printed.because);
      const wide = Math.hypot(standardErrorOfPrediction(fit, 3.5, 'observation') * known, slopeAt(fit, 3.5) * 0.2);
      expect(() => expectDigits(wide, { certified: recomputed.equal['u_y_at_3.5_u_x_0.2'], ...exact })).toThrow(
        exact.because,
      );
    });
  });

  describe('with unequal uncertainties that are known', () => {
    const { y, u_y } = data.cases.unequal;
    const points = pointsOf(y).map((point, index) => ({ ...point, standardUncertainty: u_y[index] ?? Number.NaN }));
    const line = outcomeValue(fitWeightedLine(points));

    it('gives clause 6.3: coefficients, their uncertainties and chi squared', () => {
      const rows = [
        [line.intercept, results.unequal.a, recomputed.unequal.a],
        [line.slope, results.unequal.b, recomputed.unequal.b],
        [line.interceptUncertainty, results.unequal.u_a, recomputed.unequal.u_a],
        [line.slopeUncertainty, results.unequal.u_b, recomputed.unequal.u_b],
        [line.covariance, results.unequal.cov_ab, recomputed.unequal.cov_ab],
        [line.chiSquared, results.unequal.chi2_obs, recomputed.unequal.chi2_obs],
      ] as const;
      for (const [actual, publishedValue, recomputedValue] of rows) {
        expectDigits(actual, { certified: publishedValue, ...printed });
        expectDigits(actual, { certified: recomputedValue, ...exact });
      }
      expect(line.degreesOfFreedom).toBe(results.unequal.df);
    });

    it('gives clause 11.1: the x behind a y that has an uncertainty too', () => {
      const { y0, u_y0, x, u_x } = results.unequal.inverse;
      const found = line.centre + (y0 - line.valueAtCentre) / line.slope;
      const uncertainty = Math.hypot(u_y0, lineUncertaintyAt(line, found)) / line.slope;
      expectDigits(found, { certified: x, ...printed });
      expectDigits(uncertainty, { certified: u_x, ...printed });
      expectDigits(found, { certified: recomputed.unequal.x0, ...exact });
      expectDigits(uncertainty, { certified: recomputed.unequal.u_x0, ...exact });
      expectDigits(valueOnLine(line, found), { certified: y0, ...exact });
    });

    it('gives the line of equal weights where the uncertainties are equal', () => {
      const equal = outcomeValue(
        fitWeightedLine(
          pointsOf(data.cases.equal.y).map((point, index) => ({
            ...point,
            standardUncertainty: data.cases.equal.u_y[index] ?? Number.NaN,
          })),
        ),
      );
      expectDigits(equal.interceptUncertainty, { certified: recomputed.equal.u_a, ...exact });
      expectDigits(equal.chiSquared, { certified: recomputed.equal.chi2_obs, ...exact });
    });

    it('would not accept weights 1/u for 1/u^2', () => {
      const wrong = outcomeValue(
        fitWeightedLine(
          points.map((point) => ({ ...point, standardUncertainty: Math.sqrt(point.standardUncertainty) })),
        ),
      );
      expect(() => expectDigits(wrong.slope, { certified: results.unequal.b, ...printed })).toThrow(printed.because);
    });
  });

  it('would not accept the standard uncertainty with n for n - 2', () => {
    const fit = outcomeValue(fitPolynomial(pointsOf(data.cases.annexE.y), 1));
    const wrong = (fit.standardErrors[0] ?? Number.NaN) * Math.sqrt(4 / 6);
    expect(() => expectDigits(wrong, { certified: results.annexE.u_a, ...printed })).toThrow(printed.because);
  });
});
