// Laws of a curve: force and reading are inverse to each other, and every interval holds what it is an interval of.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Curve,
  forceBehindReading,
  forceIntervalAtReading,
  readingForForce,
} from '../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../src/domain/calibration/fit-calibration.ts';
import type { RunSheetPoint } from '../../src/domain/calibration/run-sheet.ts';
import { fitPolynomial } from '../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../src/domain/regression/inversion-interval.ts';
import { leverageAt, predict } from '../../src/domain/regression/predict.ts';
import { predictionInterval } from '../../src/domain/regression/prediction-interval.ts';
import { twoSidedStudentFactor } from '../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

/** Curves of three cycles at ten levels: any slope of practice, up to 1 % of bend and 0.5 % of scatter. */
const anyCurve: fc.Arbitrary<Curve> = fc
  .record({
    slope: fc.double({ min: 0.01, max: 500, noNaN: true }),
    bend: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
    scatter: fc.array(fc.double({ min: -0.005, max: 0.005, noNaN: true }), { minLength: 30, maxLength: 30 }),
    degree: fc.constantFrom(1, 2, 3),
    set: fc.constantFrom('force', 'reading'),
  })
  .map(({ slope, bend, scatter, degree, set }) => {
    const cycles = [0, 1, 2].map((cycle) => ({
      points: Array.from({ length: 10 }, (_, row): RunSheetPoint => {
        const part = (row + 1) / 10;
        const off = 1 + (scatter[10 * cycle + row] ?? 0);
        return { direction: 'up', force: 1000 * part, reading: 1000 * slope * part * (1 + bend * part) * off };
      }),
    }));
    return outcomeValue(fitCalibration({ units: { force: 'kN', reading: 'bar' }, cycles, set }, { degree })).curve;
  });
const partOfRange = fc.double({ min: 0, max: 1, noNaN: true });
const between = ({ low, high }: Curve['forceRange'], part: number): number => low + part * (high - low);
const leastScatter = 1e-3;
const becauseOfWild =
  'values of some hundreds, each good to about 1e-12 as far as half the width beyond, against a band of a thousandth or more';
const because = 'a curve with a slope within a factor of two of its mean, solved to the last bits';

describe('a curve', () => {
  it('gives the force back that a reading was asked for', () => {
    fc.assert(
      fc.property(anyCurve, partOfRange, (curve, part) => {
        const force = between(curve.forceRange, part);
        const reading = outcomeValue(readingForForce(curve, force));
        expectDigits(outcomeValue(forceBehindReading(curve, reading)), { certified: force, digits: 12, because });
      }),
    );
  });

  it('gives the reading back that a force was asked for', () => {
    fc.assert(
      fc.property(anyCurve, partOfRange, (curve, part) => {
        const reading = between(curve.readingRange, part);
        const force = outcomeValue(forceBehindReading(curve, reading));
        expectDigits(outcomeValue(readingForForce(curve, force)), { certified: reading, digits: 12, because });
      }),
    );
  });

  it('rises: a larger force needs a larger reading', () => {
    fc.assert(
      fc.property(anyCurve, partOfRange, partOfRange, (curve, one, other) => {
        fc.pre(Math.abs(one - other) > 1e-9);
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((part) =>
          outcomeValue(readingForForce(curve, between(curve.forceRange, part))),
        );
        expect(low).toBeLessThan(high ?? Number.NaN);
      }),
    );
  });

  it('has its force inside the force interval, which widens with the level', () => {
    fc.assert(
      fc.property(anyCurve, partOfRange, (curve, part) => {
        const reading = between(curve.readingRange, part);
        const force = outcomeValue(forceBehindReading(curve, reading));
        const narrow = outcomeValue(forceIntervalAtReading(curve, reading, 0.9));
        const wide = outcomeValue(forceIntervalAtReading(curve, reading, 0.99));
        expect(narrow.low).toBeLessThanOrEqual(force);
        expect(narrow.high).toBeGreaterThanOrEqual(force);
        expect(wide.low).toBeLessThanOrEqual(narrow.low);
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high);
      }),
    );
  });
});

describe('the inversion of the prediction band', () => {
  it('has bounds on the band, for either kind of band', () => {
    const kinds = fc.constantFrom<'observation' | 'mean-response'>('observation', 'mean-response');
    fc.assert(
      fc.property(anyCurve, partOfRange, kinds, (curve, part, of) => {
        const { fit } = curve;
        const y = between({ low: predict(fit, fit.xRange.low), high: predict(fit, fit.xRange.high) }, part);
        const { low, high } = outcomeValue(invertPredictionBand(fit, y, { level: 0.95, of }));
        expectDigits(predictionInterval(fit, low, { level: 0.95, of }).high, { certified: y, digits: 10, because });
        expectDigits(predictionInterval(fit, high, { level: 0.95, of }).low, { certified: y, digits: 10, because });
      }),
    );
  });

  it('gives one stretch of x that all explain y, or a named reason, never a number that is not finite', () => {
    const wild = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 6, maxLength: 12 });
    fc.assert(
      fc.property(wild, partOfRange, fc.constantFrom<1 | 2 | 3>(1, 2, 3), (scatter, part, degree) => {
        const points = scatter.map((off, index) => ({ x: index, y: 20 * index + off }));
        const fit = fitPolynomial(points, degree);
        if (!fit.ok) return;
        const y = between({ low: predict(fit.value, 0), high: predict(fit.value, points.length - 1) }, part);
        const interval = invertPredictionBand(fit.value, y, { level: 0.95, of: 'observation' });
        if (interval.ok) {
          const ends = [interval.value.low, interval.value.high];
          const { residualStandardDeviation: s, degreesOfFreedom } = fit.value;
          for (const x of s > leastScatter ? ends : []) {
            // On the band exactly: |y - p(x)| = t s sqrt(1 + h).
            const edge = twoSidedStudentFactor(0.95, degreesOfFreedom) * s * Math.sqrt(1 + leverageAt(fit.value, x));
            expectDigits(Math.abs(y - predict(fit.value, x)), { certified: edge, digits: 7, because: becauseOfWild });
          }
          const { low, high } = interval.value;
          expect([low, high].every(Number.isFinite)).toBe(true);
          expect(low).toBeLessThanOrEqual(high);
          for (const inner of [0.001, 0.1, 0.3, 0.5, 0.7, 0.9, 0.999]) {
            const x = low + inner * (high - low);
            const band = predictionInterval(fit.value, x, { level: 0.95, of: 'observation' });
            expect(band.low - 1e-9).toBeLessThanOrEqual(y);
            expect(band.high + 1e-9).toBeGreaterThanOrEqual(y);
          }
        } else {
          expect([
            'interval-whole-line',
            'interval-two-rays',
            'interval-outside-range',
            'curve-not-increasing',
            'outside-calibrated-range',
          ]).toContain(interval.problem.code);
        }
      }),
    );
  });
});
