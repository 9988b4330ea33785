// Pontius: a load cell calibration, quadratic, with loads of a few million. The certified values carry 15 digits.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readRunSheetCsv } from '../../../src/contract/run-sheet-csv.ts';
import { fitCalibration } from '../../../src/domain/calibration/fit-calibration.ts';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const because = 'eleven of the fifteen certified digits, what double arithmetic keeps of a well-scaled fit';
const points = reference.data.rows_as_printed.map(([y, x]) => ({ x: Number(x), y: Number(y) }));
const { results } = reference;

describe('NIST StRD Pontius', () => {
  const fit = outcomeValue(fitPolynomial(points, 2));

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

  it('gives the certified residual standard deviation, sum of squares and R squared', () => {
    expectDigits(fit.residualStandardDeviation, {
      certified: results.residual_standard_deviation,
      digits: 11,
      because,
    });
    expectDigits(fit.residualSumOfSquares, { certified: results.anova.residual.ss, digits: 11, because });
    expectDigits(fit.rSquared, { certified: results.r_squared, digits: 11, because });
    expect(fit.degreesOfFreedom).toBe(results.anova.residual.df);
  });

  it('gives the same through a run sheet file, deflection standing in for the reading', () => {
    const text = readFileSync(new URL('pontius-run-sheet.csv', import.meta.url), 'utf8');
    const { curve } = outcomeValue(fitCalibration(outcomeValue(readRunSheetCsv(text)), { degree: 'auto' }));
    expect(curve.fit.degree).toBe(2);
    for (const [power, parameter] of results.parameters.entries()) {
      expectDigits(curve.fit.coefficients[power] ?? Number.NaN, { certified: parameter.estimate, digits: 11, because });
    }
  });

  it('would not accept the residual standard deviation with n for n - 3, nor a straight line', () => {
    const wrong = Math.sqrt(fit.residualSumOfSquares / points.length);
    const certified = results.residual_standard_deviation;
    expect(() => expectDigits(wrong, { certified, digits: 11, because })).toThrow(because);
    const line = outcomeValue(fitPolynomial(points, 1));
    expect(() => expectDigits(line.residualStandardDeviation, { certified, digits: 11, because })).toThrow(because);
  });
});
