// The CUSUM chart of the handbook: both sums of its 20 group means and the points that signal.

import { describe, expect, it } from 'vitest';
import { cusumChart } from '../../../src/domain/statistics/cusum-chart.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { data, results, recomputed_here: recomputed } = reference;
const exact = {
  digits: 11,
  because: 'a recomputation of sums of up to 20 terms of some hundreds, in doubles',
} as const;
const printed = { digits: 'as-printed', because: 'the two decimals the page prints' } as const;
const sigma = data.sigma_of_means;

describe('NIST handbook 6.3.2.3, CUSUM control chart', () => {
  // The page works in the unit of the data, the chart in standard deviations.
  const points = cusumChart(
    data.x_group_means,
    { mean: data.target, standardDeviation: sigma },
    { k: data.k / sigma, h: data.h / sigma },
  );
  const sums = points.map(({ high, low }) => [high * sigma, low * sigma] as const);

  it('gives both sums of every group', () => {
    expect(sums).toHaveLength(20);
    for (const [index, [high, low]] of sums.entries()) {
      const [, certifiedHigh = Number.NaN, certifiedLow = Number.NaN] = recomputed.rows[index] ?? [];
      expectDigits(high, { certified: certifiedHigh, ...exact });
      expectDigits(low, { certified: certifiedLow, ...exact });
      const [, printedHigh = Number.NaN, printedLow = Number.NaN] = results.printed_2dp[index] ?? [];
      expectDigits(high, { certified: printedHigh.toFixed(2), ...printed });
      expectDigits(low, { certified: printedLow.toFixed(2), ...printed });
    }
  });

  it('signals at the groups the page names, on the upper side', () => {
    const signals = points.flatMap(({ signal }, index) => (signal === null ? [] : [{ group: index + 1, signal }]));
    expect(signals).toEqual(results.signals_on_S_hi_groups.map((group) => ({ group, signal: 'high' })));
  });

  it('would not accept sums with the deviation of single values, nor without k', () => {
    const [wrongSigma, withoutK] = [
      cusumChart(data.x_group_means, { mean: data.target, standardDeviation: 1.27 }, { k: 0.5, h: 5 }),
      cusumChart(data.x_group_means, { mean: data.target, standardDeviation: sigma }, { k: 0, h: 5 }),
    ];
    expect(() => expectDigits((wrongSigma[13]?.high ?? 0) * 1.27, { certified: '4.94', ...printed })).toThrow();
    expect(() => expectDigits((withoutK[13]?.high ?? 0) * sigma, { certified: '4.94', ...printed })).toThrow();
  });
});
