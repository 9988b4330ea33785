import { describe, expect, it } from 'vitest';
import { withinRange } from '../../../../src/domain/regression/within-range.ts';

const range = { low: 10, high: 300 };

describe('whether a value lies in a range', () => {
  it('gives the value inside and at the ends', () => {
    expect([10, 55, 300].map((value) => withinRange(value, range))).toEqual([10, 55, 300]);
  });

  it('gives the end where rounding alone put the value beyond it', () => {
    expect(withinRange(300 * (1 + 1e-15), range)).toBe(300);
    expect(withinRange(10 - 1e-14, range)).toBe(10);
  });

  it('gives nothing beyond, and nothing for what is not a number', () => {
    for (const value of [9.999999, 300.000001, Number.NaN]) expect(withinRange(value, range)).toBeNull();
  });
});
