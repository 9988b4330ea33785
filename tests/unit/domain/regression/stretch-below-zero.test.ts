import { describe, expect, it } from 'vitest';
import { multiply, type Polynomial } from '../../../../src/domain/regression/polynomial.ts';
import { stretchBelowZero } from '../../../../src/domain/regression/stretch-below-zero.ts';
import { expectDigits } from '../../../expect-digits.ts';

const limits = { low: -2, high: 2 };
const because = 'a simple root, found to the last bits of a double';

/** The product of (v - root), times `sign`; below zero at 0 where the signs of the roots make it so. */
const withRoots = (sign: number, ...roots: readonly number[]): Polynomial =>
  roots.reduce<Polynomial>((product, root) => multiply(product, [-root, 1]), [sign]);

describe('the stretch around zero on which a polynomial is below zero', () => {
  it('is bounded by the nearest crossing on either side, near the limits too', () => {
    for (const roots of [
      [-0.5, 0.25],
      [-2, 2],
      [-1.9, -0.7, -0.3, 0.2, 0.4, 1.8],
    ]) {
      const stretch = stretchBelowZero(withRoots(1, ...roots), limits);
      if (stretch.kind !== 'bounded') throw new Error(`${stretch.kind} for ${roots}`);
      expectDigits(stretch.low, { certified: Math.max(...roots.filter((v) => v < 0)), digits: 11, because });
      expectDigits(stretch.high, { certified: Math.min(...roots.filter((v) => v > 0)), digits: 11, because });
    }
  });

  it('is bounded although the polynomial falls below zero again further out, for ever', () => {
    const stretch = stretchBelowZero(withRoots(-1, -5, -1, 1, 5), limits);
    expect(stretch).toMatchObject({ kind: 'bounded' });
  });

  it('is the whole line where nothing crosses', () => {
    expect(stretchBelowZero([-1], limits)).toEqual({ kind: 'whole-line' });
    expect(stretchBelowZero([-1, 0.5, -1], limits)).toEqual({ kind: 'whole-line' });
    expect(stretchBelowZero([-1, 0, -3, 0, -1], limits)).toEqual({ kind: 'whole-line' });
  });

  it('is two rays where all crossings lie on one side, with every gap between them', () => {
    for (const roots of [
      [0.5, 1],
      [30, 4000],
      [-3, -0.25],
      [0.25, 0.5, 1, 6],
    ]) {
      const stretch = stretchBelowZero(withRoots(-1, ...roots), limits);
      if (stretch.kind !== 'two-rays') throw new Error(`${stretch.kind} for ${roots}`);
      const ends = stretch.gaps.flatMap(({ low, high }) => [low, high]);
      expect(ends).toHaveLength(roots.length);
      for (const [index, root] of roots.entries()) {
        expectDigits(ends[index] ?? Number.NaN, { certified: root, digits: 11, because });
      }
    }
  });

  it('is outside its range where an end lies beyond its limit, however far', () => {
    for (const [low, high] of [
      [-2.01, 1],
      [-1, 2.01],
      [-1e9, 0.5],
      [-3, 1e12],
    ] as const) {
      const stretch = stretchBelowZero(withRoots(1, low, high), limits);
      if (stretch.kind !== 'outside-range') throw new Error(`${stretch.kind} for ${low} and ${high}`);
      expectDigits(stretch.low, { certified: low, digits: 11, because });
      expectDigits(stretch.high, { certified: high, digits: 11, because });
    }
  });

  it('has an end at infinity where the leading term vanishes, and for a leading term no double tells from zero', () => {
    expect(stretchBelowZero([-1, 2, 0], limits)).toEqual({
      kind: 'outside-range',
      low: Number.NEGATIVE_INFINITY,
      high: 0.5,
    });
    expect(stretchBelowZero([-1, -2, 0], limits)).toEqual({
      kind: 'outside-range',
      low: -0.5,
      high: Number.POSITIVE_INFINITY,
    });
    expect(stretchBelowZero([-1, 2, 1e-200], limits)).toMatchObject({ kind: 'outside-range', high: 0.5 });
    expect(stretchBelowZero([-1, 2, -1e-200], limits)).toMatchObject({ kind: 'outside-range', high: 0.5 });
  });

  it('throws where the polynomial is not below zero at zero', () => {
    for (const constant of [0, 1, Number.NaN]) {
      expect(() => stretchBelowZero([constant, 1], limits)).toThrow(RangeError);
    }
  });
});
