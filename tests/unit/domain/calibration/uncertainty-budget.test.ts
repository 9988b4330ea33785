import { describe, expect, it } from 'vitest';
import { forcePerReading } from '../../../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import { effectiveDegrees, uncertaintyAt } from '../../../../src/domain/calibration/uncertainty-budget.ts';
import type { Certificate } from '../../../../src/domain/equipment/equipment.ts';
import { standardErrorOfPrediction } from '../../../../src/domain/regression/predict.ts';
import { twoSidedStudentFactor } from '../../../../src/domain/statistics/student-quantile.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { plainSheet } from './sheet-of.ts';

const certificate: Certificate = {
  number: 'C-1',
  loadCell: 'LC-1',
  laboratory: 'a laboratory',
  traceableTo: 'a national standard',
  calibratedOn: '2026-01-05',
  validUntil: '2027-01-05',
  expandedUncertaintyPercent: 0.5,
  coverageFactor: 2,
};
const because = 'the formula of its clause, in doubles';
const curveFor = (set: 'force' | 'reading') => outcomeValue(fitCalibration(plainSheet({ set }), { degree: 1 })).curve;
const partOf = (budget: ReturnType<typeof uncertaintyAt>, source: string) =>
  outcomeValue(budget).contributions.find((each) => each.source === source)?.standardUncertainty ?? Number.NaN;

