// Does the 95 % force interval hold the true force in 95 % of future settings? By simulation, in both directions.
// The run over more trials and points is tests/benchmark/interval-coverage.ts.

import { describe, expect, it } from 'vitest';
import { type CoverageCase, scatterOfPractice, simulateCoverage } from '../../../force-interval-coverage.ts';

const trials = 4000;
const level = 0.95;
/**
 * Four standard deviations of a binomial share, 4 sqrt(0.95 x 0.05 / 4000) = 0.0138: a right program is refused by one
 * seed in about 16,000, and the seeds are fixed. An interval with n for n - 2 at 6 points covers about 0.91 and is refused.
 */
const bound = 4 * Math.sqrt((level * (1 - level)) / trials);

describe('coverage of the force interval', () => {
  const cases: readonly CoverageCase[] = (['reading', 'force'] as const).flatMap((response) =>
    ([1, 2, 3] as const).flatMap((degree) => [6, 30].map((pointsCount) => ({ response, degree, pointsCount }))),
  );

  it.each(cases)('holds with the $response observed, degree $degree, $pointsCount points', (each) => {
    const seed = 20_260 + each.pointsCount + each.degree;
    const { ofSetting, ofCurve, withoutInterval } = simulateCoverage(each, {
      level,
      trials,
      seed,
      scatterPart: scatterOfPractice,
    });
    expect(Math.abs(ofSetting - level)).toBeLessThan(bound);
    expect(Math.abs(ofCurve - level)).toBeLessThan(bound);
    expect(withoutInterval).toBe(0);
  });

  it('would not accept intervals at 92 % for those at 95 %', () => {
    const [first] = cases;
    if (first === undefined) throw new Error('there are cases');
    const { ofSetting, ofCurve } = simulateCoverage(first, {
      level: 0.92,
      trials,
      seed: 20_267,
      scatterPart: scatterOfPractice,
    });
    expect(Math.abs(ofSetting - level)).toBeGreaterThan(bound);
    expect(Math.abs(ofCurve - level)).toBeGreaterThan(bound);
  });
});
