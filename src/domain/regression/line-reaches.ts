// Where a weighted line, and where its band, reaches a value: Fieller's interval of the x. Unit-free: x and y.
// The same for a calibration's polynomial within its range is inversion-interval.ts.

import { twoSidedNormalFactor } from '../statistics/normal-quantile.ts';
import type { WeightedLine } from './fit-weighted-line.ts';
import { crossings } from './polynomial.ts';
import { stretchBelowZero } from './stretch-below-zero.ts';

export interface LineReaches {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Answers at which x the line has the value y, and between which x with probability `level`: all x with
 * |y - line(x)| <= z u(line(x)), z = two-sided normal factor, u = standard uncertainty of the line.
 * Null where the slope is not distinguishable from zero, z u(b) >= |b|: the set is then no interval.
 * Range: any finite y; `level` in (0, 1).
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16 (1954) 175 (from memory).
 */
export function lineReaches(line: WeightedLine, y: number, level: number): LineReaches | null {
  const z = twoSidedNormalFactor(level);
  if (!(z * line.slopeUncertainty < Math.abs(line.slope))) return null;
  const x = line.centre + (y - line.valueAtCentre) / line.slope;
  const unlimited = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  const stretch = stretchBelowZero(outsideBand(line, { z, y, origin: x }), unlimited);
  return stretch.kind === 'bounded' ? { x, low: x + stretch.low, high: x + stretch.high } : null;
}

/**
 * Answers the first x from `from` on at which the band of the line, line(x) -+ z u(line(x)), holds y: no earlier x does
 * with probability `level`. Null where none does. Range and source as for `lineReaches`; the slope may be anything.
 */
export function bandReaches(
  line: WeightedLine,
  y: number,
  { from, to, level }: { readonly from: number; readonly to: number; readonly level: number },
): number | null {
  const polynomial = outsideBand(line, { z: twoSidedNormalFactor(level), y, origin: from });
  if ((polynomial[0] ?? 0) <= 0) return from;
  const [first] = crossings(polynomial, 0, to - from);
  return first === undefined ? null : from + first;
}

/** (line - y)^2 - z^2 u(line)^2 in v = x - origin: below zero where the band holds y. */
function outsideBand(
  line: WeightedLine,
  { z, y, origin }: { readonly z: number; readonly y: number; readonly origin: number },
): readonly [number, number, number] {
  const off = line.valueAtCentre + line.slope * (origin - line.centre) - y;
  const away = origin - line.centre;
  const [slopeVariance, variance] = [line.slopeUncertainty ** 2, line.uncertaintyAtCentre ** 2];
  return [
    off ** 2 - z ** 2 * (variance + away ** 2 * slopeVariance),
    2 * (off * line.slope - z ** 2 * away * slopeVariance),
    line.slope ** 2 - z ** 2 * slopeVariance,
  ];
}
