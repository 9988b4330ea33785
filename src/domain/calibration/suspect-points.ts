// Which rising points of a sheet do not belong to the curve through the others, whatever was meant in their place.
// Swapped digits that stand out less are in swapped-points.ts, what would fit in likely-slip.ts.

import { deletedResidual } from '../regression/deleted-residual.ts';
import type { FittedPoint, Point, PolynomialFit } from '../regression/fit-polynomial.ts';
import { leverageAt, predict } from '../regression/predict.ts';
import { studentQuantile } from '../statistics/student-quantile.ts';
import { asXy, fitLean, negligibleDeviation } from './misfit.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import { stepOfMost } from './written-column.ts';

export interface SuspectPoints {
  readonly suspects: readonly PlacedPoint[];
  /** The curve through all other points: x set, y observed. Null where too few are left for one. */
  readonly clean: PolynomialFit | null;
}

/** Reading over force off by this factor is a slip whatever the scatter. House rule: the zero offset of a jack stays below it. */
const grossFactor = 1.8;

/** Chance of a false alarm on a clean sheet, for all its points together. House rule: with the other checks below 1 in 100 sheets. */
const significance = 0.002;

/** The largest part of the points that may be outliers; with more there is no curve to judge them by. House rule. */
const mostOutliers = 0.2;

/**
 * Answers which points do not belong to the curve through the others, however many they are (up to a fifth).
 * Gross slips go first, by the ratio of reading to force against its median. Of the rest the point with the largest
 * studentized residual is taken away and the curve fitted anew, again and again; set apart are all points taken up to
 * the last whose deleted residual t exceeded its limit, so that two outliers cannot hide each other. Each point set
 * apart is then held against the curve through all others, and belongs to it after all unless it misses that curve by
 * more than t s sqrt(1 + h). Limits are Bonferroni's, for all points of the sheet together.
 * A deviation of 0.1 %, or of one step of the display, is none.
 * Range: 3 points or more for gross slips, 6 or more for outliers; fewer give none.
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, 2.2.2 for t and its limit (from
 * memory); NIST/SEMATECH e-Handbook 1.3.5.17.3 for testing backwards (from memory).
 */
export function suspectPoints(points: readonly PlacedPoint[], set: SetQuantity): SuspectPoints {
  const gross = grossSlips(points);
  let rest = points.filter((point) => !gross.includes(point));
  const step = stepOfMost(rest, set === 'force' ? 'reading' : 'force');
  const removed: PlacedPoint[] = [];
  let setApart = 0;
  const most = Math.floor(points.length * mostOutliers);
  for (let count = 0; count < most; count += 1) {
    const fit = fitLean(rest, set);
    if (fit === null || fit.degreesOfFreedom < 3) break;
    const worst = mostDeviating(fit, step);
    const point = rest[worst.index];
    if (point === undefined) break;
    removed.push(point);
    if (worst.isSetApart) setApart = removed.length;
    rest = rest.filter((other) => other !== point);
  }
  const outliers = removed.slice(0, setApart);
  const suspected = new Set([...gross, ...outliers]);
  const clean = fitLean(
    points.filter((point) => !suspected.has(point)),
    set,
  );
  const suspects = points.filter((point) => suspected.has(point) && !belongsTo(clean, asXy(point, set), step));
  return { suspects, clean };
}

function grossSlips(points: readonly PlacedPoint[]): readonly PlacedPoint[] {
  if (points.length < 3) return [];
  const ratios = points.map(({ force, reading }) => reading / force);
  // The lower of two middle values, so that the median is one of the ratios even where two kinds are mixed evenly.
  const median = [...ratios].sort((a, b) => a - b)[Math.floor((points.length - 1) / 2)] ?? 0;
  return points.filter((_, index) => {
    const relative = (ratios[index] ?? 0) / median;
    return !(relative < grossFactor && relative > 1 / grossFactor);
  });
}

/** The point with the largest studentized residual, and whether its deleted residual sets it apart from the others. */
function mostDeviating(fit: PolynomialFit, step: number): { readonly index: number; readonly isSetApart: boolean } {
  const sizes = fit.points.map(({ studentized }) => Math.abs(studentized ?? 0));
  const index = sizes.indexOf(Math.max(...sizes));
  const point = fit.points[index];
  if (point === undefined || isNegligible(point, step)) return { index, isSetApart: false };
  const deleted = deletedResidual(sizes[index] ?? 0, fit.degreesOfFreedom);
  const limit = limitOf(fit.points.length, fit.degreesOfFreedom - 1);
  return { index, isSetApart: deleted !== null && deleted > limit };
}

/** Bonferroni's limit of t for the worst of `count` points together. */
function limitOf(count: number, degreesOfFreedom: number): number {
  return studentQuantile(1 - significance / (2 * count), degreesOfFreedom);
}

function isNegligible({ residual, fitted }: FittedPoint, step: number): boolean {
  return Math.abs(residual) <= negligibleDeviation(fitted, step);
}

/** Whether a point lies where the curve through the others expects it after all, as the low levels of a gauge off zero do. */
function belongsTo(clean: PolynomialFit | null, { x, y }: Point, step: number): boolean {
  if (clean === null) return false;
  const expected = predict(clean, x);
  const deviation = clean.residualStandardDeviation * Math.sqrt(1 + leverageAt(clean, x));
  const limit = limitOf(clean.points.length + 1, clean.degreesOfFreedom) * deviation;
  return Math.abs(y - expected) <= Math.max(limit, negligibleDeviation(expected, step));
}
