import { describe, it } from 'vitest';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
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
