// What a look-up answers, with the interval and the uncertainty both directions of it share.

import { type Curve, forceIntervalAtReading } from '../calibration/curve.ts';
import { uncertaintyAt } from '../calibration/uncertainty-budget.ts';
import { type ForceUnit, force } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import type { DoNotExceed } from './do-not-exceed.ts';
import type { LookupBasis } from './lookup-basis.ts';
import { byWeight, type Warning, warn } from './warning.ts';

export interface ForceInterval {
  readonly level: number;
  readonly low: number;
  readonly high: number;
  readonly unit: ForceUnit;
}

export interface LookupUncertainty {
  readonly expanded: number;
  readonly k: number;
  readonly unit: ForceUnit;
}

export interface LookupResult {
  readonly outcome: 'given' | 'withheld' | 'refused';
  readonly force: Quantity<ForceUnit> | null;
  readonly reading: Quantity<PressureUnit> | null;
  readonly readingToSet: Quantity<PressureUnit> | null;
  readonly forceAtReadingToSet: Quantity<ForceUnit> | null;
  readonly forceInterval: ForceInterval | null;
  readonly uncertainty: LookupUncertainty | null;
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
    forceInterval: null,
    uncertainty: null,
    preload: null,
    doNotExceed: null,
    warnings: byWeight(warnings),
  };
}

export function intervalAt(curve: Curve, reading: number, unit: ForceUnit, warnings: Warning[]): ForceInterval | null {
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

export function uncertaintyAtReading(
  basis: LookupBasis,
  curve: Curve,
  reading: number,
  unit: ForceUnit,
): LookupUncertainty | null {
  const budget = uncertaintyAt(curve, reading, {
    ...(basis.certificate === null ? {} : { certificate: basis.certificate }),
    resolution: basis.step,
  });
  if (!budget.ok) return null;
  const expanded = convert(force, { value: budget.value.expanded, unit: curve.units.force }, unit);
  return { expanded, k: budget.value.k, unit };
}
