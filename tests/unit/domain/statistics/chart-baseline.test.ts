import { describe, expect, it } from 'vitest';
import { baselineOf } from '../../../../src/domain/statistics/chart-baseline.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('the baseline of a chart', () => {
  it('is too little data before it has as many values as were asked for', () => {
    expect(baselineOf([], 3)).toEqual({ kind: 'too-little-data', needed: 3, given: 0 });
    expect(baselineOf([1, 2], 3)).toEqual({ kind: 'too-little-data', needed: 3, given: 2 });
  });

  it('is mean and standard deviation of the first values alone', () => {
    const state = baselineOf([1, 2, 3, 1000], 3);
    if (state.kind !== 'settled') throw new Error(state.kind);
    const because = 'worked by hand';
    expectDigits(state.baseline.mean, { certified: 2, digits: 15, because });
    expectDigits(state.baseline.standardDeviation, { certified: 1, digits: 15, because });
  });

  it('is named where the values do not scatter, so that no limit is drawn', () => {
    expect(baselineOf([1, 1, 1], 3)).toEqual({ kind: 'no-scatter', mean: 1 });
    expect(baselineOf([0.1 + 0.2, 0.3, 0.3], 3).kind).toBe('no-scatter');
  });

  it('of one value is an error of the program', () => {
    expect(() => baselineOf([1], 1)).toThrow(RangeError);
    expect(() => baselineOf([1, 2], 1.5)).toThrow(RangeError);
  });
});
