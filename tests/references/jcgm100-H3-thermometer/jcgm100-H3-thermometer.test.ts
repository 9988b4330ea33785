// GUM Annex H.3: a thermometer's correction as a straight line of t - 20, its uncertainty and the correction at 30.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { predict, standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
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
    // With x = centre + halfWidth u: slope = c1 / halfWidth and intercept = c0 - c1 centre / halfWidth.
    const [[m00 = 0, m01 = 0] = [], [, m11 = 0] = []] = fit.inverseInformation.map((row) => [...row]);
    const ratio = fit.centre / fit.halfWidth;
    const correlation = (m01 - ratio * m11) / Math.sqrt((m00 - 2 * ratio * m01 + ratio * ratio * m11) * m11);
    expectDigits(correlation, { certified: results.r_y1_y2, ...printed });
  });

  it('gives the correction at 30 degrees and its combined standard uncertainty as printed', () => {
    expectDigits(predict(fit, 10), { certified: results.b_at_30, ...printed });
    expectDigits(standardErrorOfPrediction(fit, 10, 'mean-response'), { certified: results.uc_b_at_30, ...printed });
    expectDigits(standardErrorOfPrediction(fit, 10, 'mean-response'), { certified: recomputed.u_b30, ...exact });
  });

  it('gives the fitted corrections and residuals of Table H.6', () => {
    for (const [index, point] of fit.points.entries()) {
      expectDigits(point.fitted, { certified: recomputed.fitted[index] ?? Number.NaN, ...exact });
    }
  });

  it('would not accept the uncertainty with n for n - 2, nor that of a single observation', () => {
    const wrong = sY1 * Math.sqrt(fit.degreesOfFreedom / points.length);
    expect(() => expectDigits(wrong, { certified: results.s_y1, ...printed })).toThrow(printed.because);
    const single = standardErrorOfPrediction(fit, 10, 'observation');
    expect(() => expectDigits(single, { certified: results.uc_b_at_30, ...printed })).toThrow(printed.because);
  });
});