describe('uncertainty budget', () => {
  const resolution = { value: 2, unit: 'bar' } as const;

  it('carries certificate, resolution and scatter to force, whichever way the curve was fitted', () => {
    for (const set of ['force', 'reading'] as const) {
      const curve = curveFor(set);
      const reading = set === 'force' ? (curve.fit.coefficients[0] ?? 0) + 50 * (curve.fit.coefficients[1] ?? 0) : 4020;
      const force = set === 'force' ? 50 : (curve.fit.coefficients[0] ?? 0) + 4020 * (curve.fit.coefficients[1] ?? 0);
      const slope = outcomeValue(forcePerReading(curve, reading));
      const budget = uncertaintyAt(curve, reading, { of: 'one-setting', certificate, resolution });
      expectDigits(partOf(budget, 'load-cell-certificate'), { certified: 0.0025 * force, digits: 12, because });
      const psi = 2e5 / (4.4482216152605 / 645.16e-6);
      expectDigits(partOf(budget, 'gauge-resolution'), {
        certified: (psi / Math.sqrt(12)) * slope,
        digits: 12,
        because,
      });
      const scatter =
        set === 'force'
          ? standardErrorOfPrediction(curve.fit, 50, 'observation') * slope
          : standardErrorOfPrediction(curve.fit, 4020, 'observation');
      expectDigits(partOf(budget, 'scatter-and-fit'), { certified: scatter, digits: 12, because });
    }
  });

  it('adds in quadrature and expands by Student t at the effective degrees of freedom cut to a whole number', () => {
    const { expanded, k, unit, contributions, effectiveDegreesOfFreedom } = outcomeValue(
      uncertaintyAt(curveFor('force'), 4020, { of: 'one-setting', certificate, resolution }),
    );
    const combined = Math.sqrt(contributions.reduce((sum, each) => sum + each.standardUncertainty ** 2, 0));
    const scatter = contributions.at(-1)?.standardUncertainty ?? Number.NaN;
    const degrees = combined ** 4 / (scatter ** 4 / 28);
    expectDigits(effectiveDegreesOfFreedom ?? Number.NaN, { certified: degrees, digits: 12, because });
    expectDigits(k, { certified: twoSidedStudentFactor(0.95, Math.floor(degrees)), digits: 14, because });
    expectDigits(expanded, { certified: k * combined, digits: 12, because });
    expect(unit).toBe('kip');
  });

  it('rests on the scatter alone where nothing else is given, with its degrees of freedom', () => {
    const { k, contributions, effectiveDegreesOfFreedom } = outcomeValue(
      uncertaintyAt(curveFor('force'), 4020, { of: 'one-setting' }),
    );
    expect(contributions.map(({ source }) => source)).toEqual(['scatter-and-fit']);
    expect(effectiveDegreesOfFreedom).toBe(28);
    expectDigits(k, {
      certified: '2.048',
      digits: 'as-printed',
      because: 'Student t at 28 degrees of freedom, from memory',
    });
  });

  it('carries the indicator of the cell, reversibility, temperature and drift, each by its own divisor', () => {
    const curve = curveFor('reading');
    const options = {
      of: 'one-setting',
      cellResolution: { value: 20, unit: 'lbf' },
      reversibilityPercent: -0.9,
      temperature: { difference: -10, fullScale: { value: 10000, unit: 'psi' } },
      driftPercent: -1.2,
    } as const;
    const budget = uncertaintyAt(curve, 4020, options);
    const { force } = outcomeValue(budget);
    const slope = outcomeValue(forcePerReading(curve, 4020));
    expectDigits(partOf(budget, 'cell-indicator'), { certified: 0.02 / Math.sqrt(12), digits: 12, because });
    expectDigits(partOf(budget, 'reversibility'), { certified: (0.009 * force) / Math.sqrt(3), digits: 12, because });
    // 0.04 % of 10,000 psi per kelvin, over ten kelvin: 40 psi to either side.
    expectDigits(partOf(budget, 'temperature'), { certified: (40 / Math.sqrt(3)) * slope, digits: 12, because });
    expectDigits(partOf(budget, 'drift'), { certified: (0.012 * force) / Math.sqrt(3), digits: 12, because });
  });

  it('is a table of which each line is value over divisor times sensitivity', () => {
    const { contributions } = outcomeValue(
      uncertaintyAt(curveFor('force'), 4020, { of: 'one-setting', certificate, resolution, driftPercent: 1 }),
    );
    expect(contributions.map(({ source, type, valueUnit }) => [source, type, valueUnit])).toEqual([
      ['load-cell-certificate', 'B', '%'],
      ['gauge-resolution', 'B', 'psi'],
      ['scatter-and-fit', 'A', 'psi'],
      ['drift', 'B', '%'],
    ]);
    for (const { value, divisor, sensitivity, standardUncertainty } of contributions) {
      expectDigits(standardUncertainty, { certified: (value / divisor) * Math.abs(sensitivity), digits: 14, because });
    }
  });

  it('of the mean of a level takes the scatter of a mean, not of one setting', () => {
    const curve = curveFor('reading');
    const mean = uncertaintyAt(curve, 4020, { of: { meanOf: 3 } });
    const certified = curve.fit.residualStandardDeviation / Math.sqrt(3);
    expectDigits(partOf(mean, 'scatter-and-fit'), { certified, digits: 12, because: 'JCGM 100:2008 4.2.3' });
    const single = partOf(uncertaintyAt(curve, 4020, { of: 'one-setting' }), 'scatter-and-fit');
    expect(single).toBeGreaterThan(curve.fit.residualStandardDeviation);
  });

  it('is refused outside the calibrated range', () => {
    expect(uncertaintyAt(curveFor('force'), 9000, { of: 'one-setting' })).toMatchObject({
      problem: { code: 'outside-calibrated-range' },
    });
  });
});

describe('effective degrees of freedom', () => {
  it('are those of the end gauge of JCGM 100 H.1', () => {
    const contributions = [
      [25, 18],
      [9.7, 25.6],
      [2.9, 50],
      [16.6, 2],
    ].map(([standardUncertainty = 0, degreesOfFreedom = 0]) => ({ standardUncertainty, degreesOfFreedom }));
    const combined = Math.hypot(...contributions.map((each) => each.standardUncertainty));
    expectDigits(effectiveDegrees(combined, contributions) ?? Number.NaN, {
      certified: '16.7',
      digits: 2,
      because: 'JCGM 100 H.1.6 (from memory) computed 16.7 from contributions it prints to two or three digits',
    });
  });

  it('are infinite where everything is known exactly or nothing is uncertain', () => {
    expect(effectiveDegrees(1, [{ standardUncertainty: 1, degreesOfFreedom: null }])).toBeNull();
    expect(effectiveDegrees(0, [{ standardUncertainty: 0, degreesOfFreedom: 5 }])).toBeNull();
  });
});
