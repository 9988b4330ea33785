// The interval for x when y was observed: the x whose prediction band holds y. The inverse itself is in invert.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import type { FittedPolynomial } from './fit-polynomial.ts';
import { invert } from './invert.ts';
import { multiply, type Polynomial, shift } from './polynomial.ts';
import { ownVariance } from './predict.ts';
import type { Interval, IntervalOptions } from './prediction-interval.ts';
import { type Stretch, stretchBelowZero } from './stretch-below-zero.ts';
import type { Range } from './within-range.ts';

/** In scaled x, where the fitted points run from -1 to 1: half their width beyond either end. House rule: further out the curve says nothing. */
const searchLimit = 2;

/**
 * Answers between which x an observed y arose with probability `level`: the connected set, around the inverse, of x with
 * |y - p(x)| <= t s sqrt(1 + h(x)), t s sqrt(1/m + h(x)) where y is the mean of m observations, or t s sqrt(h(x)) for the mean
 * of very many.
 * p = curve, s = residual standard deviation, h = leverage, t = two-sided Student factor.
 * Range: y within the curve's range; both bounds within half the width of the points beyond their ends.
 * Problems: those of `invert`, and what such a set can be instead, decided on the whole real line:
 * `interval-whole-line` where the band holds y at every x; `interval-two-rays` where it does but for a gap on one side of
 * the inverse (the last term of the curve does not stand out from its scatter), with the gap in `given`;
 * `interval-outside-range` where a bound lies further out than above, with the bounds in `given`. For a line the first
 * two mean g = (t s)^2 / (b^2 Sxx) > 1, b = slope.
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16 (1954) 175 for the line, its g and its three cases (from memory);
 * Greenwell and Schubert Kabban, The R Journal 6(1), 2014, "inversion interval".
 * Example: the arsenic data there, y = 3.0 at 90 %: 2.6035 to 3.2587; for the mean response 2.8724 to 2.9898.
 */
export function invertPredictionBand(fit: FittedPolynomial, y: number, options: IntervalOptions): Outcome<Interval> {
  const inverse = invert(fit, y);
  if (!inverse.ok) return inverse;
  const spread = twoSidedStudentFactor(options.level, fit.degreesOfFreedom) * fit.residualStandardDeviation;
  if (spread === 0) return succeed({ level: options.level, low: inverse.value, high: inverse.value });

  // Everything is written in v = u - u0 around the inverse, where p - y has no constant term: without that shift the
  // squares below would cancel to nothing for a band that is narrow against the curve. In units of t s, for scale.
  const origin = (inverse.value - fit.centre) / fit.halfWidth;
  const [, ...rise] = shift(fit.scaledCoefficients, origin);
  const distance = [0, ...rise.map((coefficient) => coefficient / spread)];
  const [atOrigin = 0, ...leverageRise] = shift(leverageOf(fit), origin);
  const variance = [atOrigin + ownVariance(options.of), ...leverageRise];
  const outsideBand = multiply(distance, distance).map((value, power) => value - (variance[power] ?? 0));

  const stretch = stretchBelowZero(outsideBand, { low: -searchLimit - origin, high: searchLimit - origin });
  const toX = (v: number): number => inverse.value + fit.halfWidth * v;
  if (stretch.kind !== 'bounded') return withoutBounds(stretch, fit, toX);
  return succeed({ level: options.level, low: toX(stretch.low), high: toX(stretch.high) });
}

function withoutBounds(
  stretch: Exclude<Stretch, { readonly kind: 'bounded' }>,
  fit: FittedPolynomial,
  toX: (v: number) => number,
): Outcome<never> {
  const searched: Range = {
    low: fit.centre - searchLimit * fit.halfWidth,
    high: fit.centre + searchLimit * fit.halfWidth,
  };
  const needed = `bounds from ${written(searched.low)} to ${written(searched.high)}`;
  if (stretch.kind === 'whole-line') {
    return fail(
      'interval-whole-line',
      'The calibration data give no interval here: the curve is so flat against its scatter that every value explains the observation.',
      { needed, given: 'no bound on either side' },
    );
  }
  if (stretch.kind === 'two-rays') {
    const gaps = stretch.gaps.map(({ low, high }) => `from ${written(toX(low))} to ${written(toX(high))}`);
    return fail(
      'interval-two-rays',
      'The calibration data give no interval here: the last term of the curve does not stand out from its scatter, and every value but those in a gap explains the observation.',
      { needed, given: `every value but those ${gaps.join(' and ')}` },
    );
  }
  const [low, high] = [toX(stretch.low), toX(stretch.high)];
  const side = low >= searched.low ? 'the upper side' : high <= searched.high ? 'the lower side' : 'either side';
  return fail(
    'interval-outside-range',
    `The calibration data give no bound on ${side} within half the calibrated width beyond the end; further out the curve says nothing.`,
    { needed, given: `bounds from ${written(low)} to ${written(high)}` },
  );
}

/** A bound inside a sentence, in units of x. */
function written(x: number): string {
  return Number.isFinite(x) ? String(Number(x.toPrecision(6))) : 'no end';
}

/** The leverage as a polynomial in u: the entries of (X'X)^-1 gathered by the sum of their powers. */
function leverageOf(fit: FittedPolynomial): Polynomial {
  const gathered = new Array<number>(2 * fit.degree + 1).fill(0);
  for (const [i, row] of fit.inverseInformation.entries()) {
    for (const [j, value] of row.entries()) gathered[i + j] = (gathered[i + j] ?? 0) + value;
  }
  return gathered;
}
