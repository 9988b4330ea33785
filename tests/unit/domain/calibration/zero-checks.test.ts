import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import { zeroChecks, zeroErrorPercent } from '../../../../src/domain/calibration/zero-checks.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const up = (force: number, reading: number) => ({ direction: 'up' as const, force, reading });
const down = (force: number, reading: number) => ({ direction: 'down' as const, force, reading });
const because = 'worked by hand: 5 kN per MPa, 300 kN at most';

describe('zero checks', () => {
  const sheet = (set: 'force' | 'reading'): RunSheet => ({
    units: { force: 'kN', reading: 'MPa' },
    set,
    cycles: [
      { points: [up(0, 0), up(100, 20), up(200, 40), up(300, 60), down(0, 0.6)] },
      { points: [up(100, 20), up(200, 40), up(300, 60), down(0, 0.3)] },
    ],
  });

  it('say what force the reading at no force stands for, by the slope at the low end', () => {
    for (const set of ['force', 'reading'] as const) {
      const { curve } = outcomeValue(fitCalibration(sheet(set), { degree: 1 }));
      const checks = zeroChecks(sheet(set), curve);
      expect(checks.map(({ cycle, row, reading }) => [cycle, row, reading])).toEqual([
        [0, 0, 0],
        [0, 4, 0.6],
        [1, 3, 0.3],
      ]);
      expectDigits(checks[1]?.force ?? Number.NaN, { certified: 3, digits: 12, because });
      expectDigits(checks[1]?.percent ?? Number.NaN, { certified: 1, digits: 12, because });
      expectDigits(zeroErrorPercent(checks) ?? Number.NaN, { certified: 1, digits: 12, because });
    }
  });

  it('are none where zero was not noted, and then there is no zero error', () => {
    const { curve } = outcomeValue(fitCalibration(sheet('force'), { degree: 1 }));
    const without = { ...sheet('force'), cycles: [{ points: [up(100, 20)] }] };
    expect(zeroChecks(without, curve)).toEqual([]);
    expect(zeroErrorPercent([])).toBeNull();
  });
});
