// Everything a chart draws as one list of rows by x, which is how recharts takes lines, bands and points together.

import type { Curve } from '../../domain/calibration/curve.ts';
import type { CalibrationResidual } from '../../domain/calibration/fit-calibration.ts';
import type { DegreeComparison } from '../../domain/regression/compare-degrees.ts';
import { evaluate } from '../../domain/regression/polynomial.ts';
import { curveSamples, samplesIn } from './curve-samples.ts';

export interface ChartRow {
  readonly x: number;
  readonly curve?: number;
  /** Where one future setting falls, and where the curve itself lies. */
  readonly band?: readonly [number, number];
  readonly meanBand?: readonly [number, number];
  /** Earlier curves, curves of other degrees and the points of each cycle, under their keys. */
  readonly [series: string]: number | readonly [number, number] | undefined;
}

export const cycleKey = (cycle: number): string => `cycle${cycle}`;
export const earlierKey = (index: number): string => `earlier${index}`;
export const degreeKey = (degree: number): string => `degree${degree}`;

/** What of a fit a chart shows. */
export interface ChartedFit {
  readonly curve: Curve;
  readonly residuals: readonly CalibrationResidual[];
}

/** Curve, band, points of each cycle and earlier curves, ascending in x. */
export function curveChartRows(fit: ChartedFit, earlier: readonly Curve[] = []): readonly ChartRow[] {
  const { curve, residuals } = fit;
  const onForce = curve.response === 'reading';
  const samples = curveSamples(curve).map(
    ({ x, y, half, halfMean }): ChartRow => ({
      x,
      curve: y,
      band: [y - half, y + half],
      meanBand: [y - halfMean, y + halfMean],
    }),
  );
  const points = residuals.map(
    ({ cycle, force, reading }): ChartRow =>
      onForce ? { x: force, [cycleKey(cycle)]: reading } : { x: reading, [cycleKey(cycle)]: force },
  );
  const earlierRows = earlier.flatMap((older, index) =>
    samplesIn(older, curve.units).map(
      ({ force, reading }): ChartRow =>
        onForce ? { x: force, [earlierKey(index)]: reading } : { x: reading, [earlierKey(index)]: force },
    ),
  );
  return byX([...samples, ...earlierRows, ...points]);
}

/** Residuals of each cycle about zero, with the bands of the curve as a distance from it. */
export function residualChartRows(fit: ChartedFit): readonly ChartRow[] {
  const bands = curveSamples(fit.curve).map(
    ({ x, half, halfMean }): ChartRow => ({ x, band: [-half, half], meanBand: [-halfMean, halfMean] }),
  );
  return byX([...bands, ...residualRows(fit)]);
}

/** How far the curve of each degree lies from the chosen one, with the residuals a further term would follow. */
export function degreeChartRows(
  fit: ChartedFit,
  degrees: readonly Pick<DegreeComparison, 'coefficients'>[],
): readonly ChartRow[] {
  const lines = curveSamples(fit.curve).map(({ x, y }): ChartRow => {
    const apart = degrees.map(({ coefficients }) => [
      degreeKey(coefficients.length - 1),
      evaluate(coefficients, x) - y,
    ]);
    return { ...Object.fromEntries(apart), x };
  });
  return byX([...lines, ...residualRows(fit)]);
}

function residualRows({ curve, residuals }: ChartedFit): readonly ChartRow[] {
  return residuals.map(
    ({ cycle, force, reading, residual }): ChartRow => ({
      x: curve.response === 'reading' ? force : reading,
      [cycleKey(cycle)]: residual,
    }),
  );
}

/** Every finite value along y, to choose the axis by. */
export function valuesOfRows(rows: readonly ChartRow[]): readonly number[] {
  return rows.flatMap(({ x: _, ...series }) => Object.values(series).flatMap((value) => value ?? []));
}

/** The cycles that have points, ascending. */
export function chartedCycles(residuals: readonly Pick<CalibrationResidual, 'cycle'>[]): readonly number[] {
  return [...new Set(residuals.map(({ cycle }) => cycle))].sort((one, other) => one - other);
}

const byX = (rows: readonly ChartRow[]): readonly ChartRow[] => [...rows].sort((one, other) => one.x - other.x);
