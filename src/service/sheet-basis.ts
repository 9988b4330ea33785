// What look-ups on a bare run sheet rest on: the sheet alone, no pair, no due day, no load cell.

import { entryChecks } from '../domain/calibration/entry-checks.ts';
import { fitCalibration } from '../domain/calibration/fit-calibration.ts';
import { judgeFit } from '../domain/calibration/judge-fit.ts';
import type { RunSheet, SetQuantity } from '../domain/calibration/run-sheet.ts';
import type { LookupBasis } from '../domain/lookup/lookup-basis.ts';
import { warn } from '../domain/lookup/warning.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { Degree } from '../domain/regression/fit-polynomial.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { usedFallingPercent } from './pair-basis.ts';

export interface SheetFitOptions {
  readonly degree: Degree | 'auto';
  readonly set?: SetQuantity | undefined;
}

/** Answers what look-ups on a bare sheet rest on. Problems: those of `fitCalibration`. */
export function sheetBasis(sheet: RunSheet, rules: RuleProfile, options: SheetFitOptions): Outcome<LookupBasis> {
  const fit = fitCalibration(sheet, options);
  if (!fit.ok) return fit;
  const { acceptance, step, levels } = judgeFit(sheet, fit.value, rules, {});
  const asSet = options.set === undefined ? sheet : { ...sheet, set: options.set };
  const errors = entryChecks(asSet, {}).filter(({ weight }) => weight === 'error');
  return succeed({
    curve: fit.value.curve,
    jack: null,
    gauge: null,
    certificate: null,
    budget: {
      cellResolution: null,
      reversibilityPercent: usedFallingPercent(levels, rules),
      driftPercent: null,
      calibratedAtCelsius: sheet.temperatureCelsius ?? null,
    },
    standing: null,
    parted: false,
    onHold: false,
    besides: errors.map(({ message }) => warn('sheet-in-doubt', message)),
    acceptance,
    step,
    rules,
    ownStrands: [],
  });
}
