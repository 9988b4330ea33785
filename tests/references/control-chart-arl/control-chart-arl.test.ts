// Published average run lengths of both charts, met by simulation. The longer run is tests/benchmark/run-lengths.ts.

import { describe, expect, it } from 'vitest';
import { expectDigits } from '../../expect-digits.ts';
import { charts, runLength } from '../../run-length.ts';
import reference from './case.json' with { type: 'json' };

const { data, recomputed_here: recomputed } = reference;
/** 3 % as a log relative error: three standard errors or more of the means below. */
const within = { digits: -Math.log10(0.03), because: 'a simulated mean with a standard error of 1 % at most' } as const;
const tables = [
  ['EWMA 0.2, L 2.962, asymptotic limits', recomputed.ewma_two_sided_fixed_limits_lambda_L['0.2,2.962']],
  ['CUSUM 0.5, 5', recomputed['cusum_two_sided_k0.5_h5']],
  ['CUSUM 0.5, 4', recomputed['cusum_two_sided_k0.5_h4']],
] as const;

describe('published run lengths of control charts', () => {
  it.each(tables)('are met by %s, from half a standard deviation of shift', (name, table) => {
    for (const [index, shift] of data.shift_in_sigma.entries()) {
      if (shift < 0.5) continue;
      const { mean } = runLength(charts[name], { shift, trials: 10_000, seed: 631 + index });
      expectDigits(mean, { certified: table[index] ?? Number.NaN, ...within });
    }
  });

  it.each(tables)('are met by %s where nothing shifted', (name, table) => {
    const { mean, relativeError } = runLength(charts[name], { shift: 0, trials: 10_000, seed: 6 });
    expect(relativeError).toBeLessThan(0.0105);
    expectDigits(mean, { certified: table[0] ?? Number.NaN, ...within });
  });

  it('would not be met with the k of one chart and the h of another, nor by exact limits', () => {
    const { mean } = runLength(charts['CUSUM 0.5, 4'], { shift: 1, trials: 2000, seed: 6 });
    const [ofFive = Number.NaN] = recomputed['cusum_two_sided_k0.5_h5'].slice(4);
    expect(() => expectDigits(mean, { certified: ofFive, ...within })).toThrow(within.because);
    const exactLimits = runLength(charts['EWMA 0.2, L 2.962, exact limits'], { shift: 3, trials: 2000, seed: 6 });
    const [ofThree = Number.NaN] = recomputed.ewma_two_sided_fixed_limits_lambda_L['0.2,2.962'].slice(8);
    expect(() => expectDigits(exactLimits.mean, { certified: ofThree, ...within })).toThrow(within.because);
  });
});
