// Cycles that agree in every observed value although the display is fine enough to tell them apart: were they copied?
// The words for it are in cycle-checks.ts.

import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';
import { writtenColumn } from './written-column.ts';

/** Chance below which that many equal values are no chance. House rule: 1 in 1000 sheets. */
const leastChance = 0.001;

/**
 * Repeatability standard deviation of a pair that repeats very well, as a part of the largest value. House rule, without
 * a published figure: a tenth of what class 1 allows a spread to be, so that honest cycles of nearly any pair pass.
 */
const bestRepeatability = 0.0005;

/** What part of the scatter of other cycles is counted on. House rule: ten differences give it to about a quarter. */
const cautiousPart = 0.7;

/**
 * Answers groups of cycles, counted from zero, that are equal in every observed value above zero force where that is
 * improbable. Two values of one level that differ by a normal variable of standard deviation sqrt(2) sigma show the same
 * multiple of a step d with probability p = 2 Phi(a) - 1 - 2 (phi(0) - phi(a)) / a, a = d / (sqrt(2) sigma), averaged over
 * where between two marks the level lies. All n values of g cycles agree with about p^(n (g - 1)).
 * sigma: 0.05 % of the largest value, which only the best pairs keep, or what cycles that differ show if more; d: the step all values are multiples of. On a
 * coarse dial p is near 1 and equal cycles are honest; they are named only where the chance is below 1 in 1000.
 * Range: cycles of at least 3 points each at the same settings. `suspects` say nothing of the scatter.
 * Source: probability of equal rounding computed from the normal distribution; sigma and limit are house rules.
 */
export function copiedCycles(
  points: readonly PlacedPoint[],
  set: SetQuantity,
  suspects: readonly PlacedPoint[],
): readonly (readonly number[])[] {
  const observed = set === 'force' ? 'reading' : 'force';
  const byContent = new Map<string, { readonly cycles: number[]; readonly count: number }>();
  for (const cycle of new Set(points.map((point) => point.cycle))) {
    const own = points.filter((point) => point.cycle === cycle);
    const content = own.map(({ direction, force, reading }) => `${direction} ${force} ${reading}`).join(', ');
    const same = byContent.get(content);
    if (same === undefined) byContent.set(content, { cycles: [cycle], count: own.length });
    else same.cycles.push(cycle);
  }
  const largest = Math.max(0, ...points.map((point) => point[observed]));
  const { step } = writtenColumn(points, observed);
  const distinct = [...byContent.values()].map(({ cycles }) => points.filter(({ cycle }) => cycle === cycles[0]));
  const sigma = Math.max(bestRepeatability * largest, leastRepeatabilityOf(distinct, observed, suspects));
  const equalChance = chanceOfEqual(step / (Math.SQRT2 * sigma));
  return [...byContent.values()]
    .filter(({ cycles, count }) => cycles.length > 1 && count >= 3)
    .filter(({ cycles, count }) => equalChance ** (count * (cycles.length - 1)) < leastChance)
    .map(({ cycles }) => cycles);
}

/** From the differences of the first two different cycles, row by row about their mean; 0 where there are not two. */
function leastRepeatabilityOf(
  [one, other]: readonly (readonly PlacedPoint[])[],
  observed: SetQuantity,
  suspects: readonly PlacedPoint[],
): number {
  if (one === undefined || other === undefined) return 0;
  const differences = one.flatMap((point) => {
    const same = other.find(({ row }) => row === point.row);
    if (same === undefined || suspects.includes(point) || suspects.includes(same)) return [];
    return [point[observed] - same[observed]];
  });
  if (differences.length < 3) return 0;
  const mean = differences.reduce((sum, each) => sum + each, 0) / differences.length;
  const squares = differences.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  return cautiousPart * Math.sqrt(squares / (differences.length - 1) / 2);
}

function chanceOfEqual(a: number): number {
  const density = (at: number): number => Math.exp((-at * at) / 2) / Math.sqrt(2 * Math.PI);
  return a > 0 ? 2 * normalCdf(a, 0, 1) - 1 - (2 * (density(0) - density(a))) / a : 0;
}
