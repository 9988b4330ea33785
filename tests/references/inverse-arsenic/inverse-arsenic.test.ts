// Arsenic: the x behind an observed y, with the interval for one observation and for the mean response.

import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../src/domain/regression/fit-polynomial.ts';
import { invertPredictionBand } from '../../../src/domain/regression/inversion-interval.ts';
import { invert } from '../../../src/domain/regression/invert.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const printed = { digits: 'as-printed', because: 'the digits the paper prints' } as const;
const exact = { digits: 12, because: 'a recomputation in double arithmetic given to 16 digits' } as const;

describe('Graybill and Iyer arsenic data', () => {
  const points = reference.data.x.map((x, index) => ({ x, y: reference.data.y[index] ?? Number.NaN }));
  const fit = outcomeValue(fitPolynomial(points, 1));
  const [single, , mean] = reference.results;
  const cases = [
    { of: 'observation', result: single },
    { of: 'mean-response', result: mean },
  ] as const;

  it('gives estimate and interval as published, for one observation and for the mean response', () => {
    for (const { of, result } of cases) {
      const y0 = Number(result?.y0);
      const interval = outcomeValue(invertPredictionBand(fit, y0, { level: result?.level ?? Number.NaN, of }));
      expectDigits(outcomeValue(invert(fit, y0)), { certified: result?.published?.estimate ?? '', ...printed });
      expectDigits(interval.low, { certified: result?.published?.lower ?? '', ...printed });
      expectDigits(interval.high, { certified: result?.published?.upper ?? '', ...printed });
      expectDigits(interval.low, { certified: result?.recomputed.inversion[0] ?? Number.NaN, ...exact });
      expectDigits(interval.high, { certified: result?.recomputed.inversion[1] ?? Number.NaN, ...exact });
    }
  });

  it('would not accept the symmetric delta-method interval, nor the other kind of interval', () => {
    const certified = single?.published?.lower ?? '';
    const wald = Number(single?.published?.wald?.lower);
    expect(() => expectDigits(wald, { certified, ...printed })).toThrow(printed.because);
    const other = outcomeValue(invertPredictionBand(fit, 3, { level: 0.9, of: 'mean-response' }));
    expect(() => expectDigits(other.low, { certified, ...printed })).toThrow(printed.because);
  });
});
