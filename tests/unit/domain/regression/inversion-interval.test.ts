import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../../../src/domain/problem.ts';
import { type Degree, fitPolynomial, type PolynomialFit } from '../../../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../../../src/domain/regression/inversion-interval.ts';
import { predict } from '../../../../src/domain/regression/predict.ts';
import { type Interval, predictionInterval } from '../../../../src/domain/regression/prediction-interval.ts';
import { twoSidedStudentFactor } from '../../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const noisy = [1.1, 1.9, 3.2, 3.9, 5.1].map((y, index) => ({ x: index + 1, y }));
const line = outcomeValue(fitPolynomial(noisy, 1));

const curveThrough = (ys: readonly number[], degree: Degree): PolynomialFit =>
  outcomeValue(
    fitPolynomial(
      ys.map((y, x) => ({ x, y })),
      degree,
    ),
  );
const bandAt = (fit: PolynomialFit, y: number, level = 0.95): Outcome<Interval> =>
  invertPredictionBand(fit, y, { level, of: 'observation' });

/** The numbers in the fact of a problem: the ends of its gaps, or its bounds. */
const numbersOf = (outcome: Outcome<Interval>): readonly number[] =>
  outcome.ok
    ? []
    : [...(outcome.problem.given ?? '').matchAll(/-?\d+(\.\d+)?(e[+-]?\d+)?/g)].map(([text]) => Number(text));
const asWritten = { digits: 5, because: 'the problem writes six significant digits' } as const;

describe('inversion of the prediction band', () => {
  it('is the inverse alone where there is no scatter', () => {
    const exact = outcomeValue(
      fitPolynomial(
        [1, 2, 3].map((x) => ({ x, y: 2 * x })),
        1,
      ),
    );
    const interval = outcomeValue(invertPredictionBand(exact, 3, { level: 0.95, of: 'observation' }));
    expect(interval).toEqual({ level: 0.95, low: 1.5, high: 1.5 });
  });

  it('agrees with the closed form of Fieller for a line', () => {
    const [y, level] = [3.3, 0.9];
    const [, slope = Number.NaN] = line.coefficients;
    const t = twoSidedStudentFactor(level, 3);
    const s = line.residualStandardDeviation;
    const g = (t * s) ** 2 / (slope ** 2 * 10);
    const d = (y - predict(line, 3)) / slope;
    const root = ((t * s) / slope) * Math.sqrt(d ** 2 / 10 + (1 - g) * (1 + 1 / 5));
    const interval = outcomeValue(invertPredictionBand(line, y, { level, of: 'observation' }));
    const because = 'the closed form in double arithmetic';
    expectDigits(interval.low, { certified: 3 + (d - root) / (1 - g), digits: 12, because });
    expectDigits(interval.high, { certified: 3 + (d + root) / (1 - g), digits: 12, because });
  });

  it('finds the band of a curve that bends back beyond its range', () => {
    const points = [1, 2, 3, 4, 5, 6].map((x, index) => ({ x, y: 12 * x - x * x + (index % 2 === 0 ? 0.1 : -0.1) }));
    const bent = outcomeValue(fitPolynomial(points.slice(0, 5), 2));
    const y = predict(bent, 4.9);
    const { low, high } = outcomeValue(invertPredictionBand(bent, y, { level: 0.95, of: 'observation' }));
    const because = 'the bounds lie on the band itself';
    const at = (x: number) => predictionInterval(bent, x, { level: 0.95, of: 'observation' });
    expectDigits(at(low).high, { certified: y, digits: 11, because });
    expectDigits(at(high).low, { certified: y, digits: 11, because });
  });
});

/**
 * A line whose g is what is wanted: x from 0 to 6, slope b, residuals c (1, -2, 1, 0, -1, 2, -1), which add up to nothing
 * and have no slope. Sxx = 28, sum of squares 12 c^2, five degrees of freedom, g = t^2 s^2 / (b^2 Sxx).
 */
