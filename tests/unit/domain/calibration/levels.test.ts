import { describe, expect, it } from 'vitest';
import { curveOfFit } from '../../../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { calibrationLevels, loadEfficiency } from '../../../../src/domain/calibration/levels.ts';
import type { RunSheet, RunSheetPoint } from '../../../../src/domain/calibration/run-sheet.ts';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet } from './sheet-of.ts';

const units = { force: 'kN', reading: 'MPa' } as const;
const because = 'worked by hand, in doubles';
/** A curve of exactly 2 MPa per 10 kN, either way round. */
const curveOf = (response: 'reading' | 'force') => {
  const points = [100, 200, 300].map((force) =>
    response === 'reading' ? { x: force, y: force / 5 } : { x: force / 5, y: force },
  );
  return curveOfFit(outcomeValue(fitPolynomial(points, 1)), response, units);
};
const point = (force: number, reading: number, direction: 'up' | 'down' = 'up'): RunSheetPoint => ({
  direction,
  force,
  reading,
});

describe('levels of a calibration', () => {
  it('are the places of the cycles where forces were set by hand, up to 7 % apart', () => {
    const cycle = (part: number) => ({
      points: [100, 200, 300].map((force) => point(part * force, (part * force) / 5)),
    });
    const rough = { units, set: 'force', cycles: [cycle(1), cycle(1.03), cycle(0.97)] } as const;
    expect(calibrationLevels(rough, curveOf('reading')).map(({ count }) => count)).toEqual([3, 3, 3]);
    // Beyond 7 % they are levels of their own, and so are series set between one another.
    const rougher = { ...rough, cycles: [cycle(1), cycle(1.04), cycle(0.96)] };
    expect(calibrationLevels(rougher, curveOf('reading')).every(({ count }) => count === 1)).toBe(true);
    const between = {
      ...rough,
      cycles: [cycle(1), { points: [150, 250, 298].map((force) => point(force, force / 5)) }],
    };
    expect(calibrationLevels(between, curveOf('reading')).map(({ count }) => count)).toEqual([1, 1, 1, 1, 2]);
  });

  it('show the spread of cycles that were set 3 % apart and did not agree', () => {
    const cycle = (part: number, error: number) => ({
      points: [100, 200, 300].map((force) => point(part * force, (part * force * (1 + error)) / 5)),
    });
    const sheet: RunSheet = { units, set: 'force', cycles: [cycle(1, 0), cycle(1.03, 0.03), cycle(0.97, -0.03)] };
    const [, middle] = calibrationLevels(sheet, curveOf('reading'));
    // 206 kN read as 212.18, 194 as 188.18: errors 3 % of 206 and -3 % of 194, of a mean of 200.
    expectDigits(middle?.repeatabilityPercent ?? Number.NaN, { certified: 6, digits: 11, because });
  });

  it('take reversibility into the uncertainty of a level only where readings are worked to falling', () => {
    const points = [100, 200, 300].flatMap((force) => [point(force, force / 5), point(force, force / 5 + 0.4, 'down')]);
    const sheet: RunSheet = { units, set: 'force', cycles: [{ points }, { points }] };
    const sourcesOf = (fallingUse: boolean) =>
      calibrationLevels(sheet, curveOf('reading'), { fallingUse })[1]?.budget.contributions.map(({ source }) => source);
    expect(sourcesOf(true)).toContain('reversibility');
    expect(sourcesOf(false)).not.toContain('reversibility');
    const [, level] = calibrationLevels(sheet, curveOf('reading'), { fallingUse: true });
    const share = level?.budget.contributions.find(({ source }) => source === 'reversibility');
    // 0.4 MPa is 2 kN, 1 % of 200 kN; rectangular.
    expectDigits(share?.standardUncertainty ?? Number.NaN, { certified: 2 / Math.sqrt(3), digits: 10, because });
    expect(level?.errorBudget.contributions.map(({ source }) => source)).not.toContain('reversibility');
    expectDigits(((level?.errorUncertaintyPercent ?? 0) * 200) / 100, {
      certified: level?.errorBudget.expanded ?? Number.NaN,
      digits: 12,
      because,
    });
  });

  it('give what each cycle showed, in the order of the cycles', () => {
    const sheet: RunSheet = {
      units,
      set: 'force',
      cycles: [
        { points: [point(200, 40.4), point(200, 40.6)] },
        { points: [] },
        { points: [point(199.5, 39.9), point(200, 41, 'down')] },
      ],
    };
    const [level, ...others] = calibrationLevels(sheet, curveOf('reading'));
    expect(others).toEqual([]);
    expect(level?.cycles.map(({ cycle, force }) => [cycle, force])).toEqual([
      [0, 200],
      [2, 199.5],
    ]);
    expectDigits(level?.cycles[0]?.reading ?? Number.NaN, { certified: 40.5, digits: 14, because });
    expect(level?.cycles[1]?.reading).toBe(39.9);
  });

  it('take a falling point for the level it lies within 1 % of, and none for another', () => {
    const sheet: RunSheet = {
      units,
      set: 'force',
      cycles: [
        {
          points: [
            point(200, 40),
            point(300, 60),
            point(0, 0.4, 'down'),
            point(198.1, 40.02, 'down'),
            point(296, 60, 'down'),
          ],
        },
      ],
    };
    const [lower, upper] = calibrationLevels(sheet, curveOf('reading'));
    // 40.02 MPa is 200.1 kN by the curve: 2.0 kN above the 198.1 of the cell, of 200.
    expectDigits(lower?.reversibilityPercent ?? Number.NaN, { certified: 1, digits: 11, because });
    expect(upper?.reversibilityPercent).toBeNull();
  });

  it('carry readings just beyond the ends of the curve along its tangent', () => {
    const sheet: RunSheet = { units, set: 'force', cycles: [{ points: [point(100, 19.9), point(300, 60.1)] }] };
    const [lowest, highest] = calibrationLevels(sheet, curveOf('reading'));
    // 2 MPa per 10 kN: 0.1 MPa is 0.5 kN, below 100 kN and above 300 kN.
    expectDigits(lowest?.accuracyErrorPercent ?? Number.NaN, { certified: -0.5, digits: 10, because });
    expectDigits(highest?.accuracyErrorPercent ?? Number.NaN, { certified: 0.5 / 3, digits: 10, because });
  });

  it('are as ISO 7500-1 has them at a constant true force', () => {
    const sheet: RunSheet = {
      units,
      set: 'force',
      cycles: [
        { points: [point(200, 40.4), point(200, 40.8, 'down')] },
        { points: [point(200, 40), point(200, 40.6, 'down')] },
        { points: [point(200, 40.2)] },
      ],
    };
    const [level, ...others] = calibrationLevels(sheet, curveOf('reading'));
    expect(others).toEqual([]);
    // Forces the curve gives: 202, 200, 201 rising, 204 and 203 falling.
    expect(level).toMatchObject({ set: 200, force: 200, count: 3, loadEfficiency: null });
    expectDigits(level?.accuracyErrorPercent ?? Number.NaN, { certified: 0.5, digits: 11, because });
    expectDigits(level?.repeatabilityPercent ?? Number.NaN, { certified: 1, digits: 11, because });
    expectDigits(level?.reversibilityPercent ?? Number.NaN, { certified: 1.25, digits: 11, because });
  });

  it('are as ISO 7500-1 has them at a constant reading', () => {
    const sheet: RunSheet = {
      units,
      set: 'reading',
      cycles: [
        { points: [point(198, 40), point(196, 40, 'down')] },
        { points: [point(202, 40)] },
        { points: [point(203, 40)] },
      ],
    };
    const [level] = calibrationLevels(sheet, curveOf('force'));
    // Fi = 200, mean F = 201: q = (200 - 201)/201, b = (203 - 198)/201, v = (201 - 196)/201.
    expectDigits(level?.accuracyErrorPercent ?? Number.NaN, { certified: -100 / 201, digits: 11, because });
    expectDigits(level?.repeatabilityPercent ?? Number.NaN, { certified: 500 / 201, digits: 11, because });
    expectDigits(level?.reversibilityPercent ?? Number.NaN, { certified: 500 / 201, digits: 11, because });
    expect(level?.set).toBe(40);
  });

  it('count settings within 1 % of each other as one level and leave out zero', () => {
    const sheet: RunSheet = {
      units,
      set: 'force',
      cycles: [
        { points: [point(0, 0), point(150, 30), point(200, 40)] },
        { points: [point(151, 30.2), point(202.1, 40.4), point(300, 60)] },
      ],
    };
    const levels = calibrationLevels(sheet, curveOf('reading'));
    expect(levels.map(({ set, count }) => [set, count])).toEqual([
      [150.5, 2],
      [200, 1],
      [202.1, 1],
      [300, 1],
    ]);
    expect(levels[1]?.repeatabilityPercent).toBeNull();
    expect(levels[1]?.reversibilityPercent).toBeNull();
  });

  it('judge readings that scatter beyond the ends of the curve along its end', () => {
    for (const [set, response] of [
      ['force', 'reading'],
      ['reading', 'force'],
    ] as const) {
      const sheet: RunSheet = { units, set, cycles: [{ points: [point(100, 19), point(300, 61)] }] };
      const errors = calibrationLevels(sheet, curveOf(response)).map((level) => level.accuracyErrorPercent);
      expectDigits(errors[0] ?? Number.NaN, { certified: -5, digits: 11, because });
      expectDigits(errors[1] ?? Number.NaN, { certified: 5 / 3, digits: 11, because });
    }
  });

  it('carry the load efficiency where the area is known', () => {
    const sheet = plainSheet();
    const { curve } = outcomeValue(fitCalibration(sheet, { degree: 1 }));
    const levels = calibrationLevels(sheet, curve, { pistonArea: { value: 13, unit: 'in2' } });
    expect(levels).toHaveLength(10);
    for (const level of levels) {
      expectDigits(level.loadEfficiency ?? Number.NaN, {
        certified: (1000 * level.force) / (level.reading * 13),
        digits: 12,
        because: 'a pound is a psi times a square inch',
      });
    }
  });
});

