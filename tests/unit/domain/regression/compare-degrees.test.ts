import { describe, expect, it } from 'vitest';
import {
  chooseDegree,
  compareDegrees,
  type DegreeComparison,
} from '../../../../src/domain/regression/compare-degrees.ts';

const xs = [1, 2, 3, 4, 5, 6, 7, 8];
const wobble = [0.02, -0.03, 0.01, 0.03, -0.02, -0.01, 0.02, -0.02];
const points = (y: (x: number) => number) => xs.map((x, index) => ({ x, y: y(x) + (wobble[index] ?? 0) }));
const row = (degree: 1 | 2 | 3, pValue: number | null, strictlyIncreasing = true): DegreeComparison => ({
  degree,
  coefficients: [],
  degreesOfFreedom: 1,
  residualStandardDeviation: 1,
  fStatistic: pValue === null ? null : 1,
  pValue,
  strictlyIncreasing,
});

describe('comparing degrees', () => {
  it('has no row the points do not allow', () => {
    expect(compareDegrees(points((x) => x).slice(0, 2))).toEqual([]);
    expect(compareDegrees(points((x) => x).slice(0, 3)).map(({ degree }) => degree)).toEqual([1]);
    expect(compareDegrees(points((x) => x)).map(({ degree }) => degree)).toEqual([1, 2, 3]);
  });

  it('keeps a line for a line with scatter and raises for a real bend', () => {
    expect(chooseDegree(compareDegrees(points((x) => 10 * x)))).toBe(1);
    expect(chooseDegree(compareDegrees(points((x) => 10 * x + 0.2 * x * x)))).toBe(2);
    expect(chooseDegree(compareDegrees(points((x) => 10 * x + 0.3 * x * x + 0.05 * (x - 4.5) ** 3)))).toBe(3);
  });

  it('does not raise for rounding: exact points on a line stay a line', () => {
    for (const [slope, offset] of [
      [0.018373, 0],
      [1 / 3, 0.7],
      [21.5, 4.8],
    ] as const) {
      const comparison = compareDegrees(xs.map((x) => ({ x, y: slope * x + offset })));
      expect(comparison.map(({ fStatistic }) => fStatistic)).toEqual([null, null, null]);
      expect(chooseDegree(comparison)).toBe(1);
    }
  });

  it('raises for exact points on a parabola, with an F that is finite, and no further', () => {
    const comparison = compareDegrees(xs.map((x) => ({ x, y: x + 0.01 * x * x })));
    expect(comparison[1]?.fStatistic).toBeGreaterThan(1e6);
    expect(Number.isFinite(comparison[1]?.fStatistic)).toBe(true);
    expect(chooseDegree(comparison)).toBe(2);
  });
});

describe('choosing a degree', () => {
  it('raises while the next term is significant at 5 %', () => {
    expect(chooseDegree([row(1, null), row(2, 0.05), row(3, 0.051)])).toBe(2);
    expect(chooseDegree([row(1, null), row(2, 0.01), row(3, 0.01)])).toBe(3);
  });

  it('stops at the first step that is not significant, whatever comes after', () => {
    expect(chooseDegree([row(1, null), row(2, 0.5), row(3, 0.001)])).toBe(1);
  });

  it('never raises to a curve that does not rise strictly', () => {
    expect(chooseDegree([row(1, null), row(2, 0.001, false), row(3, 0.001)])).toBe(1);
  });
});
