// What the pulls of a bed come to together. Whether each agrees is in judge-pull.ts.

import { force } from '../units/force.ts';
import { convert } from '../units/quantity.ts';
import type { BedPattern } from './bed-pattern.ts';
import type { Pull } from './pull.ts';

export interface BedSummary {
  readonly pulls: number;
  /** Mean of gauge force over elongation force. */
  readonly meanRatio: number;
  /** Sample standard deviation of that ratio; null for one pull. */
  readonly ratioStandardDeviation: number | null;
  /** The pull whose agreement is furthest from zero; the first of equals. */
  readonly worst: Pull;
  readonly outOfWindow: number;
  /** Pulls that repeat another. */
  readonly repulls: number;
  /** Positions whose last pull is out of the window. */
  readonly stillOutOfWindow: readonly string[];
  /** Positions of the pattern nobody has pulled. */
  readonly notPulled: readonly string[];
}

/**
 * Answers what a bed comes to; null before the first pull. Every pull counts, a re-pull beside the one it repeats.
 * mean = sum r / n; s^2 = sum (r - mean)^2 / (n - 1), r the gauge force over the elongation force.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.1 and 1.3.5.6 for mean and standard deviation (from memory).
 */
export function summariseBed(pattern: BedPattern, pulls: readonly Pull[]): BedSummary | null {
  const [first] = pulls;
  if (first === undefined) return null;
  const ratios = pulls.map(
    ({ gaugeForce, elongationForce }) => convert(force, gaugeForce, 'N') / convert(force, elongationForce, 'N'),
  );
  const meanRatio = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  const squares = ratios.reduce((sum, ratio) => sum + (ratio - meanRatio) ** 2, 0);
  const lastOf = (id: string) => pulls.findLast(({ positions }) => positions.includes(id));
  const ids = pattern.positions.map(({ id }) => id);
  return {
    pulls: pulls.length,
    meanRatio,
    ratioStandardDeviation: pulls.length === 1 ? null : Math.sqrt(squares / (pulls.length - 1)),
    worst: pulls.reduce(
      (worst, pull) => (Math.abs(pull.agreementPercent) > Math.abs(worst.agreementPercent) ? pull : worst),
      first,
    ),
    outOfWindow: pulls.filter(({ outcome }) => outcome === 'out-of-window').length,
    repulls: pulls.filter(({ repullOf }) => repullOf !== undefined).length,
    stillOutOfWindow: ids.filter((id) => lastOf(id)?.outcome === 'out-of-window'),
    notPulled: ids.filter((id) => lastOf(id) === undefined),
  };
}
