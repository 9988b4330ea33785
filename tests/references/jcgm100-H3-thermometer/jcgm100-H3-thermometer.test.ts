// GUM Annex H.3: a thermometer's correction as a straight line of t - 20, its uncertainty and the correction at 30.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { predict, standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
import { predictionInterval } from '../../../src/domain/regression/prediction-interval.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed } = reference;
const printed = { digits: 'as-printed', because: 'the digits JCGM 100 prints in Table H.6 and H.3.3' } as const;
const exact = { digits: 12, because: 'an exact recomputation given to 15 digits' } as const;

describe('JCGM 100 H.3, calibration of a thermometer', () => {
  const points = data.t_k_degC.map((t, k) => ({ x: t - data.t0_degC, y: data.b_k_degC[k] ?? Number.NaN }));
  const fit = outcomeValue(fitPolynomial(points, 1));
  const [y1 = Number.NaN, y2 = Number.NaN] = fit.coefficients;
  const [sY1 = Number.NaN, sY2 = Number.NaN] = fit.standardErrors;

  it('gives intercept, slope and their standard uncertainties as printed', () => {
    expectDigits(y1, { certified: results.y1, ...printed });
    expectDigits(y2, { certified: results.y2, ...printed });
    expectDigits(sY1, { certified: results.s_y1, ...printed });
    expectDigits(sY2, { certified: results.s_y2, ...printed });
    expectDigits(y1, { certified: recomputed.y1, ...exact });
    expectDigits(sY2, { certified: recomputed.s_y2, ...exact });
    expectDigits(fit.residualStandardDeviation, { certified: recomputed.s, ...exact });
    expect(fit.degreesOfFreedom).toBe(results.degrees_of_freedom);
  });

  it('gives the correlation of intercept and slope as printed', () => {
    const covariance = fit.covariance[0]?.[1] ?? Number.NaN;
    const correlation = covariance / (sY1 * sY2);
    expectDigits(covariance, { certified: recomputed.cov, ...exact });
    expectDigits(correlation, { certified: recomputed.r, ...exact });
    expectDigits(correlation, { certified: results.r_y1_y2, ...printed });
  });

  it('gives the correction at 30 degrees and its combined standard uncertainty as printed', () => {
    expectDigits(predict(fit, 10), { certified: results.b_at_30, ...printed });
    expectDigits(standardErrorOfPrediction(fit, 10, 'mean-response'), { certified: results.uc_b_at_30, ...printed });
    expectDigits(standardErrorOfPrediction(fit, 10, 'mean-response'), { certified: recomputed.u_b30, ...exact });
  });

  it('gives the mean-response band at 30 degrees: the correction -+ 2.26 of its standard uncertainty', () => {
    // 2.26 is t at 95 % with 9 degrees of freedom in Table G.2.
    const { low, high } = predictionInterval(fit, 10, { level: 0.95, of: 'mean-response' });
    const t = { certified: '2.26', digits: 'as-printed', because: 'the digits of JCGM 100 Table G.2' } as const;
    expectDigits((high - low) / 2 / Number(recomputed.u_b30), t);
    expectDigits((high + low) / 2, { certified: recomputed.b30, ...exact });
    const single = predictionInterval(fit, 10, { level: 0.95, of: 'observation' });
    expect(() => expectDigits((single.high - single.low) / 2 / Number(recomputed.u_b30), t)).toThrow(t.because);
  });

  it('gives the fitted corrections and residuals of Table H.6', () => {
    for (const [index, point] of fit.points.entries()) {
      expectDigits(point.fitted, { certified: recomputed.fitted[index] ?? Number.NaN, ...exact });
      expectDigits(point.residual, {
        certified: recomputed.residuals[index] ?? Number.NaN,
        digits: 10,
        because: 'a correction of 0.16 less a fitted one; the smallest residual has lost three digits',
      });
    }
  });

  it('would not accept the uncertainty with n for n - 2, nor that of a single observation', () => {
    const wrong = sY1 * Math.sqrt(fit.degreesOfFreedom / points.length);
    expect(() => expectDigits(wrong, { certified: results.s_y1, ...printed })).toThrow(printed.because);
    const single = standardErrorOfPrediction(fit, 10, 'observation');
    expect(() => expectDigits(single, { certified: results.uc_b_at_30, ...printed })).toThrow(printed.because);
  });
});
