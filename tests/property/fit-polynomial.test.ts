// Laws of a least-squares fit: what must not change, and how it changes, when the points are written another way.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Degree, fitPolynomial, type Point } from '../../src/domain/regression/fit-polynomial.ts';
import { predict, standardErrorOfPrediction } from '../../src/domain/regression/predict.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

/** Points with whole x, so that adding a whole number to x is exact, and y between 1000 and 4000 with real scatter. */
const scatteredPoints = fc
  .uniqueArray(fc.integer({ min: 1, max: 1000 }), { minLength: 8, maxLength: 30 })
  .chain((xs) =>
    fc
      .array(fc.integer({ min: -50, max: 50 }), { minLength: xs.length, maxLength: xs.length })
      .map((scatter) =>
        xs.map((x, index): Point => ({ x, y: 1000 + 2 * x + (scatter[index] ?? 0) + (index % 2 === 0 ? 5 : -5) })),
      ),
  )
  // Points crowded at one end settle a cubic badly; a run sheet spreads them, and so does this.
  .filter((points) => Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)) >= 300);
const anyDegree = fc.constantFrom<Degree>(1, 2, 3);
const because = 'scaled data with a condition number of the normal equations of at most 1e5, refined once';
const digits = 9;

describe('a fit', () => {
  it('does not depend on the order of the points', () => {
    fc.assert(
      fc.property(scatteredPoints, anyDegree, fc.infiniteStream(fc.nat()), (points, degree, keys) => {
        const shuffled = points
          .map((point) => ({ point, key: keys.next().value ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ point }) => point);
        const [first, second] = [points, shuffled].map((each) => outcomeValue(fitPolynomial(each, degree)));
        if (first === undefined || second === undefined) throw new Error('two fits are compared');
        for (const { x } of points) expectDigits(predict(second, x), { certified: predict(first, x), digits, because });
        expectDigits(second.residualStandardDeviation, {
          certified: first.residualStandardDeviation,
          digits,
          because,
        });
      }),
    );
  });

  it('keeps slope, residuals and scatter when a constant is added to every x', () => {
    fc.assert(
      fc.property(scatteredPoints, fc.integer({ min: -100_000, max: 100_000 }), (points, constant) => {
        const before = outcomeValue(fitPolynomial(points, 1));
        const after = outcomeValue(
          fitPolynomial(
            points.map(({ x, y }) => ({ x: x + constant, y })),
            1,
          ),
        );
        expectDigits(after.coefficients[1] ?? Number.NaN, {
          certified: before.coefficients[1] ?? Number.NaN,
          digits,
          because,
        });
        expectDigits(after.residualStandardDeviation, { certified: before.residualStandardDeviation, digits, because });
        expectDigits(after.standardErrors[1] ?? Number.NaN, {
          certified: before.standardErrors[1] ?? Number.NaN,
          digits,
          because,
        });
        for (const [index, { fitted, leverage }] of after.points.entries()) {
          expectDigits(fitted, { certified: before.points[index]?.fitted ?? Number.NaN, digits, because });
          expectDigits(leverage, { certified: before.points[index]?.leverage ?? Number.NaN, digits, because });
        }
      }),
    );
  });

  it('scales its scatter, coefficients and their standard errors with y', () => {
    fc.assert(
      fc.property(
        scatteredPoints,
        anyDegree,
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (points, degree, factor) => {
          const before = outcomeValue(fitPolynomial(points, degree));
          const after = outcomeValue(
            fitPolynomial(
              points.map(({ x, y }) => ({ x, y: y * factor })),
              degree,
            ),
          );
          expectDigits(after.residualStandardDeviation, {
            certified: before.residualStandardDeviation * factor,
            digits,
            because,
          });
          for (const [power, error] of after.standardErrors.entries()) {
            expectDigits(error, { certified: (before.standardErrors[power] ?? Number.NaN) * factor, digits, because });
          }
          for (const { x } of points) {
            expectDigits(predict(after, x), { certified: predict(before, x) * factor, digits, because });
          }
        },
      ),
    );
  });

  it('leaves residuals that are orthogonal to every power of x', () => {
    fc.assert(
      fc.property(scatteredPoints, anyDegree, (points, degree) => {
        const { points: fitted, centre, halfWidth } = outcomeValue(fitPolynomial(points, degree));
        for (let power = 0; power <= degree; power += 1) {
          const product = fitted.reduce(
            (sum, { x, residual }) => sum + residual * ((x - centre) / halfWidth) ** power,
            0,
          );
          expectDigits(product, {
            certified: 0,
            digits: 8,
            because: 'thirty residuals of some tens, each exact to about 1e-12 of readings of thousands',
          });
        }
      }),
    );
  });

  it('scales its covariance with the square of y and with the powers of x', () => {
    const factor = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(scatteredPoints, anyDegree, factor, factor, (points, degree, ofX, ofY) => {
        const before = outcomeValue(fitPolynomial(points, degree));
        const after = outcomeValue(
          fitPolynomial(
            points.map(({ x, y }) => ({ x: x * ofX, y: y * ofY })),
            degree,
          ),
        );
        for (const [i, row] of after.covariance.entries()) {
          for (const [j, value] of row.entries()) {
            expectDigits(value, {
              certified: ((before.covariance[i]?.[j] ?? Number.NaN) * ofY ** 2) / ofX ** (i + j),
              digits: 7,
              because: 'the same, less two digits for entries off the diagonal, whose terms may cancel',
            });
          }
        }
      }),
    );
  });

  it('has the covariance that carries its coefficients to the standard error of the curve', () => {
    fc.assert(
      fc.property(scatteredPoints, fc.double({ min: 0, max: 1, noNaN: true }), (points, part) => {
        const fit = outcomeValue(fitPolynomial(points, 1));
        const x = fit.xRange.low + part * (fit.xRange.high - fit.xRange.low);
        const [[ofIntercept = 0, both = 0] = [], [, ofSlope = 0] = []] = fit.covariance;
        const curve = standardErrorOfPrediction(fit, x, 'mean-response') ** 2;
        expectDigits(ofIntercept + 2 * x * both + x * x * ofSlope, { certified: curve, digits: 8, because });
      }),
    );
  });

  it('gives for each point what a fit without it gives: its deleted residual and how far the curve moves', () => {
    fc.assert(
      fc.property(scatteredPoints, anyDegree, fc.nat(), (points, degree, key) => {
        const fit = outcomeValue(fitPolynomial(points, degree));
        const index = key % points.length;
        const point = fit.points[index];
        // A point the others hardly hold, or one almost on the curve, has nothing but rounding to compare.
        fc.pre(point !== undefined && point.leverage < 0.9 && Math.abs(point.studentized ?? 0) > 0.05);
        const without = outcomeValue(
          fitPolynomial(
            points.filter((_, other) => other !== index),
            degree,
          ),
        );
        const missed = point.y - predict(without, point.x);
        const expected = missed / standardErrorOfPrediction(without, point.x, 'observation');
        const refit = {
          digits: 6,
          because:
            'differences of two fits of some thousands that may be a thousandth of them, each good to nine digits',
        };
        expectDigits(point.deletedStudentized ?? Number.NaN, { certified: expected, ...refit });
        const moved = points.reduce((sum, { x }) => sum + (predict(fit, x) - predict(without, x)) ** 2, 0);
        const distance = moved / ((degree + 1) * fit.residualStandardDeviation ** 2);
        expectDigits(point.cooksDistance ?? Number.NaN, { certified: distance, ...refit });
        expect(Math.sign(point.deletedStudentized ?? 0)).toBe(Math.sign(point.residual));
      }),
    );
  });
});
