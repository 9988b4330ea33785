import { describe, expect, it } from 'vitest';
import { type Degree, fitPolynomial, type Point } from '../../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const line = (...xs: readonly number[]): readonly Point[] => xs.map((x) => ({ x, y: 2 * x + 1 }));
const refused = (points: readonly Point[], degree: Degree) => {
  const outcome = fitPolynomial(points, degree);
  return outcome.ok ? 'fitted' : outcome.problem.code;
};

describe('fitting a polynomial', () => {
  it('refuses too few points: none, one, two, and fewer than two more than the degree', () => {
    for (const points of [[], line(1), line(1, 2)]) expect(refused(points, 1)).toBe('too-few-points');
    expect(refused(line(1, 2, 3), 1)).toBe('fitted');
    expect(refused(line(1, 2, 3), 2)).toBe('too-few-points');
    expect(refused(line(1, 2, 3, 4), 3)).toBe('too-few-points');
    expect(refused(line(1, 2, 3, 4, 5), 3)).toBe('fitted');
  });

  it('refuses points that are all at one level, and fewer levels than coefficients', () => {
    expect(refused(line(5, 5, 5, 5), 1)).toBe('equal-levels');
    expect(refused(line(1, 1, 2, 2, 2), 2)).toBe('too-few-points');
  });

  it('refuses what is not a finite number and says which', () => {
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY]) {
      const outcome = fitPolynomial([...line(1, 2), { x: 3, y: wrong }], 1);
      expect(outcome).toMatchObject({ problem: { code: 'number-out-of-range', where: 'points[2].y' } });
    }
  });

  it('refuses a fit whose two solutions disagree: two of three levels all but equal', () => {
    const points = [0, 1e-8, 1].flatMap((x) => [0, 1].map((repeat) => ({ x, y: x + 0.1 * repeat })));
    expect(refused(points, 2)).toBe('fit-unstable');
    expect(refused(points, 1)).toBe('fitted');
  });

  it('refuses levels that are equal once scaled, and values whose coefficients are not finite', () => {
    expect(refused(line(0, 1e-300, 0, 1), 2)).toBe('fit-unstable');
    const huge = [-1.5e308, 0, 1.5e308].map((x, y) => ({ x, y }));
    expect(refused(huge, 1)).toBe('fit-unstable');
    const tiny = [1e-150, 2e-150, 3e-150, 4e-150, 5e-150].map((x, y) => ({ x, y: y ** 3 }));
    expect(refused(tiny, 3)).toBe('fit-unstable');
  });

  it('keeps the digits of a cubic whose levels crowd at one end', () => {
    for (const xs of [
      [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 1000],
      [100, 101, 102, 103, 104, 105, 106, 200],
    ]) {
      const exact = xs.map((x) => ({ x, y: 1 + 2 * x + 3 * x ** 2 + 4 * x ** 3 }));
      expectDigits(outcomeValue(fitPolynomial(exact, 3)).coefficients[3] ?? Number.NaN, {
        certified: 4,
        digits: 11,
        because: 'the design loses about four of sixteen digits, its normal equations alone would lose twice as many',
      });
    }
  });

  it('passes through exact points with no scatter and no studentized residual to divide by', () => {
    const fit = outcomeValue(fitPolynomial(line(1, 2, 3), 1));
    expect(fit.residualStandardDeviation).toBe(0);
    expect(fit.points.map(({ studentized }) => studentized)).toEqual([null, null, null]);
    expect(fit.lackOfFit).toBeNull();
    expect(fit.coefficients).toEqual([1, 2]);
  });

  it('fits equal y with a flat line and R squared of zero', () => {
    const fit = outcomeValue(
      fitPolynomial(
        [1, 2, 3].map((x) => ({ x, y: 4 })),
        1,
      ),
    );
    expect(fit.coefficients).toEqual([4, 0]);
    expect(fit.rSquared).toBe(0);
  });

  it('gives leverages that add up to the number of coefficients, and studentized residuals', () => {
    const points = [1, 2, 3, 4, 5, 6].map((x, index) => ({ x, y: x + (index % 2 === 0 ? 0.1 : -0.1) }));
    for (const degree of [1, 2, 3] as const) {
      const fit = outcomeValue(fitPolynomial(points, degree));
      const sum = fit.points.reduce((total, { leverage }) => total + leverage, 0);
      expectDigits(sum, { certified: degree + 1, digits: 12, because: 'the trace of a projection, in doubles' });
      for (const { residual, leverage, studentized, x, y, fitted } of fit.points) {
        const own = residual / (fit.residualStandardDeviation * Math.sqrt(1 - leverage));
        expectDigits(studentized ?? Number.NaN, { certified: own, digits: 12, because: 'the definition' });
        expectDigits(fitted + residual, { certified: y, digits: 14, because: 'one rounding' });
        expect(x).toBeGreaterThan(0);
      }
    }
  });

  it('gives the covariance of the coefficients, whose diagonal is their standard errors squared', () => {
    // A line through x = 1, 2, 3, 4, 5: s^2 (1/n + mean^2 / Sxx), -s^2 mean / Sxx, s^2 / Sxx with mean 3 and Sxx 10.
    const points = [1.1, 1.9, 3.2, 3.9, 5.1].map((y, index) => ({ x: index + 1, y }));
    const fit = outcomeValue(fitPolynomial(points, 1));
    const variance = fit.residualStandardDeviation ** 2;
    const because = 'the closed form for a line';
    for (const [row, column, certified] of [
      [0, 0, variance * (1 / 5 + 9 / 10)],
      [0, 1, (-variance * 3) / 10],
      [1, 0, (-variance * 3) / 10],
      [1, 1, variance / 10],
    ] as const) {
      expectDigits(fit.covariance[row]?.[column] ?? Number.NaN, { certified, digits: 13, because });
    }
    const cubic = outcomeValue(
      fitPolynomial(
        [3, 1, 4, 1, 5, 9, 2, 6].map((y, x) => ({ x, y })),
        3,
      ),
    );
    for (const [power, error] of cubic.standardErrors.entries()) {
      expectDigits(cubic.covariance[power]?.[power] ?? Number.NaN, {
        certified: error ** 2,
        digits: 13,
        because: 'a root',
      });
    }
  });

  it('keeps the digits of a variance far from zero, where subtracting large numbers would leave none', () => {
    // x = 1e6 + (0 .. 4): the variance of the intercept is s^2 (1/5 + (1e6 + 2)^2 / 10).
    const points = [1.1, 1.9, 3.2, 3.9, 5.1].map((y, index) => ({ x: 1e6 + index, y }));
    const fit = outcomeValue(fitPolynomial(points, 1));
    const variance = fit.residualStandardDeviation ** 2;
    const because = 'the closed form for a line';
    expectDigits(fit.covariance[0]?.[0] ?? Number.NaN, {
      certified: variance * (1 / 5 + (1e6 + 2) ** 2 / 10),
      digits: 12,
      because,
    });
    expectDigits(fit.covariance[0]?.[1] ?? Number.NaN, {
      certified: (-variance * (1e6 + 2)) / 10,
      digits: 12,
      because,
    });
  });

  it('has no deleted residual where one degree of freedom is left, or where all other points fit exactly', () => {
    const one = outcomeValue(
      fitPolynomial(
        [0, 1, 5].map((y, x) => ({ x, y })),
        1,
      ),
    );
    expect(one.points.map(({ deletedStudentized }) => deletedStudentized)).toEqual([null, null, null]);
    expect(one.points.every(({ studentized, cooksDistance }) => studentized !== null && cooksDistance !== null)).toBe(
      true,
    );
    const off = outcomeValue(fitPolynomial([...line(1, 2, 3, 4, 6), { x: 5, y: 12 }], 1));
    expect(off.points.map(({ deletedStudentized }) => deletedStudentized === null)).toEqual([
      false,
      false,
      false,
      false,
      false,
      true,
    ]);
    const exact = outcomeValue(fitPolynomial(line(1, 2, 3, 4), 1));
    expect(exact.points.map(({ cooksDistance }) => cooksDistance)).toEqual([null, null, null, null]);
  });

  it('fits degrees 4 and 5, which no calibration takes', () => {
    const xs = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2];
    const fit = outcomeValue(
      fitPolynomial(
        xs.map((x) => ({ x, y: 1 - x + 2 * x ** 3 - x ** 4 + 0.5 * x ** 5 })),
        5,
      ),
    );
    const because = 'exact points of a well-scaled fit, whose largest value is some ten times the coefficients';
    for (const [power, certified] of [1, -1, 0, 2, -1, 0.5].entries()) {
      expectDigits(fit.coefficients[power] ?? Number.NaN, { certified, digits: 12, because });
    }
  });

  it('tests lack of fit only where levels repeat and scatter', () => {
    const repeated = [1, 1, 2, 2, 3, 3].map((x, index) => ({ x, y: x * x + (index % 2) * 0.01 }));
    // Means 1.005, 4.005, 9.005 lie 1/3, -2/3, 1/3 off their line: 2 (2/3) / 1 against 3 (0.01^2 / 2) / 3.
    const fit = outcomeValue(fitPolynomial(repeated, 1));
    expect(fit.lackOfFit).toMatchObject({ numeratorDegrees: 1, denominatorDegrees: 3 });
    expectDigits(fit.lackOfFit?.lackOfFitSumOfSquares ?? Number.NaN, {
      certified: 2 * (2 / 3),
      digits: 12,
      because: 'whole numbers and three thirds',
    });
    expectDigits(fit.lackOfFit?.pureErrorSumOfSquares ?? Number.NaN, {
      certified: 3 * (0.01 ** 2 / 2),
      digits: 9,
      because: 'the scatter is 1e-3 of the values, so its square loses six digits of sixteen',
    });
    expectDigits(fit.lackOfFit?.fStatistic ?? Number.NaN, {
      certified: (2 * (2 / 3)) / (0.01 ** 2 / 2),
      digits: 9,
      because: 'the scatter is 1e-3 of the values, so its square loses six digits of sixteen',
    });
    expect(outcomeValue(fitPolynomial(repeated, 2)).lackOfFit).toBeNull();
    const exact = [1, 1, 2, 2, 3, 3].map((x) => ({ x, y: x * x }));
    expect(outcomeValue(fitPolynomial(exact, 1)).lackOfFit).toBeNull();
  });
});
