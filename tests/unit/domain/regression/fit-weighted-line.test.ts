import { describe, expect, it } from 'vitest';
import { fitWeightedLine } from '../../../../src/domain/regression/fit-weighted-line.ts';

const point = (x: number, y: number, standardUncertainty = 1) => ({ x, y, standardUncertainty });
const codeOf = (points: Parameters<typeof fitWeightedLine>[0]) => {
  const fit = fitWeightedLine(points);
  return fit.ok ? 'fitted' : fit.problem.code;
};

describe('a weighted line', () => {
  it('is refused through fewer than three points, or at one x', () => {
    expect(codeOf([])).toBe('too-few-points');
    expect(codeOf([point(0, 0), point(1, 1)])).toBe('too-few-points');
    expect(codeOf([point(1, 0), point(1, 1), point(1, 2)])).toBe('equal-levels');
  });

  it('is refused where an uncertainty is not above zero, or a number is none', () => {
    expect(codeOf([point(0, 0), point(1, 1), point(2, 2, 0)])).toBe('number-out-of-range');
    expect(codeOf([point(0, 0), point(1, 1), point(2, 2, Number.NaN)])).toBe('number-out-of-range');
    expect(codeOf([point(0, 0), point(1, Number.NaN), point(2, 2)])).toBe('number-out-of-range');
  });
});
