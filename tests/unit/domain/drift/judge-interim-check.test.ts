import { describe, expect, it } from 'vitest';
import { type Curve, curveOfFit } from '../../../../src/domain/calibration/curve.ts';
import { type InterimCheck, judgeInterimCheck } from '../../../../src/domain/drift/judge-interim-check.ts';
import type { Outcome } from '../../../../src/domain/problem.ts';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { seededScatter } from '../calibration/seeded-scatter.ts';

const judged = (outcome: Outcome<InterimCheck>) => {
  const check = outcomeValue(outcome);
  if (check.kind !== 'judged') throw new Error(check.kind);
  return check;
};
const units = { force: 'kN', reading: 'bar' } as const;
const because = 'worked by hand from the formula, in doubles';
/** Force observed: 2 kN per bar, off by 0.3, -0.6 and 0.3 kN at 100, 200 and 300 bar. */
const threePoints: Curve = curveOfFit(
  outcomeValue(
    fitPolynomial(
      [
        { x: 100, y: 200.3 },
        { x: 200, y: 399.4 },
        { x: 300, y: 600.3 },
      ],
      1,
    ),
  ),
  'force',
  units,
);
const sameCell = { level: 0.95, referenceStandardUncertaintyPercent: 0 } as const;
/** t at 95 % and one degree of freedom, in closed form. */
const t = Math.tan(0.475 * Math.PI);

describe('an interim check', () => {
  it('is judged by the prediction interval for the mean of its readings', () => {
    // The residuals 0.3, -0.6, 0.3 have s = sqrt(0.54); the leverage in the middle is 1/3.
    for (const m of [1, 4]) {
      const readings = Array.from({ length: m }, () => ({ reading: 200, force: 396 }));
      const { worst, isOutside } = judged(judgeInterimCheck(threePoints, [readings], sameCell));
      const certified = (100 / 400) * t * Math.sqrt(0.54 * (1 / m + 1 / 3));
      expectDigits(worst.limitPercent, { certified, digits: 9, because });
      expectDigits(worst.deviationPercent, { certified: 1, digits: 11, because });
      expect(worst.count).toBe(m);
      expect(isOutside).toBe(1 > certified);
    }
  });

  it('has the same sign whichever way the curve was fitted: positive where the curve promises too much', () => {
    const readingObserved = curveOfFit(
      outcomeValue(
        fitPolynomial(
          [
            { x: 200, y: 100.1 },
            { x: 400, y: 199.8 },
            { x: 600, y: 300.1 },
          ],
          1,
        ),
      ),
      'reading',
      units,
    );
    // The gauge shows 202 bar, 404 kN by the curve, at 400 kN on the cell.
    const { worst } = judged(judgeInterimCheck(readingObserved, [[{ force: 400, reading: 202 }]], sameCell));
    expectDigits(worst.deviationPercent, { certified: 1, digits: 10, because });
  });

  it('counts the uncertainty of a reference that the calibration did not share', () => {
    const check = [[{ reading: 200, force: 396 }]];
    const options = { level: 0.95, referenceStandardUncertaintyPercent: 5 };
    const { worst } = judged(judgeInterimCheck(threePoints, check, options));
    // Almost all comes from the reference, so that the degrees of freedom are thousands and the factor is the normal one.
    const certified = 1.96 * Math.hypot(5, (100 / 400) * Math.sqrt(0.54 * (4 / 3)));
    expectDigits(worst.limitPercent, { certified, digits: 3, because: '1.96 stands for the factor' });
  });

  it('is judged more gently at each of several levels, and is outside where one is', () => {
    const at = (reading: number, off: number) => [{ reading, force: 2 * reading * (1 - off) }];
    const one = judged(judgeInterimCheck(threePoints, [at(200, 0)], sameCell));
    const two = judged(judgeInterimCheck(threePoints, [at(200, 0), at(300, 0.5)], sameCell));
    // t at 97.5 % over t at 95 %, one degree of freedom.
    const certified = Math.tan(0.4875 * Math.PI) / t;
    expectDigits((two.levels[0]?.limitPercent ?? 0) / one.worst.limitPercent, { certified, digits: 9, because });
    expect(two.isOutside).toBe(true);
    expect(two.worst.reading).toBe(300);
    expect(two.levels[0]?.isOutside).toBe(false);
  });

  it('is refused without a reading or off the curve', () => {
    const codeOf = (levels: Parameters<typeof judgeInterimCheck>[1]) => {
      const check = judgeInterimCheck(threePoints, levels, sameCell);
      return check.ok ? 'judged' : check.problem.code;
    };
    expect(codeOf([])).toBe('too-few-points');
    expect(codeOf([[]])).toBe('too-few-points');
    expect(codeOf([[{ reading: 301, force: 600 }]])).toBe('outside-calibrated-range');
  });

  it('has no limit where neither curve nor reference scatters', () => {
    const exact = fitPolynomial(
      [100, 200, 300].map((x) => ({ x, y: 2 * x })),
      1,
    );
    const curve = curveOfFit(outcomeValue(exact), 'force', units);
    const check = [[{ reading: 200, force: 400 }]];
    expect(outcomeValue(judgeInterimCheck(curve, check, sameCell))).toEqual({ kind: 'no-scatter' });
    const withReference = { ...sameCell, referenceStandardUncertaintyPercent: 0.1 };
    expect(judged(judgeInterimCheck(curve, check, withReference)).isOutside).toBe(false);
  });

  it('of a pair that did not change passes in 95 of 100, three readings at each of two levels', () => {
    const normal = seededScatter(20_262);
    const trials = 4000;
    let passed = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      const noisy = (reading: number) => 2 * reading + 0.8 * normal();
      const xs = [60, 120, 180, 240, 300];
      const points = [...xs, ...xs].map((x) => ({ x, y: noisy(x) }));
      const curve = curveOfFit(outcomeValue(fitPolynomial(points, 1)), 'force', units);
      const check = [100, 250].map((reading) => [1, 2, 3].map(() => ({ reading, force: noisy(reading) })));
      if (!judged(judgeInterimCheck(curve, check, sameCell)).isOutside) passed += 1;
    }
    // Bonferroni's bound is nearly reached: two levels share the curve alone.
    expectDigits(passed / trials, {
      certified: 0.95,
      digits: -Math.log10((4 * Math.sqrt((0.95 * 0.05) / trials)) / 0.95),
      because: 'four binomial standard deviations of 4,000 trials',
    });
  });
});
