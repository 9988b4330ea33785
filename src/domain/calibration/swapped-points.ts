// Points that lie near enough to the curve to be scatter, were it not that two swapped digits bring them right onto it.
// Points that do not fit whatever was meant are in suspect-points.ts.

import { deletedResidual } from '../regression/deleted-residual.ts';
import { predict } from '../regression/predict.ts';
import type { Curve } from './curve.ts';
import { evidenceOfSwap, slipContext } from './likely-slip.ts';
import { asXy, fitLean, negligibleDeviation } from './misfit.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import type { SuspectPoints } from './suspect-points.ts';
import { stepOfMost } from './written-column.ts';

/** Deleted residual from which a swap is thought of at all. House rule: 1 point in 80 of a clean sheet passes it. */
const leastDeleted = 2.5;

/**
 * How much likelier a swap must make a point than scatter does, for each point of the sheet. House rule, found by
 * simulation (tests/benchmark/entry-check-rates.ts): fewer than 1 clean sheet in 200 then has such a point.
 */
const leastEvidencePerPoint = 4;

/** Most such points in one sheet; with more the sheet scatters and nobody swapped digits. House rule. */
const mostSwapped = 3;

/**
 * Answers the suspects of a sheet with those points added that two swapped digits explain far better than scatter.
 * Of the points that belong to the curve the one with the strongest evidence is taken away and the curve fitted anew,
 * again until none is strong enough. Two rare things must meet, a large residual and a swap that undoes it, so that the
 * limit of the residual may be lower than that of a point nothing explains.
 * Range: 6 points or more and 3 degrees of freedom without the point; else nothing is added.
 * Source: house rule of the design, "Calculations" 7; Bayes' theorem for the evidence.
 */
export function addSwappedPoints(
  suspected: SuspectPoints,
  points: readonly PlacedPoint[],
  set: SetQuantity,
  units: Curve['units'],
): SuspectPoints {
  let found = suspected;
  for (let count = 0; count < mostSwapped; count += 1) {
    const next = mostEvident(found.suspects, points, set, units);
    if (next === null) return found;
    const added = [...found.suspects, next];
    found = {
      suspects: points.filter((point) => added.includes(point)),
      clean: fitLean(
        points.filter((point) => !added.includes(point)),
        set,
      ),
    };
  }
  return found;
}

function mostEvident(
  suspects: readonly PlacedPoint[],
  points: readonly PlacedPoint[],
  set: SetQuantity,
  units: Curve['units'],
): PlacedPoint | null {
  const fitting = points.filter((point) => !suspects.includes(point));
  const fit = fitting.length < 6 ? null : fitLean(fitting, set);
  if (fit === null) return null;
  const step = stepOfMost(fitting, set === 'force' ? 'reading' : 'force');
  let best: { readonly point: PlacedPoint; readonly evidence: number } | null = null;
  for (const [index, point] of fitting.entries()) {
    const { studentized = null, residual = 0, fitted = 0 } = fit.points[index] ?? {};
    if (studentized === null || Math.abs(residual) <= negligibleDeviation(fitted, step)) continue;
    const deleted = deletedResidual(studentized, fit.degreesOfFreedom);
    if (deleted === null || Math.abs(deleted) < leastDeleted) continue;
    const others = fitting.filter((other) => other !== point);
    const without = fitLean(others, set);
    if (without === null || without.degreesOfFreedom < 3) continue;
    const { x, y } = asXy(point, set);
    if (Math.abs(y - predict(without, x)) <= negligibleDeviation(y, step)) continue;
    const evidence = evidenceOfSwap(point, slipContext(others, { clean: without, set, units, all: points }));
    if (evidence > leastEvidencePerPoint * points.length && evidence > (best?.evidence ?? 0))
      best = { point, evidence };
  }
  return best?.point ?? null;
}