describe('averages, resolution and budget of a level', () => {
  const sheet: RunSheet = {
    units,
    set: 'force',
    cycles: [
      { points: [point(100, 20.2), point(200, 40.4), point(300, 60)] },
      { points: [point(100, 20), point(200, 40), point(300, 60.2)] },
      { points: [point(0, 0.1), point(100, 19.8), point(200, 40.2), point(300, 59.8)] },
    ],
  };
  const certificate = {
    number: 'K-1',
    loadCell: 'LC-1',
    laboratory: 'a laboratory',
    traceableTo: 'a national standard',
    calibratedOn: '2026-01-02',
    validUntil: '2027-01-02',
    expandedUncertaintyPercent: 0.4,
    coverageFactor: 2,
  };
  const { curve } = outcomeValue(fitCalibration(sheet, { degree: 1 }));
  const options = { certificate, resolution: { value: 0.2, unit: 'MPa' } } as const;
  const [lowest, middle] = calibrationLevels(sheet, curve, options);

  it('are those of each cycle and of all', () => {
    expect(middle?.cycles).toEqual([
      { cycle: 0, force: 200, reading: 40.4 },
      { cycle: 1, force: 200, reading: 40 },
      { cycle: 2, force: 200, reading: 40.2 },
    ]);
    expectDigits(middle?.reading ?? Number.NaN, { certified: 40.2, digits: 12, because });
    expectDigits(middle?.fitted ?? Number.NaN, {
      certified: (curve.fit.coefficients[0] ?? 0) + 200 * (curve.fit.coefficients[1] ?? 0),
      digits: 12,
      because,
    });
  });

  it('carry the step of the gauge to force, in % of the level', () => {
    const slope = 1 / (curve.fit.coefficients[1] ?? Number.NaN);
    expectDigits(middle?.resolutionPercent ?? Number.NaN, {
      certified: (100 * 0.2 * slope) / 200,
      digits: 12,
      because,
    });
    expect(calibrationLevels(sheet, curve)[0]?.resolutionPercent).toBeNull();
  });

  it('hold the class of the worst of their figures, the zero of the sheet among them', () => {
    // 0.1 MPa at zero is 0.17 % of 300 kN, more than class 1 allows; falling points there are none.
    expect(middle?.machineClass).toEqual({ met: '2', limitedBy: 'zero', notJudged: ['reversibility'] });
    expect(lowest?.machineClass).toMatchObject({ met: '2' });
  });

  it('state the uncertainty of their error smaller than that of one setting', () => {
    const slope = 1 / (curve.fit.coefficients[1] ?? Number.NaN);
    const parts = [0.4 / 2, (100 * (0.2 / Math.sqrt(12)) * slope) / 200];
    const scatter = (100 * (curve.fit.residualStandardDeviation / Math.sqrt(3)) * slope) / 200;
    expectDigits((middle?.errorUncertaintyPercent ?? Number.NaN) / (middle?.errorCoverageFactor ?? Number.NaN), {
      certified: Math.hypot(...parts, scatter),
      digits: 3,
      because: 'the certificate is taken of the force the curve gives, here within 0.1 % of 200 kN',
    });
    expect(middle?.budget.expanded).toBeGreaterThan(2 * (middle?.errorUncertaintyPercent ?? Number.NaN));
  });
});

describe('load efficiency', () => {
  it('is force over pressure times area in any units, and nothing at zero pressure', () => {
    const area = { value: 50, unit: 'cm2' } as const;
    expectDigits(loadEfficiency(95, 200, { force: 'kN', reading: 'bar' }, area) ?? Number.NaN, {
      certified: 0.95,
      digits: 12,
      because,
    });
    expect(loadEfficiency(95, 0, { force: 'kN', reading: 'bar' }, area)).toBeNull();
  });
});
