// A fitted curve as points to draw: force against reading, with the bands of one future setting and of the curve.

import type { Curve } from '../../domain/calibration/curve.ts';
import { predict } from '../../domain/regression/predict.ts';
import { predictionInterval } from '../../domain/regression/prediction-interval.ts';
import { force } from '../../domain/units/force.ts';
import { pressure } from '../../domain/units/pressure.ts';
import { convert } from '../../domain/units/quantity.ts';

export interface CurveSample {
  /** The quantity that was set. */
  readonly x: number;
  /** The curve's value of the one observed. */
  readonly y: number;
  /** Half the width of the 95 % prediction band. */
  readonly half: number;
  /** Half the width of the 95 % band the curve itself lies in. */
  readonly halfMean: number;
}

/** Level of both bands drawn. Source: the design's intervals, 95 %. */
const level = 0.95;

/** Enough for a curve of degree 3 to look smooth at any width of screen. */
export const sampleCount = 41;

/** Samples from end to end of the calibrated range, in the curve's own units. */
export function curveSamples(curve: Curve): readonly CurveSample[] {
  const { low, high } = curve.fit.xRange;
  return Array.from({ length: sampleCount }, (_, index) => {
    const x = low + ((high - low) * index) / (sampleCount - 1);
    const band = predictionInterval(curve.fit, x, { level, of: 'observation' });
    const meanBand = predictionInterval(curve.fit, x, { level, of: 'mean-response' });
    return {
      x,
      y: predict(curve.fit, x),
      half: (band.high - band.low) / 2,
      halfMean: (meanBand.high - meanBand.low) / 2,
    };
  });
}

export interface ForceAndReading {
  readonly force: number;
  readonly reading: number;
}

/** Samples of a curve in the units of another one, to lay an earlier calibration under the present one. */
export function samplesIn(curve: Curve, units: Curve['units']): readonly ForceAndReading[] {
  return curveSamples(curve).map(({ x, y }) => {
    const own = curve.response === 'reading' ? { force: x, reading: y } : { force: y, reading: x };
    return {
      force: convert(force, { value: own.force, unit: curve.units.force }, units.force),
      reading: convert(pressure, { value: own.reading, unit: curve.units.reading }, units.reading),
    };
  });
}
