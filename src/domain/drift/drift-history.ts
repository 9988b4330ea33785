// How the force at one reading moved over all calibrations of a pair, each with its uncertainty.
// The trend through it is in forecast-drift.ts, two calibrations over their whole range in between-calibrations.ts.

import { readingForForce } from '../calibration/curve.ts';
import type { PlantDay } from '../dates/plant-day.ts';
import { type Outcome, succeed } from '../problem.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { curveWithUncertainty, type DatedCurve } from './dated-curve.ts';

export interface DriftPoint {
  readonly day: PlantDay;
  /** Force at the reading, against what the latest curve gives there, in % of that. The latest is 0. */
  readonly driftPercent: number;
  readonly standardUncertaintyPercent: number;
}

/**
 * Answers how much more or less force each calibration of a pair gave than the latest one does, at the reading the latest
 * curve sets for a force. The latest curve is the one in use, so that its force is the 100 %.
 * `calibrations` ascending by day; `wanted` in any force unit.
 * Range: the force within the latest curve and the reading within every other. Problem: `outside-calibrated-range`.
 * Source: design of the program, "Calculations" 13 (a).
 */
export function driftHistory(
  calibrations: readonly [DatedCurve, ...DatedCurve[]],
  wanted: Quantity<ForceUnit>,
): Outcome<readonly DriftPoint[]> {
  const latest = (calibrations.at(-1) ?? calibrations[0]).curve;
  const inUse = convert(force, wanted, latest.units.force);
  const reading = readingForForce(latest, inUse);
  if (!reading.ok) return reading;
  const points: DriftPoint[] = [];
  for (const calibration of calibrations) {
    const { units } = calibration.curve;
    const there = convert(pressure, { value: reading.value, unit: latest.units.reading }, units.reading);
    const found = curveWithUncertainty(calibration, there);
    if (!found.ok) return found;
    const ofForceInUse = (value: number): number =>
      (100 * convert(force, { value, unit: units.force }, latest.units.force)) / inUse;
    points.push({
      day: calibration.calibratedOn,
      driftPercent: calibration.curve === latest ? 0 : ofForceInUse(found.value.force) - 100,
      standardUncertaintyPercent: ofForceInUse(found.value.combined),
    });
  }
  return succeed(points);
}
