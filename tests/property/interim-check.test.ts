// Laws of an interim check: one reading is one future observation, more readings narrow the limit, their order is nothing.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveOfFit } from '../../src/domain/calibration/curve.ts';
import { type InterimCheck, judgeInterimCheck } from '../../src/domain/drift/judge-interim-check.ts';
import type { Outcome } from '../../src/domain/problem.ts';
import { fitPolynomial } from '../../src/domain/regression/fit-polynomial.ts';
import { predictionInterval } from '../../src/domain/regression/prediction-interval.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

/** Digits of a band are lost as it narrows against the curve. */
const leastScatter = 1e-3;
const scatter = fc.double({ min: -1, max: 1, noNaN: true });
const curve = fc
  .array(scatter, { minLength: 10, maxLength: 10 })
  .map((off) => {
    const points = off.map((each, row) => ({ x: 30 * (row + 1), y: 60 * (row + 1) + each }));
    return curveOfFit(outcomeValue(fitPolynomial(points, 1)), 'force', { force: 'kN', reading: 'bar' });
  })
  .filter(({ fit }) => fit.residualStandardDeviation > leastScatter);
const reading = fc.double({ min: 30, max: 300, noNaN: true });
const options = { level: 0.95, referenceStandardUncertaintyPercent: 0 } as const;
const judged = (outcome: Outcome<InterimCheck>) => {
  const check = outcomeValue(outcome);
  if (check.kind !== 'judged') throw new Error(check.kind);
  return check;
};
const because = 'a handful of operations in doubles, on a band of a thousandth of the value';

describe('an interim check', () => {
  it('with one reading is judged by the interval of one future observation', () => {
    fc.assert(
      fc.property(curve, reading, (given, at) => {
        const { low, high } = predictionInterval(given.fit, at, { level: 0.95, of: 'observation' });
        const { worst } = judged(judgeInterimCheck(given, [[{ reading: at, force: 2 * at }]], options));
        const certified = (100 * (high - low)) / (high + low);
        expectDigits(worst.limitPercent, { certified, digits: 9, because });
      }),
    );
  });

  it('is judged more narrowly with more readings, and never as narrowly as the curve alone', () => {
    fc.assert(
      fc.property(curve, reading, fc.integer({ min: 1, max: 20 }), (given, at, count) => {
        const limitOf = (readings: number) =>
          judged(
            judgeInterimCheck(
              given,
              [Array.from({ length: readings }, () => ({ reading: at, force: 2 * at }))],
              options,
            ),
          ).worst.limitPercent;
        expect(limitOf(count + 1)).toBeLessThan(limitOf(count));
        const { low, high } = predictionInterval(given.fit, at, { level: 0.95, of: 'mean-response' });
        expect(limitOf(count)).toBeGreaterThan((100 * (high - low)) / (high + low));
      }),
    );
  });

  it('does not depend on the order of its readings', () => {
    fc.assert(
      fc.property(curve, reading, fc.array(scatter, { minLength: 2, maxLength: 6 }), (given, at, offs) => {
        const readings = offs.map((off) => ({ reading: at, force: 2 * at + off }));
        const [one, other] = [readings, readings.toReversed()].map(
          (each) => judged(judgeInterimCheck(given, [each], options)).worst.deviationPercent,
        );
        expectDigits(100 + (other ?? 0), { certified: 100 + (one ?? 0), digits: 12, because });
      }),
    );
  });
});
