// Eight thermometer readings: the temperature behind a reading, with few degrees of freedom.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../../src/domain/regression/inversion-interval.ts';
import { invert } from '../../../src/domain/regression/invert.ts';
import { slopeAt, standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
import { twoSidedStudentFactor } from '../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const printed = { digits: 'as-printed', because: 'the digits the book prints' } as const;
const exact = {
  digits: 11,
  because: 'a recomputation in double arithmetic, whose intercept is a difference of large sums',
} as const;

describe('Graybill and Iyer thermometer example', () => {
  const points = reference.data.x.map((x, index) => ({ x, y: reference.data.y[index] ?? Number.NaN }));
  const fit = outcomeValue(fitPolynomial(points, 1));

  it('gives estimate and interval as published at both readings', () => {
    for (const { y0, level, published, recomputed } of reference.results) {
      const interval = outcomeValue(invertPredictionBand(fit, y0, { level, of: 'observation' }));
      expectDigits(outcomeValue(invert(fit, y0)), { certified: published.estimate, ...printed });
      expectDigits(interval.low, { certified: published.lower, ...printed });
      expectDigits(interval.high, { certified: published.upper, ...printed });
      expectDigits(interval.low, { certified: recomputed.inversion[0] ?? Number.NaN, ...exact });
      expectDigits(interval.high, { certified: recomputed.inversion[1] ?? Number.NaN, ...exact });
    }
  });

  it('gives the line, its scatter, the g of Fieller and the standard error of the inverse', () => {
    for (const { y0, level, recomputed } of reference.results) {
      const { intercept, slope, s, df, t, g, x0, wald_se } = recomputed;
      const [a = Number.NaN, b = Number.NaN] = fit.coefficients;
      expectDigits(a, { certified: intercept, ...exact });
      expectDigits(b, { certified: slope, ...exact });
      expectDigits(fit.residualStandardDeviation, { certified: s, ...exact });
      expect(fit.degreesOfFreedom).toBe(df);
      expectDigits(twoSidedStudentFactor(level, df), { certified: t, ...exact });
      expectDigits(((t * (fit.standardErrors[1] ?? Number.NaN)) / b) ** 2, { certified: g, ...exact });
      const inverse = outcomeValue(invert(fit, y0));
      expectDigits(inverse, { certified: x0, ...exact });
      expectDigits(standardErrorOfPrediction(fit, inverse, 'observation') / slopeAt(fit, inverse), {
        certified: wald_se,
        ...exact,
      });
    }
  });

  it('would not accept the symmetric interval', () => {
    for (const { recomputed } of reference.results) {
      const [low = Number.NaN] = recomputed.wald;
      expect(() => expectDigits(low, { certified: recomputed.inversion[0] ?? Number.NaN, ...exact })).toThrow(
        exact.because,
      );
    }
  });

  it('would not accept the interval at another level', () => {
    const [first] = reference.results;
    const other = outcomeValue(invertPredictionBand(fit, 104, { level: 0.9, of: 'observation' }));
    expect(() => expectDigits(other.low, { certified: first?.published.lower ?? '', ...printed })).toThrow(
      printed.because,
    );
  });
});
