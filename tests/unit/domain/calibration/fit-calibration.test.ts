import { describe, expect, it } from 'vitest';
import { type FitOptions, fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet, RunSheetPoint } from '../../../../src/domain/calibration/run-sheet.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet, withPoint } from './sheet-of.ts';

const sheetOf = (points: readonly (readonly [number, number, ('up' | 'down')?])[]): RunSheet => ({
  units: { force: 'kN', reading: 'bar' },
  cycles: [
    { points: points.map(([force, reading, direction = 'up']): RunSheetPoint => ({ force, reading, direction })) },
  ],
});
const code = (sheet: RunSheet, options: FitOptions = { degree: 'auto' }) => {
  const outcome = fitCalibration(sheet, options);
  return outcome.ok ? 'fitted' : outcome.problem.code;
};

describe('fitting a calibration', () => {
  it('refuses no point, one, two, and points that are all at zero or falling', () => {
    expect(code(sheetOf([]))).toBe('too-few-points');
    expect(code(sheetOf([[10, 5]]))).toBe('too-few-points');
    expect(
      code(
        sheetOf([
          [10, 5],
          [20, 10],
        ]),
      ),
    ).toBe('too-few-points');
    expect(
      code(
        sheetOf([
          [0, 0],
          [10, 5],
          [20, 10],
          [15, 9, 'down'],
        ]),
      ),
    ).toBe('too-few-points');
    expect(code({ units: { force: 'kN', reading: 'bar' }, cycles: [] })).toBe('too-few-points');
  });

  it('fits rising points above zero alone', () => {
    const sheet = sheetOf([
      [0, 7],
      [10, 5],
      [20, 10],
      [30, 15],
      [20, 12, 'down'],
      [0, 3, 'down'],
    ]);
    const { curve, residuals } = outcomeValue(fitCalibration(sheet, { degree: 1 }));
    expect(curve.fit.points).toHaveLength(3);
    expect(residuals.map(({ row }) => row)).toEqual([1, 2, 3]);
    expect(curve.forceRange).toEqual({ low: 10, high: 30 });
  });

  it('refuses a value that is negative or not finite, and names it', () => {
    const sheet = plainSheet();
    for (const wrong of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(fitCalibration(withPoint(sheet, 1, 3, { force: wrong }), { degree: 1 })).toMatchObject({
        problem: { code: 'number-out-of-range', where: 'cycles[1].points[3].force', given: String(wrong) },
      });
      expect(fitCalibration(withPoint(sheet, 0, 9, { reading: wrong }), { degree: 1 })).toMatchObject({
        problem: { code: 'number-out-of-range', where: 'cycles[0].points[9].reading' },
      });
    }
  });

  it('refuses points at one level and a curve that does not rise, whatever degree was asked for', () => {
    expect(
      code(
        sheetOf([
          [10, 5],
          [10, 6],
          [10, 7],
        ]),
      ),
    ).toBe('equal-levels');
    expect(
      code(
        sheetOf([
          [10, 15],
          [20, 10],
          [30, 5],
        ]),
      ),
    ).toBe('curve-not-increasing');
    const turning = sheetOf([
      [10, 5],
      [20, 10],
      [30, 12],
      [40, 10.5],
      [50, 9],
    ]);
    expect(code(turning, { degree: 2 })).toBe('curve-not-increasing');
    expect(code(turning)).toBe('fitted');
  });

  it('refuses a degree that is not 1, 2 or 3', () => {
    for (const degree of [0, 4, 1.5]) {
      const options = { degree } as unknown as FitOptions;
      expect(code(plainSheet(), options)).toBe('degree-not-supported');
    }
  });

  it('refuses a degree the points do not allow', () => {
    expect(
      code(
        sheetOf([
          [10, 5],
          [20, 10],
          [30, 15],
        ]),
        { degree: 2 },
      ),
    ).toBe('too-few-points');
  });

  it('takes the force as set unless the sheet or the options say otherwise', () => {
    const { set, ...unstated } = plainSheet();
    expect(set).toBe('force');
    const response = (sheet: RunSheet, options: FitOptions) =>
      outcomeValue(fitCalibration(sheet, options)).curve.response;
    expect(response(unstated, { degree: 1 })).toBe('reading');
    expect(response({ ...unstated, set: 'reading' }, { degree: 1 })).toBe('force');
    expect(response({ ...unstated, set: 'reading' }, { degree: 1, set: 'force' })).toBe('reading');
    expect(response(unstated, { degree: 1, set: 'reading' })).toBe('force');
  });

  it('gives residuals in the observed quantity, each at its place in the sheet', () => {
    const { curve, residuals } = outcomeValue(fitCalibration(plainSheet(), { degree: 1 }));
    expect(residuals).toHaveLength(30);
    expect(residuals[13]).toMatchObject({ cycle: 1, row: 3, force: 40 });
    for (const { reading, fitted, residual } of residuals) {
      expectDigits(fitted + residual, { certified: reading, digits: 14, because: 'one rounding' });
    }
    const sum = residuals.reduce((total, { residual }) => total + residual, 0);
    expectDigits(sum, { certified: 0, digits: 9, because: 'thirty readings of thousands, each exact to 1e-12' });
    expect(curve.fit.degreesOfFreedom).toBe(28);
  });

  it('shows the comparison of all three degrees whichever was asked for', () => {
    for (const degree of [1, 2, 3, 'auto'] as const) {
      const { degrees } = outcomeValue(fitCalibration(plainSheet(), { degree }));
      expect(degrees.map((row) => row.degree)).toEqual([1, 2, 3]);
    }
  });
});
