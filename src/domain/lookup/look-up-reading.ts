// The reading to set for a force, with everything that goes with it: interval, uncertainty, marks and warnings.
// The force behind a reading is in look-up-force.ts; the warnings are made in judge-target.ts.

import { forceBehindReading, readingForForce, type WorkingCurve } from '../calibration/curve.ts';
import type { Range } from '../regression/within-range.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { writeQuantityInFull } from '../units/write-quantity.ts';
import { doNotExceedReading } from './do-not-exceed.ts';
import { gaugeAccuracyAt } from './gauge-accuracy.ts';
import { judgeTarget } from './judge-target.ts';
import { lookUpUncertainty } from './look-up-uncertainty.ts';
import type { LookupBasis, LookupOptions, LookupTarget } from './lookup-basis.ts';
import { intervalAt, type LookupResult, type RoundingError, withoutNumber } from './lookup-result.ts';
import { roundToStep } from './readable-reading.ts';
import { byWeight, type Warning, warn, warnOfRelease } from './warning.ts';

/**
 * Answers which reading to set for a force, in the gauge's unit, with the error rounding makes, the force interval for one
 * future setting, the uncertainty budget, how true the gauge is there, the preload reading and the reading not to exceed;
 * or no number and the reasons. Rounding error = force at the reading to set minus the target. `forceInterval` is at
 * the unrounded reading; `settingInterval` and the uncertainty are at the reading to set.
 * Symbols: force and reading in the curve's own units inside, the target's and the gauge's units outside.
 * Range: the calibrated range; outside it the outcome is `refused`. A stop gives `withheld` unless `released`.
 * Source: design of the program, "Calculations" 5, 8 and 11; weights in warning.ts.
 */
export function lookUpReading(basis: LookupBasis, target: LookupTarget, options: LookupOptions): LookupResult {
  const { curve } = basis;
  const judged = judgeTarget(basis, target);
  if (curve === null || judged.reading === null || judged.warnings.some(({ weight }) => weight === 'refuse')) {
    return withoutNumber('refused', target.force, judged.warnings);
  }
  const stopped = judged.warnings.some(({ weight }) => weight === 'stop');
  if (stopped && options.released === null) return withoutNumber('withheld', target.force, judged.warnings);

  const warnings: Warning[] = [...judged.warnings];
  if (stopped && options.released !== null) warnings.push(warnOfRelease(options.released));
  const readingUnit = basis.gauge?.fullScale.unit ?? curve.units.reading;
  const reading = convert(pressure, { value: judged.reading, unit: curve.units.reading }, readingUnit);
  const step = convert(pressure, basis.step, readingUnit);
  const limit = doNotExceedReading(basis, curve, target.ceiling, readingUnit);
  const lowest = convert(pressure, { value: curve.readingRange.low, unit: curve.units.reading }, readingUnit);
  const settable: Range = { low: lowest, high: limit.exact };
  const rounded = roundToStep(reading, step, settable);
  const readingToSet = rounded === null ? null : { value: rounded, unit: readingUnit };
  const forceAtReadingToSet = readingToSet === null ? null : forceAt(curve, readingToSet, target.force.unit);
  const interval = intervalAt(curve, judged.reading, target.force.unit, warnings);
  const shown = rounded ?? reading;
  const shownInCurve = convert(pressure, { value: shown, unit: readingUnit }, curve.units.reading);
  // Where the interval is not finite at the unrounded reading, that is said already.
  const settingInterval = rounded === null ? null : intervalAt(curve, shownInCurve, target.force.unit, []);
  const uncertainty = lookUpUncertainty(
    basis,
    curve,
    {
      reading: shownInCurve,
      temperatureCelsius: options.temperatureCelsius ?? null,
      unit: target.force.unit,
    },
    warnings,
  );

  return {
    outcome: 'given',
    force: target.force,
    reading: { value: reading, unit: readingUnit },
    readingToSet,
    forceAtReadingToSet,
    roundingError: forceAtReadingToSet === null ? null : roundingErrorOf(forceAtReadingToSet, target.force),
    forceInterval: interval,
    settingInterval,
    uncertainty,
    gaugeAccuracy: basis.gauge === null ? null : gaugeAccuracyAt(basis.gauge, basis, shown),
    preload: preloadFor(basis, curve, target, { step: { value: step, unit: readingUnit }, settable }, warnings),
    doNotExceed: limit.shown,
    warnings: byWeight(warnings),
  };
}

function preloadFor(
  basis: LookupBasis,
  curve: WorkingCurve,
  target: LookupTarget,
  { step, settable }: { readonly step: Quantity<PressureUnit>; readonly settable: Range },
  warnings: Warning[],
): LookupResult['preload'] {
  const preload = target.preload ?? {
    value: target.force.value * basis.rules.preloadFraction.value,
    unit: target.force.unit,
  };
  const withoutReading = (why: string): null => {
    warnings.push(warn('preload-not-given', `No reading for the preload of ${writeQuantityInFull(preload)}: ${why}`));
    return null;
  };
  if (convert(force, preload, 'N') >= convert(force, target.force, 'N')) {
    return withoutReading(`it must be below the target of ${writeQuantityInFull(target.force)}.`);
  }
  const reading = readingForForce(curve, convert(force, preload, curve.units.force));
  if (!reading.ok) return withoutReading(reading.problem.message);
  const exact = convert(pressure, { value: reading.value, unit: curve.units.reading }, step.unit);
  const readingToSet = roundToStep(exact, step.value, settable);
  if (readingToSet === null) return withoutReading('no reading near it can be set on the gauge.');
  return { force: preload, readingToSet: { value: readingToSet, unit: step.unit } };
}

/** `reached` and `wanted` in one unit. */
function roundingErrorOf(reached: Quantity<ForceUnit>, wanted: Quantity<ForceUnit>): RoundingError {
  const value = reached.value - wanted.value;
  return { value, unit: wanted.unit, percent: (100 * value) / wanted.value };
}

/** The force at a reading that was rounded; null where rounding took it out of the calibrated range. */
function forceAt(curve: WorkingCurve, reading: Quantity<PressureUnit>, unit: ForceUnit): Quantity<ForceUnit> | null {
  const behind = forceBehindReading(curve, convert(pressure, reading, curve.units.reading));
  if (!behind.ok) return null;
  return { value: convert(force, { value: behind.value, unit: curve.units.force }, unit), unit };
}
