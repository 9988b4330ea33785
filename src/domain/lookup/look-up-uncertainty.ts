// The uncertainty budget of one look-up, in the unit asked for. Its formula is in calibration/uncertainty-budget.ts.

import type { WorkingCurve } from '../calibration/curve.ts';
import { type BudgetOptions, type UncertaintyBudget, uncertaintyAt } from '../calibration/uncertainty-budget.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { convert } from '../units/quantity.ts';
import type { LookupBasis } from './lookup-basis.ts';
import { type Warning, warn } from './warning.ts';

/**
 * Answers how well the force at a reading is known when the gauge is set to it once, every force in `unit`. Counted are
 * what the basis knows: certificate and indicator of the load cell, step of the gauge, scatter and fit, drift since the
 * calibration before, reversibility where readings are used falling, and temperature where one is given; a note says why
 * a temperature is not counted. `reading` in the curve's pressure unit.
 * Range: the calibrated range; null outside it.
 * Source: as in calibration/uncertainty-budget.ts.
 */
export function lookUpUncertainty(
  basis: LookupBasis,
  curve: WorkingCurve,
  at: { readonly reading: number; readonly temperatureCelsius: number | null; readonly unit: ForceUnit },
  warnings: Warning[],
): UncertaintyBudget | null {
  const { cellResolution, reversibilityPercent, driftPercent } = basis.budget;
  const temperature = at.temperatureCelsius === null ? null : temperatureOf(basis, at.temperatureCelsius);
  if (typeof temperature === 'string') warnings.push(warn('temperature-not-counted', temperature));
  const budget = uncertaintyAt(curve, at.reading, {
    of: 'one-setting',
    certificate: basis.certificate ?? undefined,
    cellResolution: cellResolution ?? undefined,
    resolution: basis.step,
    reversibilityPercent: reversibilityPercent ?? undefined,
    temperature: temperature === null || typeof temperature === 'string' ? undefined : temperature,
    driftPercent: driftPercent ?? undefined,
  });
  return budget.ok ? budgetInUnit(budget.value, at.unit) : null;
}

/** What the temperature at work adds, or the sentence that says why it cannot be counted. */
function temperatureOf(
  { budget, gauge }: LookupBasis,
  celsius: number,
): NonNullable<BudgetOptions['temperature']> | string {
  const asked = `${Number(celsius.toPrecision(4))} C`;
  if (gauge === null) return `The gauge is not known, so the ${asked} at work are not in the uncertainty.`;
  if (gauge.display === 'digital') {
    return `What temperature does to a digital gauge is for its maker to say, so the ${asked} at work are not in the uncertainty.`;
  }
  if (budget.calibratedAtCelsius === null) {
    return `The calibration gives no temperature to compare with, so the ${asked} at work are not in the uncertainty.`;
  }
  return { difference: celsius - budget.calibratedAtCelsius, fullScale: gauge.fullScale };
}

/** Answers the same budget with every force in another unit; a value that is a pressure or a % stays as it is. */
export function budgetInUnit(budget: UncertaintyBudget, unit: ForceUnit): UncertaintyBudget {
  if (unit === budget.unit) return budget;
  const inUnit = (value: number): number => convert(force, { value, unit: budget.unit }, unit);
  return {
    ...budget,
    force: inUnit(budget.force),
    combined: inUnit(budget.combined),
    expanded: inUnit(budget.expanded),
    unit,
    contributions: budget.contributions.map((line) => {
      const standardUncertainty = inUnit(line.standardUncertainty);
      return line.valueUnit === budget.unit
        ? { ...line, value: inUnit(line.value), valueUnit: unit, standardUncertainty }
        : { ...line, sensitivity: inUnit(line.sensitivity), standardUncertainty };
    }),
  };
}
