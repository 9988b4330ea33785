// The force behind a reading: the inverse look-up. The reading for a force is in look-up-reading.ts.

import { forceBehindReading } from '../calibration/curve.ts';
import { exceedsForce } from '../units/exceeds-force.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { writeQuantity, writeQuantityInFull } from '../units/write-quantity.ts';
import { doNotExceedReading } from './do-not-exceed.ts';
import { gaugeAccuracyAt } from './gauge-accuracy.ts';
import { warningsOfReading, warningsOfStanding } from './judge-target.ts';
import { lookUpUncertainty } from './look-up-uncertainty.ts';
import type { LookupBasis, LookupOptions } from './lookup-basis.ts';
import { intervalAt, type LookupResult, withoutNumber } from './lookup-result.ts';
import { byWeight, type Warning, warn, warnOfRelease } from './warning.ts';

/**
 * Answers which force stands behind a reading, in `unit`, with its interval, its uncertainty budget and how true the gauge
 * is there. The reading is taken as it is, on a step of the gauge or between two.
 * Range: the calibrated range; outside it the outcome is `refused`. A stop gives `withheld` unless `released`.
 * Source: as in look-up-reading.ts.
 */
export function lookUpForce(
  basis: LookupBasis,
  reading: Quantity<PressureUnit>,
  options: LookupOptions & { readonly unit: ForceUnit },
): LookupResult {
  const { curve } = basis;
  const warnings: Warning[] = [...warningsOfStanding(basis)];
  if (curve === null) return withoutNumber('refused', null, warnings);
  const inCurve = convert(pressure, reading, curve.units.reading);
  const behind = forceBehindReading(curve, inCurve);
  if (!behind.ok) {
    const { low, high } = curve.readingRange;
    const unit = curve.units.reading;
    const range = `${writeQuantity({ value: low, unit })} to ${writeQuantity({ value: high, unit })}`;
    const asked = writeQuantityInFull(reading);
    warnings.push(
      warn(
        'outside-calibrated-range',
        `${asked} lies outside the calibrated range of ${range}; nothing is extrapolated.`,
      ),
    );
    return withoutNumber('refused', null, warnings);
  }
  warnings.push(...warningsOfReading(basis, curve, inCurve));
  const found = {
    value: convert(force, { value: behind.value, unit: curve.units.force }, options.unit),
    unit: options.unit,
  };
  if (basis.jack !== null && exceedsForce(found, basis.jack.ratedForce)) {
    warnings.push(
      warn(
        'above-jack-rating',
        `${writeQuantityInFull(found)} is above the jack's rating of ${writeQuantityInFull(basis.jack.ratedForce)}.`,
      ),
    );
  }
  if (warnings.some(({ weight }) => weight === 'refuse')) return withoutNumber('refused', null, warnings);
  const stopped = warnings.some(({ weight }) => weight === 'stop');
  if (stopped && options.released === null) return withoutNumber('withheld', null, warnings);
  if (stopped && options.released !== null) warnings.push(warnOfRelease(options.released));
  const interval = intervalAt(curve, inCurve, options.unit, warnings);
  const uncertainty = lookUpUncertainty(
    basis,
    curve,
    { reading: inCurve, temperatureCelsius: options.temperatureCelsius ?? null, unit: options.unit },
    warnings,
  );
  const { gauge } = basis;
  return {
    outcome: 'given',
    force: found,
    reading,
    readingToSet: null,
    forceAtReadingToSet: null,
    roundingError: null,
    forceInterval: interval,
    settingInterval: null,
    uncertainty,
    gaugeAccuracy:
      gauge === null ? null : gaugeAccuracyAt(gauge, basis, convert(pressure, reading, gauge.fullScale.unit)),
    preload: null,
    doNotExceed: doNotExceedReading(basis, curve, null, gauge?.fullScale.unit ?? curve.units.reading).shown,
    warnings: byWeight(warnings),
  };
}
