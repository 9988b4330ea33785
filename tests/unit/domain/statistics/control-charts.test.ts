import { describe, expect, it } from 'vitest';
import { firstSignal } from '../../../../src/domain/statistics/chart-signal.ts';
import { cusumChart, cusumOfPractice } from '../../../../src/domain/statistics/cusum-chart.ts';
import { ewmaChart, ewmaOfPractice } from '../../../../src/domain/statistics/ewma-chart.ts';

const standard = { mean: 0, standardDeviation: 1 };
const exact = { ...ewmaOfPractice, limits: 'exact' } as const;

describe('control charts', () => {
  it('of nothing have no point and no signal', () => {
    expect(ewmaChart([], standard, exact)).toEqual([]);
    expect(cusumChart([], standard, cusumOfPractice)).toEqual([]);
    expect(firstSignal([])).toBeNull();
  });

  it('do not signal on the limit, only beyond it', () => {
    // With lambda 1 the average is the value and the limit is the width.
    const onLimit = ewmaChart([2, -2], standard, { lambda: 1, width: 2, limits: 'exact' });
    expect(firstSignal(onLimit)).toBeNull();
    expect(firstSignal(cusumChart([2, 2], standard, { k: 0, h: 4 }))).toBeNull();
    expect(firstSignal(cusumChart([2, 2.5], standard, { k: 0, h: 4 }))).toBe(1);
  });

  it('name the side', () => {
    expect(ewmaChart([9], standard, exact)[0]?.signal).toBe('high');
    expect(ewmaChart([-9], standard, exact)[0]?.signal).toBe('low');
    expect(cusumChart([9], standard, cusumOfPractice)[0]?.signal).toBe('high');
    expect(cusumChart([-9], standard, cusumOfPractice)[0]?.signal).toBe('low');
  });

  it('with a weight, a width or a deviation that cannot be are errors of the program', () => {
    expect(() => ewmaChart([1], standard, { ...exact, lambda: 0 })).toThrow(RangeError);
    expect(() => ewmaChart([1], { mean: 0, standardDeviation: 0 }, exact)).toThrow(RangeError);
    expect(() => cusumChart([1], { mean: 0, standardDeviation: 0 }, cusumOfPractice)).toThrow(RangeError);
  });
});
