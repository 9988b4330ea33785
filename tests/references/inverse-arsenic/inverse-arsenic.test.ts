// Arsenic: the x behind an observed y, with the interval for one observation and for the mean response.
// The second case, three observations whose own scatter is pooled into s, is a model the program does not offer.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../../src/domain/regression/inversion-interval.ts';
import { invert } from '../../../src/domain/regression/invert.ts';
import { slopeAt, standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
import { predictionInterval } from '../../../src/domain/regression/prediction-interval.ts';
import { twoSidedStudentFactor } from '../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const printed = { digits: 'as-printed', because: 'the digits the paper prints' } as const;
const exact = { digits: 12, because: 'a recomputation in double arithmetic given to 16 digits' } as const;

describe('Graybill and Iyer arsenic data', () => {
  const points = reference.data.x.map((x, index) => ({ x, y: reference.data.y[index] ?? Number.NaN }));
  const fit = outcomeValue(fitPolynomial(points, 1));
  const [single, , mean] = reference.results;
  const cases = [
    { of: 'observation', result: single },
    { of: 'mean-response', result: mean },
  ] as const;

  it('gives estimate and interval as published, for one observation and for the mean response', () => {
    for (const { of, result } of cases) {
      const y0 = Number(result?.y0);
      const interval = outcomeValue(invertPredictionBand(fit, y0, { level: result?.level ?? Number.NaN, of }));
      expectDigits(outcomeValue(invert(fit, y0)), { certified: result?.published?.estimate ?? '', ...printed });
      expectDigits(interval.low, { certified: result?.published?.lower ?? '', ...printed });
      expectDigits(interval.high, { certified: result?.published?.upper ?? '', ...printed });
      expectDigits(interval.low, { certified: result?.recomputed.inversion[0] ?? Number.NaN, ...exact });
      expectDigits(interval.high, { certified: result?.recomputed.inversion[1] ?? Number.NaN, ...exact });
    }
  });

  it('gives the line, its scatter and the g of Fieller, the square of t over the t of the slope', () => {
    const { intercept, slope, s, t, g, df } = single?.recomputed ?? { intercept: Number.NaN, df: 0 };
    const [a = Number.NaN, b = Number.NaN] = fit.coefficients;
    const because = 'a recomputation in double arithmetic, whose intercept is a difference of larger sums';
    expectDigits(a, { certified: intercept, digits: 11, because });
    expectDigits(b, { certified: slope ?? Number.NaN, ...exact });
    expectDigits(fit.residualStandardDeviation, { certified: s ?? Number.NaN, ...exact });
    expect(fit.degreesOfFreedom).toBe(df);
    expectDigits(twoSidedStudentFactor(0.9, fit.degreesOfFreedom), { certified: t ?? Number.NaN, ...exact });
    expectDigits((((t ?? Number.NaN) * (fit.standardErrors[1] ?? Number.NaN)) / b) ** 2, {
      certified: g ?? Number.NaN,
      ...exact,
    });
  });

  it('gives the published standard error of the inverse, s sqrt(1 + h) over the slope, and the symmetric interval of it', () => {
    const { wald } = single?.published ?? {};
    const x0 = outcomeValue(invert(fit, 3));
    const error = standardErrorOfPrediction(fit, x0, 'observation') / slopeAt(fit, x0);
    const t = twoSidedStudentFactor(0.9, fit.degreesOfFreedom);
    expectDigits(error, { certified: wald?.se ?? '', ...printed });
    expectDigits(error, { certified: single?.recomputed.wald_se ?? Number.NaN, ...exact });
    expectDigits(x0 - t * error, { certified: wald?.lower ?? '', ...printed });
    expectDigits(x0 + t * error, { certified: wald?.upper ?? '', ...printed });
    const ofTheLine = standardErrorOfPrediction(fit, x0, 'mean-response') / slopeAt(fit, x0);
    expectDigits(ofTheLine, { certified: mean?.recomputed.wald_se ?? Number.NaN, ...exact });
  });

  it('has 3.0 on the edge of the mean-response band at the published ends', () => {
    const [low = Number.NaN, high = Number.NaN] = mean?.recomputed.inversion ?? [];
    const options = { level: 0.9, of: 'mean-response' } as const;
    expectDigits(predictionInterval(fit, low, options).high, { certified: 3, ...exact });
    expectDigits(predictionInterval(fit, high, options).low, { certified: 3, ...exact });
    const other = predictionInterval(fit, low, { level: 0.9, of: 'observation' }).high;
    expect(() => expectDigits(other, { certified: 3, ...exact })).toThrow(exact.because);
  });

  it('gives the inverse of the mean of three further observations', () => {
    const three = reference.results[1]?.y0;
    const observed = Array.isArray(three) ? three : [];
    expect(observed).toHaveLength(3);
    const average = observed.reduce((sum, y) => sum + y, 0) / observed.length;
    expectDigits(outcomeValue(invert(fit, average)), {
      certified: reference.results[1]?.recomputed.x0 ?? Number.NaN,
      ...exact,
    });
  });

  it('would not accept the symmetric delta-method interval, nor the other kind of interval', () => {
    const certified = single?.published?.lower ?? '';
    const wald = Number(single?.published?.wald?.lower);
    expect(() => expectDigits(wald, { certified, ...printed })).toThrow(printed.because);
    const other = outcomeValue(invertPredictionBand(fit, 3, { level: 0.9, of: 'mean-response' }));
    expect(() => expectDigits(other.low, { certified, ...printed })).toThrow(printed.because);
  });
});
