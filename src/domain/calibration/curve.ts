// The curve of a calibration: force and reading, each from the other, within the calibrated range.
// How it is fitted is in fit-calibration.ts; rounding to the dial and warnings are in lookup/.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { FittedPolynomial, PolynomialFit } from '../regression/fit-polynomial.ts';
import { invertPredictionBand } from '../regression/inversion-interval.ts';
import { invert } from '../regression/invert.ts';
import { predict, slopeAt } from '../regression/predict.ts';
import { type Interval, predictionInterval } from '../regression/prediction-interval.ts';
import { type Range, withinRange } from '../regression/within-range.ts';
import type { ForceUnit } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import { writeQuantity, writeQuantityInFull } from '../units/write-quantity.ts';

/** A curve as far as it is worked by: force and reading, each from the other, with the interval of one setting. */
export interface WorkingCurve {
  /** The quantity that was observed, y of the fit; the other one was set and is x. */
  readonly response: 'reading' | 'force';
  /** The units of the sheet; every number of the curve is in them. */
  readonly units: { readonly force: ForceUnit; readonly reading: PressureUnit };
  readonly fit: FittedPolynomial;
  /** Of the set quantity the range of the fitted points; of the observed one the curve's values at its ends. */
  readonly forceRange: Range;
  readonly readingRange: Range;
}

/** The same with everything its fit says, as it is judged and drawn. */
export interface Curve extends WorkingCurve {
  readonly fit: PolynomialFit;
}

/** Answers a curve without what is only judged and drawn: what a device takes along of it. */
export function workingCurve({ response, units, fit, forceRange, readingRange }: Curve): WorkingCurve {
  const { degree, centre, halfWidth, scaledCoefficients, inverseInformation, xRange } = fit;
  const { residualStandardDeviation, degreesOfFreedom } = fit;
  return {
    response,
    units,
    fit: {
      degree,
      centre,
      halfWidth,
      scaledCoefficients,
      inverseInformation,
      residualStandardDeviation,
      degreesOfFreedom,
      xRange,
    },
    forceRange,
    readingRange,
  };
}

/** Answers the curve that a strictly increasing fit describes, with its calibrated range in both quantities. */
export function curveOfFit(fit: PolynomialFit, response: Curve['response'], units: Curve['units']): Curve {
  const set = fit.xRange;
  const observed: Range = { low: predict(fit, set.low), high: predict(fit, set.high) };
  return response === 'reading'
    ? { response, units, fit, forceRange: set, readingRange: observed }
    : { response, units, fit, forceRange: observed, readingRange: set };
}

/**
 * Answers the gauge reading at which the jack gives a force, unrounded.
 * `force` in the curve's force unit; the answer in its pressure unit.
 * Range: the calibrated range, ends included; outside it `outside-calibrated-range`. Nothing is extrapolated.
 * Source: design of the program, "Calculations" 3 and 11.
 * Example: F[kN] = 21.5 p[MPa] + 4.8 (a published worked example): 937.44 kN needs 43.38 MPa.
 */
export function readingForForce(curve: WorkingCurve, force: number): Outcome<number> {
  const inside = withinRange(force, curve.forceRange);
  if (inside === null) return outside(force, curve.forceRange, curve.units.force);
  return curve.response === 'reading' ? succeed(predict(curve.fit, inside)) : invert(curve.fit, inside);
}

/**
 * Answers the force the jack gives at a gauge reading.
 * `reading` in the curve's pressure unit; the answer in its force unit.
 * Range: the calibrated range, ends included; outside it `outside-calibrated-range`. Nothing is extrapolated.
 * Source: design of the program, "Calculations" 3 and 11.
 * Example: the load cell of NIST/SEMATECH e-Handbook 4.6.1 at deflection 1.239722: 1,705,106 lb.
 */
export function forceBehindReading(curve: WorkingCurve, reading: number): Outcome<number> {
  const inside = withinRange(reading, curve.readingRange);
  if (inside === null) return outside(reading, curve.readingRange, curve.units.reading);
  return curve.response === 'force' ? succeed(predict(curve.fit, inside)) : invert(curve.fit, inside);
}

/**
 * Answers how much the force changes per unit of reading at a reading, dF/dp: what carries a small error of the gauge to
 * the force. In the curve's force unit per pressure unit. Range and problem as for `forceBehindReading`.
 * Source: JCGM 100:2008 5.1.3, sensitivity coefficient.
 */
export function forcePerReading(curve: WorkingCurve, reading: number): Outcome<number> {
  const force = forceBehindReading(curve, reading);
  if (!force.ok) return force;
  return succeed(curve.response === 'force' ? slopeAt(curve.fit, reading) : 1 / slopeAt(curve.fit, force.value));
}

/**
 * Answers between which forces the jack pulls at a reading, with probability `level` for one future setting.
 * Reading observed: the forces whose prediction band holds the reading. Force observed: the prediction band at it.
 * `reading` in the curve's pressure unit, the answer in its force unit. The bounds may lie beyond the calibrated range.
 * Problems: `outside-calibrated-range`; where the data leave the force without a bound `interval-whole-line`,
 * `interval-two-rays` or `interval-outside-range`, with numbers in the curve's force unit.
 * Source: NIST/SEMATECH e-Handbook 4.5.1.2 (from memory) and the sources of `invertPredictionBand`.
 */
export function forceIntervalAtReading(curve: WorkingCurve, reading: number, level: number): Outcome<Interval> {
  const inside = withinRange(reading, curve.readingRange);
  if (inside === null) return outside(reading, curve.readingRange, curve.units.reading);
  return curve.response === 'force'
    ? succeed(predictionInterval(curve.fit, inside, { level, of: 'observation' }))
    : invertPredictionBand(curve.fit, inside, { level, of: 'observation' });
}

function outside(value: number, range: Range, unit: string): Outcome<never> {
  const needed = `${writeQuantity({ value: range.low, unit })} to ${writeQuantity({ value: range.high, unit })}`;
  const given = writeQuantityInFull({ value, unit });
  return fail(
    'outside-calibrated-range',
    `${given} lies outside the calibrated range, ${needed}; nothing is extrapolated.`,
    {
      needed,
      given,
    },
  );
}
