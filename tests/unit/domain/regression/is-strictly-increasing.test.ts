import { describe, expect, it } from 'vitest';
import { type Degree, fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { isStrictlyIncreasing } from '../../../../src/domain/regression/is-strictly-increasing.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const increases = (degree: Degree, y: (x: number) => number): boolean => {
  const points = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2].map((x) => ({ x, y: y(x) }));
  return isStrictlyIncreasing(outcomeValue(fitPolynomial(points, degree)));
};

describe('whether a curve rises strictly', () => {
  it('knows rising, flat and falling lines', () => {
    expect(increases(1, (x) => 3 * x)).toBe(true);
    expect(increases(1, () => 3)).toBe(false);
    expect(increases(1, (x) => -x)).toBe(false);
  });

  it('knows a parabola that turns inside the range from one that turns outside', () => {
    expect(increases(2, (x) => x + 0.26 * x * x)).toBe(false);
    expect(increases(2, (x) => x + 0.24 * x * x)).toBe(true);
    expect(increases(2, (x) => x - 0.26 * x * x)).toBe(false);
  });

  it('knows a cubic that dips in the middle though it rises at both ends', () => {
    expect(increases(3, (x) => x ** 3 - 0.1 * x)).toBe(false);
    expect(increases(3, (x) => (x - 0.8) ** 3 - 0.02 * x)).toBe(false);
    expect(increases(3, (x) => x ** 3 + 0.1 * x)).toBe(true);
    expect(increases(3, (x) => 13 * x - x ** 3)).toBe(true);
    expect(increases(3, (x) => 11 * x - x ** 3)).toBe(false);
  });

  it('looks no further than the range: a turn beyond either end does not count', () => {
    expect(increases(3, (x) => (x + 4) ** 3 - x)).toBe(true);
    expect(increases(3, (x) => (x - 4) ** 3 - x)).toBe(true);
    expect(increases(2, (x) => x + 0.1 * x * x)).toBe(true);
  });
});
