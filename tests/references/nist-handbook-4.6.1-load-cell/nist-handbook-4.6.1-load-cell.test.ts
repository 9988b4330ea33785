// The handbook's load cell as a run sheet: which degree it needs, the load behind a deflection and its interval.

import { describe, expect, it } from 'vitest';
import { forceBehindReading, forceIntervalAtReading } from '../../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../../src/domain/calibration/run-sheet.ts';
import { standardErrorOfPrediction } from '../../../src/domain/regression/predict.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed } = reference;
const points = data.x.map((force, index) => ({
  direction: 'up' as const,
  force,
  reading: data.y[index] ?? Number.NaN,
}));
const sheet: RunSheet = {
  units: { force: 'lbf', reading: 'psi' },
  cycles: [{ points: points.slice(0, 20) }, { points: points.slice(20) }],
  set: 'force',
};
const deflection = results.inverse_use.new_deflection;
const exact = { digits: 'as-printed', because: 'the digits of the exact recomputation' } as const;
const coarse = {
  digits: 4,
  because: 'the handbook printed from lower-precision arithmetic; four digits hold',
} as const;

describe('NIST handbook 4.6.1, load cell calibration', () => {
  const { curve, degrees } = outcomeValue(fitCalibration(sheet, { degree: 'auto' }));
  const line = outcomeValue(fitCalibration(sheet, { degree: 1 })).curve.fit;

  it('rejects the straight line for lack of fit', () => {
    expectDigits(line.lackOfFit?.fStatistic ?? Number.NaN, {
      certified: results.straight_line.lack_of_fit_F,
      ...coarse,
    });
    expectDigits(line.lackOfFit?.fStatistic ?? Number.NaN, {
      certified: recomputed.straight_line.lack_of_fit_F,
      digits: 9,
      because:
        'the residuals are 1e-4 of the readings, which costs four of sixteen digits; two more are left for their squares',
    });
    expect([line.lackOfFit?.numeratorDegrees, line.lackOfFit?.denominatorDegrees]).toEqual(
      results.straight_line.lack_of_fit_critical.df,
    );
    const { lackOfFitSumOfSquares = Number.NaN, pureErrorSumOfSquares = Number.NaN } = line.lackOfFit ?? {};
    expectDigits(lackOfFitSumOfSquares + pureErrorSumOfSquares, {
      certified: line.residualSumOfSquares,
      digits: 12,
      because: 'the two parts of one sum',
    });
    expectDigits(line.residualStandardDeviation, { certified: results.straight_line.residual_sd, ...coarse });
  });

  it('gives coefficients, standard errors and scatter of all three degrees', () => {
    const because =
      'the exact recomputation; readings have lost four of sixteen digits to their scatter, and it its own square';
    const { straight_line, quadratic, cubic } = recomputed;
    for (const [degree, expected] of [
      [1, straight_line],
      [2, quadratic],
      [3, { ...cubic, standard_errors: [] }],
    ] as const) {
      const { fit } = outcomeValue(fitCalibration(sheet, { degree })).curve;
      for (const [power, certified] of expected.coefficients.entries()) {
        expectDigits(fit.coefficients[power] ?? Number.NaN, { certified, digits: 10, because });
      }
      for (const [power, certified] of expected.standard_errors.entries()) {
        expectDigits(fit.standardErrors[power] ?? Number.NaN, { certified, digits: 10, because });
      }
      expectDigits(fit.residualStandardDeviation, { certified: expected.residual_sd, digits: 10, because });
      expectDigits(fit.lackOfFit?.fStatistic ?? Number.NaN, { certified: expected.lack_of_fit_F, digits: 9, because });
    }
  });

  it('takes the quadratic, whose lack of fit is not significant', () => {
    expect(curve.fit.degree).toBe(2);
    expectDigits(curve.fit.lackOfFit?.fStatistic ?? Number.NaN, {
      certified: recomputed.quadratic.lack_of_fit_F,
      digits: 9,
      because:
        'the residuals are 1e-4 of the readings, which costs four of sixteen digits; two more are left for their squares',
    });
    for (const [power, printed] of [results.quadratic.B0, results.quadratic.B1, results.quadratic.B2].entries()) {
      expectDigits(curve.fit.coefficients[power] ?? Number.NaN, { certified: printed, ...coarse });
    }
  });

  it('gives the extra-sum-of-squares F of both steps', () => {
    const { degree_1_to_2, degree_2_to_3 } = recomputed.extra_sum_of_squares_F;
    const because = 'the difference of two sums of squares loses two of their eleven digits';
    expectDigits(degrees[1]?.fStatistic ?? Number.NaN, { certified: degree_1_to_2.F, digits: 9, because });
    expectDigits(degrees[2]?.fStatistic ?? Number.NaN, { certified: degree_2_to_3.F, digits: 8, because });
    expectDigits(degrees[2]?.pValue ?? Number.NaN, { certified: degree_2_to_3.p, digits: 8, because });
  });

  it('gives the load behind the deflection', () => {
    const load = outcomeValue(forceBehindReading(curve, deflection));
    expectDigits(load, { certified: recomputed.inverse_use.load_from_full_precision_coefficients, ...exact });
    expectDigits(load, { certified: results.inverse_use.load, ...exact });
  });

  it('gives the interval of the load at three levels', () => {
    const intervals = recomputed.inverse_use.calibration_interval_by_inverting_the_prediction_band_single_new_reading;
    for (const [level, [low, high]] of Object.entries(intervals)) {
      const interval = outcomeValue(forceIntervalAtReading(curve, deflection, Number(level)));
      expectDigits(interval.low, { certified: low ?? '', ...exact });
      expectDigits(interval.high, { certified: high ?? '', ...exact });
    }
  });

  it('would not accept the straight line, the symmetric interval, or n for n - 3', () => {
    const straight = outcomeValue(fitCalibration(sheet, { degree: 1 })).curve;
    const certified = recomputed.inverse_use.load_from_full_precision_coefficients;
    const wrongLoad = outcomeValue(forceBehindReading(straight, deflection));
    expect(() => expectDigits(wrongLoad, { certified, ...exact })).toThrow(exact.because);
    const load = outcomeValue(forceBehindReading(curve, deflection));
    const [low = ''] =
      recomputed.inverse_use.calibration_interval_by_inverting_the_prediction_band_single_new_reading['0.95'];
    const half = outcomeValue(forceIntervalAtReading(curve, deflection, 0.95)).high - load;
    expect(() => expectDigits(load - half, { certified: low, ...exact })).toThrow(exact.because);
    const s = standardErrorOfPrediction(curve.fit, load, 'observation') * Math.sqrt(37 / 40);
    const tooNarrow = load - half * (s / standardErrorOfPrediction(curve.fit, load, 'observation'));
    expect(() => expectDigits(tooNarrow, { certified: low, ...exact })).toThrow(exact.because);
  });
});
