// How often the force interval holds the force, by simulated calibrations through the program's own fit and curve.
// Used by the coverage script in tests/benchmark/ and by a smaller test beside the curve's.

import { curveOfFit, forceIntervalAtReading } from '../src/domain/calibration/curve.ts';
import { type Degree, fitPolynomial } from '../src/domain/regression/fit-polynomial.ts';
import { isStrictlyIncreasing } from '../src/domain/regression/is-strictly-increasing.ts';
import { predictionInterval } from '../src/domain/regression/prediction-interval.ts';
import { seededScatter } from './unit/domain/calibration/seeded-scatter.ts';

export interface CoverageCase {
  /** The quantity observed in the calibration; the other one was set. */
  readonly response: 'reading' | 'force';
  readonly degree: Degree;
  readonly pointsCount: number;
}

export interface CoverageOptions {
  readonly level: number;
  readonly trials: number;
  readonly seed: number;
  /** Standard deviation of the observed quantity, as a part of what it covers. */
  readonly scatterPart: number;
}

/** 0.25 %: a scatter of practice, and so small that an interval is missing in 1 of 1000 trials at most. */
export const scatterOfPractice = 0.0025;

export interface Coverage {
  /** Share of trials whose interval held the force of one further setting. */
  readonly ofSetting: number;
  /** Share of trials whose mean-response band held the true curve there. */
  readonly ofCurve: number;
  /** Trials without an interval: curve not increasing, or a named outcome. They count as not held. */
  readonly withoutInterval: number;
}

/** The set quantity runs over the range, in the unit of its kind; the observed one is a polynomial of it, plus scatter. */
const range = { low: 10, high: 100 };
const truths: Readonly<Record<Degree, (x: number) => number>> = {
  1: (x) => 20 + 80 * x,
  2: (x) => 20 + 80 * x + 0.1 * x ** 2,
  3: (x) => 20 + 80 * x + 0.1 * x ** 2 + 0.002 * (x - 55) ** 3,
};

/** Further settings lie this part of the range or more inside its ends, so that no reading falls off the curve by scatter. */
const margin = 0.1;

/** At most ten levels, as in a run sheet; more points are further cycles of them. */
function levelsOf(pointsCount: number): readonly number[] {
  const levels = Math.min(pointsCount, 10);
  return Array.from({ length: pointsCount }, (_, index) => {
    const part = (index % levels) / (levels - 1);
    return range.low + part * (range.high - range.low);
  });
}

/**
 * Answers the coverage of the intervals at `level`, over `trials` calibrations with normal scatter, each with one further
 * setting somewhere in the range, all from one seed.
 * Reading observed: a force is set, the gauge shows its true reading plus scatter, and the interval at that reading must
 * hold the force. Force observed: a reading is set, the jack pulls its true force plus scatter, and the interval must hold it.
 */
export function simulateCoverage(
  { response, degree, pointsCount }: CoverageCase,
  { level, trials, seed, scatterPart }: CoverageOptions,
): Coverage {
  const scatter = seededScatter(seed);
  const truth = truths[degree];
  const deviation = scatterPart * (truth(range.high) - truth(range.low));
  const xs = levelsOf(pointsCount);
  let [held, heldCurve, without] = [0, 0, 0];
  for (let trial = 0; trial < trials; trial += 1) {
    const fit = fitPolynomial(
      xs.map((x) => ({ x, y: truth(x) + deviation * scatter() })),
      degree,
    );
    // Even steps through the range; the scatter of each trial is new, so that place and scatter do not go together.
    const x = range.low + (range.high - range.low) * (margin + ((1 - 2 * margin) * (trial + 0.5)) / trials);
    const y = truth(x) + deviation * scatter();
    if (!fit.ok || !isStrictlyIncreasing(fit.value)) {
      without += 1;
      continue;
    }
    const band = predictionInterval(fit.value, x, { level, of: 'mean-response' });
    if (band.low <= truth(x) && truth(x) <= band.high) heldCurve += 1;
    const curve = curveOfFit(fit.value, response, { force: 'kN', reading: 'bar' });
    const [reading, force] = response === 'reading' ? [y, x] : [x, y];
    const interval = forceIntervalAtReading(curve, reading, level);
    if (!interval.ok) without += 1;
    else if (interval.value.low <= force && force <= interval.value.high) held += 1;
  }
  return { ofSetting: held / trials, ofCurve: heldCurve / trials, withoutInterval: without };
}
