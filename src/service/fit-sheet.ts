// Fitting a run sheet that is not in the ledger: the same figures and judgement, by the rules in force.

import type { FitAnswer } from '../contract/fit.ts';
import { type AcceptanceContext, judgeAcceptance, overallVerdict } from '../domain/calibration/acceptance.ts';
import { type EntryCheck, type EntryCheckContext, entryChecks } from '../domain/calibration/entry-checks.ts';
import { type CalibrationFit, fitCalibration } from '../domain/calibration/fit-calibration.ts';
import { type CalibrationLevel, calibrationLevels } from '../domain/calibration/levels.ts';
import type { RunSheet, SetQuantity } from '../domain/calibration/run-sheet.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { Degree } from '../domain/regression/fit-polynomial.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';

/** Answers the fit of a sheet with levels, checks and acceptance. Problems: those of `fitCalibration`. */
export function fitSheet(
  sheet: RunSheet,
  rules: RuleProfile,
  options: { readonly degree: Degree | 'auto'; readonly set?: SetQuantity | undefined },
  context: AcceptanceContext & EntryCheckContext,
): Outcome<FitAnswer> {
  const fit = fitCalibration(sheet, options);
  if (!fit.ok) return fit;
  const { curve } = fit.value;
  const asSet = options.set === undefined ? sheet : { ...sheet, set: options.set };
  const levels = calibrationLevels(sheet, curve, context);
  const acceptance = judgeAcceptance(sheet, curve, levels, rules, context);
  return succeed(writeFit(fit.value, { levels, acceptance, checks: entryChecks(asSet, context) }));
}

/** Writes a fit and its judgement as every interface shows them. */
export function writeFit(
  fit: CalibrationFit,
  judged: {
    readonly levels: readonly CalibrationLevel[];
    readonly acceptance: ReturnType<typeof judgeAcceptance>;
    readonly checks: readonly EntryCheck[];
  },
): FitAnswer {
  const { curve, degrees, residuals } = fit;
  return {
    units: curve.units,
    curve: {
      response: curve.response,
      degree: curve.fit.degree,
      coefficients: [...curve.fit.coefficients],
      standardErrors: [...curve.fit.standardErrors],
      residualStandardDeviation: curve.fit.residualStandardDeviation,
      degreesOfFreedom: curve.fit.degreesOfFreedom,
      rSquared: curve.fit.rSquared,
      forceRange: curve.forceRange,
      readingRange: curve.readingRange,
    },
    degrees: [...degrees],
    residuals: [...residuals],
    levels: [...judged.levels],
    checks: [...judged.checks],
    acceptance: [...judged.acceptance],
    verdict: overallVerdict(judged.acceptance),
  };
}
