// Everything a chart draws as one list of rows by x, which is how recharts takes lines, bands and points together.

import type { Curve } from '../../domain/calibration/curve.ts';
import type { CalibrationResidual } from '../../domain/calibration/fit-calibration.ts';
import { type CurveSample, curveSamples, samplesIn } from './curve-samples.ts';

export interface ChartRow {
  readonly x: number;
  readonly curve?: number;
  readonly band?: readonly [number, number];
  /** Earlier curves and the points of each cycle, under their keys. */
  readonly [series: string]: number | readonly [number, number] | undefined;
}

export const cycleKey = (cycle: number): string => `cycle${cycle}`;
export const earlierKey = (index: number): string => `earlier${index}`;

/** What of a fit a chart shows. */
export interface ChartedFit {
  readonly curve: Curve;
  readonly residuals: readonly CalibrationResidual[];
}

/** Curve, band, points of each cycle and earlier curves, ascending in x. */
export function curveChartRows(fit: ChartedFit, earlier: readonly Curve[] = []): readonly ChartRow[] {
  const { curve, residuals } = fit;
  const onForce = curve.response === 'reading';
  const samples = curveSamples(curve).map(({ x, y, half }): ChartRow => ({ x, curve: y, band: [y - half, y + half] }));
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

/** Residuals of each cycle about zero, with the band of the curve as a distance from it. */
export function residualChartRows({ curve, residuals }: ChartedFit): readonly ChartRow[] {
  const band = curveSamples(curve).map(({ x, half }: CurveSample): ChartRow => ({ x, band: [-half, half] }));
  const points = residuals.map(
    ({ cycle, force, reading, residual }): ChartRow => ({
      x: curve.response === 'reading' ? force : reading,
      [cycleKey(cycle)]: residual,
    }),
  );
  return byX([...band, ...points]);
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