const pattern = [1, -2, 1, 0, -1, 2, -1];
const t = twoSidedStudentFactor(0.95, 5);
const lineOfG = (g: number): PolynomialFit => {
  const c = Math.sqrt((5 * g * 28) / (12 * t ** 2));
  return curveThrough(
    pattern.map((part, x) => 10 + x + c * part),
    1,
  );
};

describe('the named outcomes without an interval, for a line by the discriminant of Fieller', () => {
  // E. C. Fieller, 1954 (from memory): with d the distance of the inverse from the mean of x, b = 1, n = 7,
  // the ends are mean + (d -+ sqrt(g Sxx (d^2 / Sxx + (1 - g)(1 + 1/n)))) / (1 - g).
  const ends = (g: number, d: number): readonly number[] => {
    const root = Math.sqrt(g * 28 * (d ** 2 / 28 + (1 - g) * (1 + 1 / 7)));
    return [3 + (d - root) / (1 - g), 3 + (d + root) / (1 - g)].sort((a, b) => a - b);
  };
  const at = (g: number, d: number) => bandAt(lineOfG(g), 13 + d);

  it('has the g it was made for', () => {
    for (const g of [0.3, 0.99, 1.05]) {
      const fit = lineOfG(g);
      expectDigits(((t * (fit.standardErrors[1] ?? 0)) / (fit.coefficients[1] ?? 0)) ** 2, {
        certified: g,
        digits: 12,
        because: 'the slope over its standard error, squared, in doubles',
      });
    }
  });

  it('is an interval where g is below 1 and the ends are near', () => {
    const interval = outcomeValue(at(0.3, 0.2));
    const [low = Number.NaN, high = Number.NaN] = ends(0.3, 0.2);
    const because = 'the closed form in double arithmetic';
    expectDigits(interval.low, { certified: low, digits: 12, because });
    expectDigits(interval.high, { certified: high, digits: 12, because });
  });

  it('lies outside the range where g is below 1 and an end is further than half the width: -3 to 9', () => {
    for (const [g, d, side] of [
      [0.6, 2, 'the upper side'],
      [0.6, -2, 'the lower side'],
      [0.9, 0.3, 'either side'],
      [0.999, 2.5, 'the upper side'],
    ] as const) {
      const outcome = at(g, d);
      expect(outcome).toMatchObject({ problem: { code: 'interval-outside-range', needed: 'bounds from -3 to 9' } });
      expect(outcome.ok ? '' : outcome.problem.message).toContain(side);
      const [low = Number.NaN, high = Number.NaN] = ends(g, d);
      expect(low < -3 || high > 9).toBe(true);
      expectDigits(numbersOf(outcome)[0] ?? Number.NaN, { certified: low, ...asWritten });
      expectDigits(numbersOf(outcome)[1] ?? Number.NaN, { certified: high, ...asWritten });
    }
  });

  it('is two rays where g is above 1 and the discriminant is not below zero, with the gap between them', () => {
    for (const [g, d] of [
      [1.01, 2.9],
      [1.1, -2.6],
      [1.2, 2.9],
    ] as const) {
      const outcome = at(g, d);
      expect(outcome).toMatchObject({ problem: { code: 'interval-two-rays' } });
      const gap = ends(g, d);
      // The gap lies on the far side of the mean of x: there the line is too low, or too high, even for its wide band.
      expect(gap.every((x) => (d > 0 ? x < 3 : x > 3))).toBe(true);
      for (const [index, end] of gap.entries()) {
        expectDigits(numbersOf(outcome)[index] ?? Number.NaN, { certified: end, ...asWritten });
      }
    }
  });

  it('is the whole line where g is above 1 and the discriminant is below zero', () => {
    for (const [g, d] of [
      [1.01, 0.2],
      [1.5, 2.9],
      [40, 0],
    ] as const) {
      expect(d ** 2 / 28 + (1 - g) * (1 + 1 / 7)).toBeLessThan(0);
      expect(at(g, d)).toMatchObject({ problem: { code: 'interval-whole-line', given: 'no bound on either side' } });
    }
  });

  it('would not accept the limit at g of 1 shifted by one degree of freedom', () => {
    // With n - 1 for n - 2 this line would have g = 0.95 and bounds; it has g = 1.14 and none.
    expect(at(1.14, 0)).toMatchObject({ ok: false, problem: { code: 'interval-whole-line' } });
    expect(at((1.14 * 5) / 6, 0)).toMatchObject({ problem: { code: 'interval-outside-range' } });
  });
});

