// What a chart draws, as rows by x.

import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../../../src/domain/calibration/run-sheet.ts';
import {
  chartedCycles,
  curveChartRows,
  cycleKey,
  earlierKey,
  residualChartRows,
  valuesOfRows,
} from '../../../../src/web/charts/chart-rows.ts';
import { curveSamples, sampleCount, samplesIn } from '../../../../src/web/charts/curve-samples.ts';
import { redrawFit } from '../../../../src/web/charts/redraw-fit.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const sheet = (set: 'force' | 'reading'): RunSheet => ({
  units: { force: 'kip', reading: 'psi' },
  set,
  cycles: [
    {
      points: [
        { direction: 'up', force: 10, reading: 1440 },
        { direction: 'up', force: 30, reading: 4290 },
        { direction: 'up', force: 50, reading: 7150 },
      ],
    },
    {
      points: [
        { direction: 'up', force: 10, reading: 1450 },
        { direction: 'up', force: 30, reading: 4300 },
        { direction: 'up', force: 50, reading: 7140 },
      ],
    },
  ],
});

const fitOf = (set: 'force' | 'reading') => outcomeValue(fitCalibration(sheet(set), { degree: 1 }));

describe('chart rows', () => {
  it('ascend in x and hold every point of every cycle', () => {
    const rows = curveChartRows(fitOf('force'));
    expect(rows.map(({ x }) => x)).toEqual(rows.map(({ x }) => x).sort((one, other) => one - other));
    expect(rows.filter((row) => row[cycleKey(0)] !== undefined)).toHaveLength(3);
    expect(rows.filter((row) => row[cycleKey(1)] !== undefined)).toHaveLength(3);
    expect(rows.filter((row) => row.curve !== undefined)).toHaveLength(sampleCount);
  });

  it('lay the quantity that was set along x', () => {
    const onForce = curveChartRows(fitOf('force')).filter((row) => row[cycleKey(0)] !== undefined);
    const onReading = curveChartRows(fitOf('reading')).filter((row) => row[cycleKey(0)] !== undefined);
    expect(onForce.map((row) => [row.x, row[cycleKey(0)]])).toContainEqual([30, 4290]);
    expect(onReading.map((row) => [row.x, row[cycleKey(0)]])).toContainEqual([4290, 30]);
  });

  it('hold the band about the curve, widest at the ends', () => {
    const samples = curveSamples(fitOf('force').curve);
    const middle = samples[(sampleCount - 1) / 2]?.half ?? 0;
    expect(middle).toBeGreaterThan(0);
    expect(samples[0]?.half).toBeGreaterThan(middle);
    expect(samples.at(-1)?.half).toBeGreaterThan(middle);
  });

  it('show residuals about zero', () => {
    const fit = fitOf('force');
    const rows = residualChartRows(fit);
    const shown = rows.flatMap((row) => [row[cycleKey(0)], row[cycleKey(1)]]).filter((value) => value !== undefined);
    expect(shown.sort()).toEqual(fit.residuals.map(({ residual }) => residual).sort());
    expect(valuesOfRows(rows).every(Number.isFinite)).toBe(true);
  });

  it('lay an earlier curve of other units under the present one', () => {
    const { curve } = fitOf('force');
    const rows = curveChartRows(fitOf('force'), [curve]);
    expect(rows.filter((row) => row[earlierKey(0)] !== undefined)).toHaveLength(sampleCount);
    const first = samplesIn(curve, { force: 'kN', reading: 'MPa' })[0];
    expectDigits(first?.force ?? Number.NaN, {
      certified: 44.482216152605,
      digits: 13,
      because: '10 kip by the exact factor',
    });
  });

  it('name the cycles that have points', () => {
    expect(chartedCycles([{ cycle: 2 }, { cycle: 0 }, { cycle: 2 }])).toEqual([0, 2]);
  });
});

describe('redrawing what the server answered', () => {
  it('gives the same curve from the same sheet', () => {
    const { cycles, ...rest } = sheet('force');
    const body = { ...rest, cycles: cycles.map(({ points }) => ({ points: [...points] })) };
    expect(redrawFit({ sheet: body, degree: 1 })?.curve.fit.coefficients).toEqual(
      fitOf('force').curve.fit.coefficients,
    );
  });

  it('draws nothing where no curve runs through the sheet', () => {
    const body = { units: { force: 'kip', reading: 'psi' }, cycles: [{ points: [] }] };
    expect(redrawFit({ sheet: body, degree: 'auto' })).toBeNull();
  });
});
