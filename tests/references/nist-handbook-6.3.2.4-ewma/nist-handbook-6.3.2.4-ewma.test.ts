// The EWMA chart of the handbook: every average and both limits, and the exact limits recomputed.

import { describe, expect, it } from 'vitest';
import { firstSignal } from '../../../src/domain/statistics/chart-signal.ts';
import { ewmaChart } from '../../../src/domain/statistics/ewma-chart.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed_here: recomputed } = reference;
const exact = { digits: 12, because: 'a recomputation given to 15 digits' } as const;
const printedAverage = { digits: 'as-printed', because: 'the two decimals the page prints' } as const;
const baseline = { mean: data.EWMA0, standardDeviation: data.s };

describe('NIST handbook 6.3.2.4, EWMA control chart', () => {
  const options = { lambda: data.lambda, width: data.k } as const;
  const asymptotic = ewmaChart(data.x, baseline, { ...options, limits: 'asymptotic' });
  const timeVarying = ewmaChart(data.x, baseline, { ...options, limits: 'exact' });

  it('gives the averages', () => {
    for (const [index, { average }] of asymptotic.entries()) {
      const printed = results.ewma_printed_2dp_including_start[index + 1] ?? Number.NaN;
      expectDigits(average, { certified: printed.toFixed(2), ...printedAverage });
      expectDigits(average, { certified: recomputed.ewma[index + 1] ?? Number.NaN, ...exact });
    }
  });

  it('gives the limits, and no point beyond them', () => {
    const [first] = asymptotic;
    // The page multiplies by the factor cut to 0.4201, which moves a limit by up to 0.00005 x 3 x 2.0539.
    const rounded = { digits: 5, because: 'the page rounds the factor to 0.4201, 2e-5 of half the width' } as const;
    expectDigits(first?.high ?? Number.NaN, { certified: results.UCL, ...rounded });
    expectDigits(first?.low ?? Number.NaN, { certified: results.LCL, ...rounded });
    expectDigits(first?.high ?? Number.NaN, { certified: recomputed.UCL_unrounded, ...exact });
    expectDigits(first?.low ?? Number.NaN, { certified: recomputed.LCL_unrounded, ...exact });
    expect(firstSignal(asymptotic)).toBeNull();
  });

  it('gives the exact limits, which grow towards the asymptotic ones', () => {
    for (const [index, { low, high }] of timeVarying.entries()) {
      const [certifiedLow = Number.NaN, certifiedHigh = Number.NaN] = recomputed.time_varying_limits[index] ?? [];
      expectDigits(low, { certified: certifiedLow, ...exact });
      expectDigits(high, { certified: certifiedHigh, ...exact });
    }
  });

  it('would not accept averages started at the first value, nor limits with lambda/2 for lambda/(2 - lambda)', () => {
    const wrongStart = ewmaChart(
      data.x.slice(1),
      { ...baseline, mean: data.x[0] ?? 0 },
      { ...options, limits: 'exact' },
    );
    expect(() => expectDigits(wrongStart[0]?.average ?? 0, { certified: '49.52', ...printedAverage })).toThrow(
      printedAverage.because,
    );
    const wrongLimit = data.EWMA0 + data.k * data.s * Math.sqrt(data.lambda / 2);
    expect(() => expectDigits(wrongLimit, { certified: recomputed.UCL_unrounded, ...exact })).toThrow(exact.because);
  });
});
