// What a look-up answers, with the interval both directions of it share. Its uncertainty is in look-up-uncertainty.ts.

import { forceIntervalAtReading, type WorkingCurve } from '../calibration/curve.ts';
import type { UncertaintyBudget } from '../calibration/uncertainty-budget.ts';
import { type ForceUnit, force } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { DoNotExceed } from './do-not-exceed.ts';
import type { GaugeAccuracy } from './gauge-accuracy.ts';
import { byWeight, type Warning, warn } from './warning.ts';

export interface ForceInterval {
  readonly level: number;
  readonly low: number;
  readonly high: number;
  readonly unit: ForceUnit;
}

/** What rounding a reading to what can be set makes of the force: force at the reading to set minus the target. */
export interface RoundingError {
  readonly value: number;
  readonly unit: ForceUnit;
  /** In % of the target. */
  readonly percent: number;
}

export interface LookupResult {
  readonly outcome: 'given' | 'withheld' | 'refused';
  readonly force: Quantity<ForceUnit> | null;
  readonly reading: Quantity<PressureUnit> | null;
  readonly readingToSet: Quantity<PressureUnit> | null;
  readonly forceAtReadingToSet: Quantity<ForceUnit> | null;
  /** Null where nothing was rounded. */
  readonly roundingError: RoundingError | null;
  /** At the unrounded reading. */
  readonly forceInterval: ForceInterval | null;
  /** The same at the reading to set, which is what a person sets; null where nothing can be set. */
  readonly settingInterval: ForceInterval | null;
  /** Of the force at the reading to set; of a force behind a reading, and where nothing can be set, at `reading`. */
  readonly uncertainty: UncertaintyBudget | null;
  /** How true the gauge is there by its class; null without a gauge. */
  readonly gaugeAccuracy: GaugeAccuracy | null;
  readonly preload: {
    readonly force: Quantity<ForceUnit>;
    readonly readingToSet: Quantity<PressureUnit>;
  } | null;
  readonly doNotExceed: DoNotExceed | null;
  readonly warnings: readonly Warning[];
}

/** Level of every interval: one future setting, two-sided. */
export const intervalLevel = 0.95;

export function withoutNumber(
  outcome: 'withheld' | 'refused',
  target: Quantity<ForceUnit> | null,
  warnings: readonly Warning[],
): LookupResult {
  return {
    outcome,
    force: target,
    reading: null,
    readingToSet: null,
    forceAtReadingToSet: null,
    roundingError: null,
    forceInterval: null,
    settingInterval: null,
    uncertainty: null,
    gaugeAccuracy: null,
    preload: null,
    doNotExceed: null,
    warnings: byWeight(warnings),
  };
}

export function intervalAt(
  curve: WorkingCurve,
  reading: number,
  unit: ForceUnit,
  warnings: Warning[],
): ForceInterval | null {
  const interval = forceIntervalAtReading(curve, reading, intervalLevel);
  if (!interval.ok) {
    warnings.push(warn('interval-not-finite', interval.problem.message));
    return null;
  }
  const outward = (value: number): number => convert(force, { value, unit: curve.units.force }, unit);
  return {
    level: intervalLevel,
    low: outward(interval.value.low),
    high: outward(interval.value.high),
    unit,
  };
}
