// The interval for x when y was observed: the x whose prediction band holds y. The inverse itself is in invert.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { twoSidedStudentFactor } from '../statistics/student-quantile.ts';
import type { PolynomialFit } from './fit-polynomial.ts';
import { invert } from './invert.ts';
import { crossingBetween, crossings, evaluate, multiply, type Polynomial, shift } from './polynomial.ts';
import type { Interval, IntervalOptions } from './prediction-interval.ts';
import type { Range } from './within-range.ts';

/** In scaled x, where the fitted points run from -1 to 1: half their width beyond either end. House rule: further out the curve says nothing. */
const searchLimit = 2;

/** How far beyond the crossings of the quadratic part to look for those of the whole. House rule: room for the higher terms. */
const roomBeyond = 1.5;

/**
 * Answers between which x an observed y arose with probability `level`: the connected set, around the inverse, of x with
 * |y - p(x)| <= t s sqrt(1 + h(x)), or t s sqrt(h(x)) for the mean of very many observations.
 * p = curve, s = residual standard deviation, h = leverage, t = two-sided Student factor.
 * Range: y within the curve's range; the bounds are sought up to half the width of the points beyond them.
 * Problems: those of `invert`; `interval-not-finite` where there is no bound on one side or on both (a curve too flat
 * against its scatter leaves a half line or the whole line).
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16 (1954) 175 for the line (from memory); Greenwell and Schubert Kabban,
 * The R Journal 6(1), 2014, "inversion interval".
 * Example: the arsenic data there, y = 3.0 at 90 %: 2.6035 to 3.2587; for the mean response 2.8724 to 2.9898.
 */
export function invertPredictionBand(fit: PolynomialFit, y: number, options: IntervalOptions): Outcome<Interval> {
  const inverse = invert(fit, y);
  if (!inverse.ok) return inverse;
  const spread = twoSidedStudentFactor(options.level, fit.degreesOfFreedom) * fit.residualStandardDeviation;
  if (spread === 0) return succeed({ level: options.level, low: inverse.value, high: inverse.value });

  // Everything is written in v = u - u0 around the inverse, where p - y has no constant term: without that shift the
  // squares below would cancel to nothing for a band that is narrow against the curve.
  const origin = (inverse.value - fit.centre) / fit.halfWidth;
  const [, ...rise] = shift(fit.scaledCoefficients, origin);
  const distance = [0, ...rise];
  const [atOrigin = 0, ...leverageRise] = shift(leverageOf(fit), origin);
  const variance = [atOrigin + (options.of === 'observation' ? 1 : 0), ...leverageRise];
  const outsideBand = multiply(distance, distance).map((value, power) => value - spread ** 2 * (variance[power] ?? 0));

  const limits: Range = { low: -searchLimit - origin, high: searchLimit - origin };
  const { below, above } = convexCrossings(outsideBand, limits) ?? nearestCrossings(outsideBand, limits);
  if (below === undefined || above === undefined) {
    const side = below === undefined ? (above === undefined ? 'either side' : 'the lower side') : 'the upper side';
    return fail(
      'interval-not-finite',
      `The calibration data give no bound on ${side}: the curve is too flat against its scatter.`,
      {
        needed: 'a bound within half the calibrated width beyond the ends',
      },
    );
  }
  return succeed({
    level: options.level,
    low: inverse.value + fit.halfWidth * below,
    high: inverse.value + fit.halfWidth * above,
  });
}

interface NearestCrossings {
  readonly below: number | undefined;
  readonly above: number | undefined;
}

function nearestCrossings(polynomial: Polynomial, limits: Range): NearestCrossings {
  const found = crossings(polynomial, limits.low, limits.high);
  return { below: found.findLast((v) => v < 0), above: found.find((v) => v > 0) };
}

/**
 * The same where the polynomial, below zero at v = 0, is convex as far as `reach` on both sides and above zero there:
 * each side then has exactly one crossing. That is so for every band that is narrow against its curve, and spares the
 * search for all crossings. Null where it cannot be shown.
 */
function convexCrossings(polynomial: Polynomial, limits: Range): NearestCrossings | null {
  const [constant = 0, linear = 0, quadratic = 0] = polynomial;
  const root = Math.sqrt(linear * linear - 4 * quadratic * constant);
  const reach = (roomBeyond * (Math.abs(linear) + root)) / (2 * quadratic);
  if (!(reach > 0 && -reach >= limits.low && reach <= limits.high)) return null;
  let curvature = 2 * quadratic;
  for (let power = 3; power < polynomial.length; power += 1) {
    curvature -= power * (power - 1) * Math.abs(polynomial[power] ?? 0) * reach ** (power - 2);
  }
  if (!(curvature > 0 && evaluate(polynomial, -reach) > 0 && evaluate(polynomial, reach) > 0)) return null;
  return { below: crossingBetween(polynomial, -reach, 0), above: crossingBetween(polynomial, 0, reach) };
}

/** The leverage as a polynomial in u: the entries of (X'X)^-1 gathered by the sum of their powers. */
function leverageOf(fit: PolynomialFit): Polynomial {
  const gathered = new Array<number>(2 * fit.degree + 1).fill(0);
  for (const [i, row] of fit.inverseInformation.entries()) {
    for (const [j, value] of row.entries()) gathered[i + j] = (gathered[i + j] ?? 0) + value;
  }
  return gathered;
}
