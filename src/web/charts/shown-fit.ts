// What the pages show of a judged fit: computed on the page or answered by the server, the same figures either way.

import type { CalibrationResidual } from '../../domain/calibration/fit-calibration.ts';
import type { JudgedFit } from '../../domain/calibration/judge-fit.ts';
import type { CalibrationLevel } from '../../domain/calibration/levels.ts';
import type { UncertaintyBudget, UncertaintyContribution } from '../../domain/calibration/uncertainty-budget.ts';
import type { DegreeComparison } from '../../domain/regression/compare-degrees.ts';

export interface ShownContribution extends Omit<UncertaintyContribution, 'valueUnit'> {
  readonly valueUnit: string;
}

export interface ShownBudget extends Omit<UncertaintyBudget, 'unit' | 'contributions'> {
  readonly unit: string;
  readonly contributions: readonly ShownContribution[];
}

export interface ShownLevel extends Omit<CalibrationLevel, 'budget' | 'errorBudget'> {
  readonly errorBudget: ShownBudget;
  readonly budget: ShownBudget;
}

export interface ShownDegree extends Omit<DegreeComparison, 'degree'> {
  readonly degree: number;
}

export interface ShownUnits {
  readonly force: string;
  readonly reading: string;
}

/** The curve as numbers. */
export interface ShownCurve {
  readonly response: 'reading' | 'force';
  readonly degree: number;
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly rSquared: number;
  readonly lackOfFit: {
    readonly fStatistic: number;
    readonly pValue: number;
    readonly numeratorDegrees: number;
    readonly denominatorDegrees: number;
  } | null;
}

/** What was judged of it; null where nothing is judged here. */
export interface ShownFigures
  extends Pick<JudgedFit, 'zeros' | 'zeroErrorPercent' | 'machineClass' | 'machineClassRanges'> {
  readonly levels: readonly ShownLevel[];
}

export interface ShownFit {
  readonly units: ShownUnits;
  readonly curve: ShownCurve;
  readonly degrees: readonly ShownDegree[];
  readonly residuals: readonly CalibrationResidual[];
  readonly figures: ShownFigures | null;
}

/** Units of the quantity that was set and of the one observed. */
export function unitsOfFit({
  curve,
  units,
}: Pick<ShownFit, 'units'> & { readonly curve: Pick<ShownCurve, 'response'> }): {
  readonly set: string;
  readonly observed: string;
} {
  return curve.response === 'reading'
    ? { set: units.force, observed: units.reading }
    : { set: units.reading, observed: units.force };
}
