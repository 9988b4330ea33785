// Round numbers along an axis.

import { describe, expect, it } from 'vitest';
import { axisTicks, symmetricTicks } from '../../../../src/web/charts/axis-ticks.ts';

describe('axis ticks', () => {
  it.each([
    [0, 50, [0, 10, 20, 30, 40, 50]],
    [0, 7180, [0, 2000, 4000, 6000, 8000]],
    [0, 0.73, [0, 0.2, 0.4, 0.6, 0.8]],
  ])('enclose %d to %d with round steps', (low, high, ticks) => {
    expect(axisTicks(low, high, 6)).toEqual(ticks);
  });

  it('give a span where both ends are equal, zero included', () => {
    for (const value of [0, 5, -3]) {
      const ticks = axisTicks(value, value, 5);
      expect(ticks.length).toBeGreaterThan(1);
      expect(Math.min(...ticks)).toBeLessThanOrEqual(value);
      expect(Math.max(...ticks)).toBeGreaterThanOrEqual(value);
    }
  });

  it('lie as far below zero as above it for residuals', () => {
    expect(symmetricTicks(28, 7)).toEqual([-30, -20, -10, 0, 10, 20, 30]);
    expect(symmetricTicks(0, 7)[0]).toBe(-(symmetricTicks(0, 7).at(-1) ?? 0));
  });
});
