// How far a polynomial that is below zero at v = 0 stays there on either side, on the whole real line.
// What the polynomial means is in inversion-interval.ts.

import { crossingBetween, crossings, evaluate, type Polynomial } from './polynomial.ts';
import type { Range } from './within-range.ts';

/** The stretch around v = 0, and what is known of it where it is not bounded within the limits. */
export type Stretch =
  | { readonly kind: 'bounded'; readonly low: number; readonly high: number }
  /** Below zero for every v. */
  | { readonly kind: 'whole-line' }
  /** Below zero as far as v goes on both sides, but for gaps (mostly one) on one side of 0. */
  | { readonly kind: 'two-rays'; readonly gaps: readonly Range[] }
  /** At least one end lies beyond its limit; infinite where there is none. */
  | { readonly kind: 'outside-range'; readonly low: number; readonly high: number };

/** How far beyond the crossings of the quadratic part to look for those of the whole. House rule: room for the higher terms. */
const roomBeyond = 1.5;

/** A crossing further out than this is none. House rule: doubles could not tell the coefficient that makes it from zero. */
const furthestCrossing = 1e100;

/**
 * Answers where the stretch around v = 0 with polynomial(v) < 0 ends.
 * Range: a polynomial with a negative constant term; throws RangeError otherwise, a programmer's error. Every crossing of
 * the real line is looked at, however far out: all lie within 1 + max |a_i / a_n|. An end counts as found where it lies
 * within `limits`.
 * Source: A.-L. Cauchy's bound of the roots of a polynomial (from memory).
 */
export function stretchBelowZero(polynomial: Polynomial, limits: Range): Stretch {
  if (!((polynomial[0] ?? 0) < 0)) throw new RangeError('The polynomial is not below zero at 0.');
  const convex = convexStretch(polynomial, limits);
  if (convex !== null) return convex;

  const bound = rootBound(polynomial);
  const found = crossings(polynomial, -bound, bound);
  if (found.length === 0) return { kind: 'whole-line' };
  const after = found.findIndex((v) => v > 0);
  const [low, high] = after < 0 ? [found.at(-1), undefined] : [found[after - 1], found[after]];
  // An odd number of crossings, where the leading term vanishes, leaves one ray: a stretch whose other end went to infinity.
  if ((low === undefined || high === undefined) && found.length % 2 === 0)
    return { kind: 'two-rays', gaps: pairs(found) };
  const [from, to] = [low ?? Number.NEGATIVE_INFINITY, high ?? Number.POSITIVE_INFINITY];
  return { kind: from >= limits.low && to <= limits.high ? 'bounded' : 'outside-range', low: from, high: to };
}

/**
 * The same where the polynomial is convex as far as `reach` on both sides and above zero there: each side then has
 * exactly one crossing. That is so for every band that is narrow against its curve, and spares the search for all
 * crossings. Null where it cannot be shown.
 */
function convexStretch(polynomial: Polynomial, limits: Range): Stretch | null {
  const [constant = 0, linear = 0, quadratic = 0] = polynomial;
  const root = Math.sqrt(linear * linear - 4 * quadratic * constant);
  const reach = (roomBeyond * (Math.abs(linear) + root)) / (2 * quadratic);
  if (!(reach > 0 && -reach >= limits.low && reach <= limits.high)) return null;
  let curvature = 2 * quadratic;
  for (let power = 3; power < polynomial.length; power += 1) {
    curvature -= power * (power - 1) * Math.abs(polynomial[power] ?? 0) * reach ** (power - 2);
  }
  if (!(curvature > 0 && evaluate(polynomial, -reach) > 0 && evaluate(polynomial, reach) > 0)) return null;
  return {
    kind: 'bounded',
    low: crossingBetween(polynomial, -reach, 0),
    high: crossingBetween(polynomial, 0, reach),
  };
}

/** Crossings one to two, three to four, and so on. */
function pairs(found: readonly number[]): readonly Range[] {
  return found.flatMap((low, index) => {
    const high = found[index + 1];
    return index % 2 === 0 && high !== undefined ? [{ low, high }] : [];
  });
}

/** No root of the polynomial is further from 0. */
function rootBound(polynomial: Polynomial): number {
  const leading = polynomial.findLast((coefficient) => coefficient !== 0) ?? 1;
  const largest = polynomial.reduce((most, coefficient) => Math.max(most, Math.abs(coefficient / leading)), 0);
  return Math.min(1 + largest, furthestCrossing);
}
