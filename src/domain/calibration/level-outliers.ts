// Outliers within one level across many cycles: a point that parts from its own row, whatever the curve does there.
// Outliers against the curve are in suspect-points.ts.

import { predict } from '../regression/predict.ts';
import { grubbsTest } from '../statistics/grubbs.ts';
import { asXy, negligibleDeviation } from './misfit.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import type { SuspectPoints } from './suspect-points.ts';
import { stepOfMost } from './written-column.ts';

/** Fewest cycles in a row. House rule: of three values Grubbs' statistic says only whether two of them agree. */
const fewestCycles = 5;

/** Chance of a false alarm on a clean sheet, for all its rows together. House rule: the curve is the sharper judge and has the larger share. */
const significance = 0.001;

/** A value nearer to the others than this many steps of its column may be the next mark of the dial. House rule. */
const leastSteps = 2;

/**
 * Answers the points that Grubbs' test sets apart from the other cycles in the same row, by their distance from the
 * curve, so that settings that differ a little do not count. At most one in each row.
 * Range: rows that five cycles or more have a point in; a deviation of 0.1 % or of two steps of the display is none.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.17.1, by `grubbsTest`; the limits are house rules.
 */
export function levelOutliers(
  points: readonly PlacedPoint[],
  { suspects, clean }: SuspectPoints,
  set: SetQuantity,
): readonly PlacedPoint[] {
  if (clean === null) return [];
  const rows = new Map<number, PlacedPoint[]>();
  for (const point of points) {
    if (!suspects.includes(point)) rows.set(point.row, [...(rows.get(point.row) ?? []), point]);
  }
  const step = stepOfMost(points, set === 'force' ? 'reading' : 'force');
  return [...rows.values()].flatMap((row) => {
    if (row.length < fewestCycles) return [];
    const distances = row.map((point) => asXy(point, set)).map(({ x, y }) => y - predict(clean, x));
    const test = grubbsTest(distances, significance / rows.size);
    const point = test.ok && test.value.isOutlier ? row[test.value.index] : undefined;
    if (!test.ok || point === undefined) return [];
    const others = distances.filter((_, index) => index !== test.value.index);
    const mean = others.reduce((sum, distance) => sum + distance, 0) / others.length;
    const deviation = Math.abs((distances[test.value.index] ?? 0) - mean);
    return deviation > negligibleDeviation(asXy(point, set).y, leastSteps * step) ? [point] : [];
  });
}
