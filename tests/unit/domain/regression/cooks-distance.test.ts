import { describe, expect, it } from 'vitest';
import { cooksDistance } from '../../../../src/domain/regression/cooks-distance.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe("Cook's distance", () => {
  it('is r^2 h / ((1 - h) p): r of 3, h of 0.75 and two coefficients give 13.5', () => {
    expectDigits(cooksDistance(-3, 0.75, 2), { certified: 13.5, digits: 15, because: 'exact in binary' });
  });

  it('is nothing for a point on the curve, and for one that has no weight in it', () => {
    expect(cooksDistance(0, 0.9, 2)).toBe(0);
    expect(cooksDistance(5, 0, 2)).toBe(0);
  });
});
