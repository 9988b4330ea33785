// Laws of control charts: the unit of the values does not matter, nor which side is called high.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cusumChart, cusumOfPractice } from '../../src/domain/statistics/cusum-chart.ts';
import { ewmaChart, ewmaOfPractice } from '../../src/domain/statistics/ewma-chart.ts';
import { expectDigits } from '../expect-digits.ts';

const series = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 1, maxLength: 60 });
const scale = fc.double({ min: 0.01, max: 100, noNaN: true });
const standard = { mean: 0, standardDeviation: 1 };
const exact = { ...ewmaOfPractice, limits: 'exact' } as const;
const because = 'values of some hundreds, good to about 1e-14';

describe('a control chart', () => {
  it('is the same in another unit', () => {
    fc.assert(
      fc.property(series, scale, (values, unit) => {
        const inUnit = values.map((value) => 100 * unit + unit * value);
        const baseline = { mean: 100 * unit, standardDeviation: unit };
        const [here, there] = [ewmaChart(values, standard, exact), ewmaChart(inUnit, baseline, exact)];
        for (const [index, { average, high }] of there.entries()) {
          expectDigits(average / unit, { certified: 100 + (here[index]?.average ?? 0), digits: 12, because });
          expectDigits(high / unit, { certified: 100 + (here[index]?.high ?? 0), digits: 12, because });
        }
        const sums = cusumChart(values, standard, cusumOfPractice);
        for (const [index, { high, low }] of cusumChart(inUnit, baseline, cusumOfPractice).entries()) {
          expectDigits(100 + high, { certified: 100 + (sums[index]?.high ?? 0), digits: 11, because });
          expectDigits(100 + low, { certified: 100 + (sums[index]?.low ?? 0), digits: 11, because });
        }
      }),
    );
  });

  it('turned upside down is the same chart on the other side', () => {
    fc.assert(
      fc.property(series, (values) => {
        const turned = values.map((value) => -value);
        const other = { high: 'low', low: 'high' } as const;
        const swap = (signal: 'high' | 'low' | null) => (signal === null ? null : other[signal]);
        const signals = (points: readonly { readonly signal: 'high' | 'low' | null }[]) =>
          points.map(({ signal }) => signal);
        const ewma = signals(ewmaChart(values, standard, exact));
        expect(signals(ewmaChart(turned, standard, exact))).toEqual(ewma.map(swap));
        const sums = cusumChart(values, standard, cusumOfPractice);
        const turnedSums = cusumChart(turned, standard, cusumOfPractice);
        expect(turnedSums.map(({ high, low }) => [low, high])).toEqual(sums.map(({ high, low }) => [high, low]));
      }),
    );
  });
});
