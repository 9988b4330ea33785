// Grubbs' test: is the value furthest from the mean of a sample too far to belong to it?

import { fail, type Outcome, succeed } from '../problem.ts';
import { studentQuantile } from './student-quantile.ts';

export interface GrubbsTest {
  /** Largest |value - mean| over the standard deviation; 0 where all values are equal. */
  readonly statistic: number;
  readonly critical: number;
  /** Which value is furthest from the mean, counted from zero. */
  readonly index: number;
  readonly isOutlier: boolean;
}

/**
 * Answers whether the value furthest from the mean, on either side, is an outlier at the given two-sided significance.
 * G = max |value - mean| / s; critical value (n - 1)/sqrt(n) sqrt(t^2 / (n - 2 + t^2)), t the upper significance/(2n)
 * point of Student's t with n - 2 degrees of freedom.
 * Range: 3 or more finite values from one normal population but for at most one outlier; `significance` in (0, 1).
 * Problem: `too-few-points` below 3 values.
 * Source: NIST/SEMATECH e-Handbook 1.3.5.17.1. Example: the uranium data there, G = 2.4687 for 245.57 of 8 values.
 */
export function grubbsTest(values: readonly number[], significance: number): Outcome<GrubbsTest> {
  const count = values.length;
  if (count < 3) {
    return fail('too-few-points', `Grubbs' test needs at least 3 values; there are ${count}.`, {
      needed: '3 values',
      given: String(count),
    });
  }
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const deviations = values.map((value) => Math.abs(value - mean));
  const furthest = Math.max(...deviations);
  const deviation = Math.sqrt(deviations.reduce((sum, each) => sum + each * each, 0) / (count - 1));
  const statistic = deviation === 0 ? 0 : furthest / deviation;
  const critical = grubbsCriticalValue(count, significance);
  return succeed({ statistic, critical, index: deviations.indexOf(furthest), isOutlier: statistic > critical });
}

/** Answers the two-sided critical value of Grubbs' test for 3 or more values. Source and formula as for `grubbsTest`. */
export function grubbsCriticalValue(count: number, significance: number): number {
  const t = studentQuantile(1 - significance / (2 * count), count - 2);
  return ((count - 1) / Math.sqrt(count)) * Math.sqrt((t * t) / (count - 2 + t * t));
}