describe('the named outcomes for a bent curve', () => {
  it('is an interval although the last term does not stand out, where the band is left on both sides near by', () => {
    const fit = curveThrough([0.1, 9.8, 20.2, 29.9, 40.1, 49.8], 2);
    const tOfTerm = Math.abs((fit.coefficients[2] ?? 0) / (fit.standardErrors[2] ?? 0));
    expect(tOfTerm).toBeLessThan(twoSidedStudentFactor(0.95, fit.degreesOfFreedom));
    expect(bandAt(fit, 25).ok).toBe(true);
  });

  const cases = [
    { degree: 2, ys: [-0.9, 4.2, 5.6, 9.2], y: 8.3, code: 'interval-whole-line' },
    { degree: 2, ys: [1.3, 1.5, 7.5, 11.3, 10, 10.6, 16.6, 24], y: 14.9, code: 'interval-two-rays' },
    { degree: 2, ys: [0.5, 3.7, 7.1, 9.1, 10.9], y: 10.3, code: 'interval-outside-range' },
    { degree: 3, ys: [2.1, 4.5, 10.1, 5.8, 13.1, 17.5], y: 2.2, code: 'interval-whole-line' },
    { degree: 3, ys: [-0.5, 4.5, 4, 4.7, 14.8, 19.5, 16.2, 18.5, 25.9], y: 20.2, code: 'interval-two-rays' },
  ] as const;

  it.each(cases)('degree $degree: $code, as a scan of the band along the line finds it too', (one) => {
    const fit = curveThrough(one.ys, one.degree);
    const outcome = bandAt(fit, one.y);
    expect(outcome).toMatchObject({ ok: false, problem: { code: one.code } });
    const width = one.ys.length - 1;
    const holds = (x: number): boolean => {
      const band = predictionInterval(fit, x, { level: 0.95, of: 'observation' });
      return band.low <= one.y && one.y <= band.high;
    };
    // Fine steps near by, and powers of 1.1 out to a million times the width on both sides.
    const near = Array.from({ length: 40_001 }, (_, step) => width * (-20 + step / 1000));
    const far = Array.from({ length: 140 }, (_, power) => 20 * width * 1.1 ** power);
    const xs = [...far.map((x) => -x).reverse(), ...near, ...far];
    const changes = xs.flatMap((x, index) => {
      const before = xs[index - 1] ?? x;
      return holds(before) === holds(x) ? [] : [{ before, after: x }];
    });
    const told = numbersOf(outcome);
    if (one.code === 'interval-whole-line') expect(changes).toEqual([]);
    if (one.code === 'interval-two-rays') {
      expect(holds(xs[0] ?? 0) && holds(xs.at(-1) ?? 0)).toBe(true);
      expect(told).toHaveLength(2);
      expect(changes).toHaveLength(2);
      for (const [index, end] of told.entries()) {
        expect(end).toBeGreaterThan(changes[index]?.before ?? Number.NaN);
        expect(end).toBeLessThan(changes[index]?.after ?? Number.NaN);
      }
    }
    if (one.code === 'interval-outside-range') {
      const [low = 0, high = 0] = told;
      expect(holds(low * 1.0001) && holds(high * 0.9999)).toBe(true);
      expect(holds(low * 0.9999) || holds(high * 1.0001)).toBe(false);
      expect(high).toBeGreaterThan(1.5 * width);
    }
  });
});
