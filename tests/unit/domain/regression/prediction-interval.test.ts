import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../../../src/domain/regression/inversion-interval.ts';
import { leverageAt, predict, slopeAt } from '../../../../src/domain/regression/predict.ts';
import { predictionInterval } from '../../../../src/domain/regression/prediction-interval.ts';
import { twoSidedStudentFactor } from '../../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const noisy = [1.1, 1.9, 3.2, 3.9, 5.1].map((y, index) => ({ x: index + 1, y }));
const line = outcomeValue(fitPolynomial(noisy, 1));

describe('prediction interval', () => {
  it('is t s sqrt(1 + 1/n + d^2/Sxx) for a line, without the 1 for the mean response', () => {
    const [x, n, mean, sumXx] = [4, 5, 3, 10];
    const h = 1 / n + (x - mean) ** 2 / sumXx;
    const ts = twoSidedStudentFactor(0.95, 3) * line.residualStandardDeviation;
    const because = 'the closed form for a line';
    const single = predictionInterval(line, x, { level: 0.95, of: 'observation' });
    const curve = predictionInterval(line, x, { level: 0.95, of: 'mean-response' });
    expectDigits(leverageAt(line, x), { certified: h, digits: 13, because });
    expectDigits((single.high - single.low) / 2, { certified: ts * Math.sqrt(1 + h), digits: 12, because });
    expectDigits((curve.high - curve.low) / 2, { certified: ts * Math.sqrt(h), digits: 12, because });
    expectDigits((single.high + single.low) / 2, { certified: predict(line, x), digits: 13, because });
    expectDigits(slopeAt(line, x), { certified: line.coefficients[1] ?? Number.NaN, digits: 13, because });
  });
});

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

  it('names a side without a bound, and both sides', () => {
    const scattered = outcomeValue(
      fitPolynomial(
        [1, 2, 3, 4, 5].map((x, index) => ({ x, y: x + [2, -2, 1, -2, 2][index]! })),
        1,
      ),
    );
    const both = invertPredictionBand(scattered, 3.2, { level: 0.95, of: 'observation' });
    expect(both).toMatchObject({ ok: false, problem: { code: 'interval-not-finite' } });
    expect(both.ok ? '' : both.problem.message).toContain('either side');
    const upper = invertPredictionBand(line, 5, { level: 0.999, of: 'observation' });
    expect(upper.ok ? '' : upper.problem.message).toContain('the upper side');
    const lower = invertPredictionBand(line, 1.2, { level: 0.999, of: 'observation' });
    expect(lower.ok ? '' : lower.problem.message).toContain('the lower side');
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
