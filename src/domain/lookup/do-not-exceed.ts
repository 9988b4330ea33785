// The reading nobody goes past with this pair: the least of stress ceiling, jack rating, gauge span and calibrated range.

import { readingForForce, type WorkingCurve } from '../calibration/curve.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { LookupBasis } from './lookup-basis.ts';
import { roundDownToStep } from './readable-reading.ts';

export interface DoNotExceed {
  readonly reading: Quantity<PressureUnit>;
  readonly because: 'stress-ceiling' | 'jack-rating' | 'gauge-span' | 'calibrated-range';
}

/**
 * Answers the reading not to exceed, in the gauge's unit: exact, and as shown, rounded down to what can be read.
 * Forces beyond the calibrated range have no reading; the calibrated maximum then governs.
 * Source: design of the program, "Calculations" 11.
 */
export function doNotExceedReading(
  basis: Pick<LookupBasis, 'jack' | 'gauge' | 'step'>,
  curve: WorkingCurve,
  ceiling: Quantity<ForceUnit> | null,
  readingUnit: PressureUnit,
): { readonly exact: number; readonly shown: DoNotExceed } {
  let because: DoNotExceed['because'] = 'calibrated-range';
  let exact = convert(pressure, { value: curve.readingRange.high, unit: curve.units.reading }, readingUnit);
  const span = basis.gauge === null ? exact : convert(pressure, basis.gauge.fullScale, readingUnit);
  if (span < exact) [because, exact] = ['gauge-span', span];
  const rated = basis.jack === null ? null : readingAt(curve, basis.jack.ratedForce, readingUnit);
  if (rated !== null && rated < exact) [because, exact] = ['jack-rating', rated];
  const highest = ceiling === null ? null : readingAt(curve, ceiling, readingUnit);
  if (highest !== null && highest < exact) [because, exact] = ['stress-ceiling', highest];
  const shown = roundDownToStep(exact, convert(pressure, basis.step, readingUnit));
  return { exact, shown: { reading: { value: shown, unit: readingUnit }, because } };
}

function readingAt(curve: WorkingCurve, limit: Quantity<ForceUnit>, unit: PressureUnit): number | null {
  const reading = readingForForce(curve, convert(force, limit, curve.units.force));
  return reading.ok ? convert(pressure, { value: reading.value, unit: curve.units.reading }, unit) : null;
}
