import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeAsFound } from '../../../../src/domain/calibration/as-found.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { pressure } from '../../../../src/domain/units/pressure.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

/** Points on reading = 145 psi per kip, each force times a factor: what the load cell shows when the pair has changed. */
function sheetOf(forces: readonly number[], factor = 1, set: 'force' | 'reading' = 'force'): RunSheet {
  const points = forces.map((each) => ({ direction: 'up' as const, force: each * factor, reading: 145 * each }));
  return { units: { force: 'kip', reading: 'psi' }, set, cycles: [{ points }, { points }, { points }] };
}
const curveOf = (sheet: RunSheet) => outcomeValue(fitCalibration(sheet, { degree: 1 })).curve;
const before = curveOf(sheetOf([5, 10, 20, 30, 40, 45]));
const inside = [10, 20, 30, 40];

describe('how a pair was found', () => {
  it('is the error of the curve in use against the load cell, in % of force', () => {
    // By hand: at 2900 psi the curve says 20 kip, the cell shows 19.6 kip; (20 - 19.6)/19.6 = 2.0408 %.
    const found = judgeAsFound(before, sheetOf(inside, 0.98), rules);
    expect(found).toMatchObject({ isOutside: true, verdict: 'fail', limitPercent: 2, pointsOffCurve: 0 });
    expectDigits(found.worst?.errorPercent ?? Number.NaN, {
      certified: 2.04081632653,
      digits: 9,
      because: 'eleven digits of 0.4/19.6, less what the fit of an exact line loses',
    });
    expect(found.message).toMatch(
      /gave 2\.04 % more force than the load cell at .* psi \(U .* %\), outside the limit of 2 %/,
    );
  });

  it('is within the limit below it, and says less where there was more force than promised', () => {
    expect(judgeAsFound(before, sheetOf(inside, 0.99), rules)).toMatchObject({ isOutside: false });
    const more = judgeAsFound(before, sheetOf(inside, 1.03), rules);
    expect(more.isOutside).toBe(true);
    expect(more.worst?.errorPercent).toBeLessThan(0);
    expect(more.message).toContain('% less force');
  });

  it('says nothing of points off the curve, and is outside where all are: how far it was off is not known', () => {
    const some = judgeAsFound(before, sheetOf([...inside, 50, 60], 0.9), rules);
    expect(some.pointsOffCurve).toBe(6);
    expect(some.worst?.reading).toBeLessThanOrEqual(45 * 145);
    expect(judgeAsFound(before, sheetOf([50, 60]), rules)).toMatchObject({
      verdict: 'not-judged',
      worst: null,
      isOutside: true,
      pointsOffCurve: 6,
    });
  });

  it('is the same in other units, whatever was set', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.9, max: 1.1, noNaN: true }),
        fc.constantFrom('force' as const, 'reading' as const),
        (factor, set) => {
          const sheet = sheetOf(inside, factor, set);
          const converted: RunSheet = {
            ...sheet,
            units: { force: 'kN', reading: 'MPa' },
            cycles: sheet.cycles.map(({ points }) => ({
              points: points.map((point) => ({
                direction: point.direction,
                force: convert(force, { value: point.force, unit: 'kip' }, 'kN'),
                reading: convert(pressure, { value: point.reading, unit: 'psi' }, 'MPa'),
              })),
            })),
          };
          const curve = curveOf(sheetOf([5, 10, 20, 30, 40, 45], 1, set));
          const [one, other] = [judgeAsFound(curve, sheet, rules), judgeAsFound(curve, converted, rules)];
          expect(other.verdict).toBe(one.verdict);
          // q = (1 - factor)/factor, whatever the units; absolute where the error itself is nothing.
          const expected = (100 * (1 - factor)) / factor;
          expect(Math.abs((other.worst?.errorPercent ?? Number.NaN) - expected)).toBeLessThan(1e-8);
        },
      ),
    );
  });
});
