// Whether points settle a curve of a degree at all. The fit itself is in fit-polynomial.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { Point } from './fit-polynomial.ts';
import type { Range } from './within-range.ts';

/**
 * Answers whether points settle a curve of a degree, and the ranges of their x and y.
 * Range: finite x and y; at least degree + 2 points, never fewer than 3, on at least degree + 1 different x.
 * Problems: `number-out-of-range`, `too-few-points`, `equal-levels`.
 * Source: one point more than coefficients, so that there is scatter to judge by (house rule of the design).
 */
export function checkPoints(
  points: readonly Point[],
  degree: number,
): Outcome<{ readonly xRange: Range; readonly yRange: Range }> {
  for (const [index, point] of points.entries()) {
    for (const name of ['x', 'y'] as const) {
      if (!Number.isFinite(point[name])) {
        return fail(
          'number-out-of-range',
          `Point ${index + 1} has ${name} = ${point[name]}; a fit needs finite numbers.`,
          {
            where: `points[${index}].${name}`,
            needed: 'a finite number',
            given: String(point[name]),
          },
        );
      }
    }
  }
  const leastPoints = Math.max(3, degree + 2);
  if (points.length < leastPoints) {
    return fail(
      'too-few-points',
      `A curve of degree ${degree} needs at least ${leastPoints} points; there are ${points.length}.`,
      {
        needed: `${leastPoints} points`,
        given: String(points.length),
      },
    );
  }
  const levels = new Set(points.map(({ x }) => x)).size;
  if (levels === 1) {
    return fail('equal-levels', 'All points are at one level, so no curve runs through them.', {
      needed: `${degree + 1} different levels`,
      given: '1',
    });
  }
  if (levels < degree + 1) {
    return fail(
      'too-few-points',
      `A curve of degree ${degree} needs at least ${degree + 1} different levels; there are ${levels}.`,
      {
        needed: `${degree + 1} different levels`,
        given: String(levels),
      },
    );
  }
  return succeed({ xRange: rangeOf(points.map(({ x }) => x)), yRange: rangeOf(points.map(({ y }) => y)) });
}

function rangeOf(values: readonly number[]): Range {
  return { low: Math.min(...values), high: Math.max(...values) };
}
