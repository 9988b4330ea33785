// Laws of a least-squares fit: what must not change, and how it changes, when the points are written another way.

import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type Degree, fitPolynomial, type Point } from '../../src/domain/regression/fit-polynomial.ts';
import { predict } from '../../src/domain/regression/predict.ts';
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
        for (const [index, { fitted }] of after.points.entries()) {
          expectDigits(fitted, { certified: before.points[index]?.fitted ?? Number.NaN, digits, because });
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
});
