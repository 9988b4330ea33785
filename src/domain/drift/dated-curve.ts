// A calibration as drift sees it: its curve, its day and what its uncertainty is made of.

import type { Curve } from '../calibration/curve.ts';
import { type BudgetOptions, type UncertaintyBudget, uncertaintyAt } from '../calibration/uncertainty-budget.ts';
import type { PlantDay } from '../dates/plant-day.ts';
import type { Outcome } from '../problem.ts';

export interface DatedCurve {
  readonly curve: Curve;
  readonly calibratedOn: PlantDay;
  /** What the calibration knows of its load cell, steps and temperature. Drift is what is asked for, so it is no part of it. */
  readonly budget: Omit<BudgetOptions, 'of' | 'driftPercent'>;
}

/** Answers the force the curve gives at a reading with its uncertainty, that of the curve and not of one setting. */
export function curveWithUncertainty({ curve, budget }: DatedCurve, reading: number): Outcome<UncertaintyBudget> {
  return uncertaintyAt(curve, reading, { ...budget, of: 'the-curve' });
}
