// Fitting a run sheet that is not in the ledger: the same figures and judgement, by the rules in force.

import type { FitAnswer } from '../contract/fit.ts';
import { type EntryCheck, entryChecks } from '../domain/calibration/entry-checks.ts';
import type { UnknownName } from '../domain/calibration/equipment-checks.ts';
import { type CalibrationFit, fitCalibration } from '../domain/calibration/fit-calibration.ts';
import { type CalibrationParts, type JudgedFit, judgeFit } from '../domain/calibration/judge-fit.ts';
import type { RunSheet, SetQuantity } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { Degree } from '../domain/regression/fit-polynomial.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { partsOfSheet, unknownNames } from './judge-calibration.ts';
import type { Plant } from './plant.ts';

export interface FitContext {
  readonly rules: RuleProfile;
  /** The parts the sheet was made with, as far as they are known. */
  readonly parts: CalibrationParts;
  /** Names in the sheet that the plant does not know. */
  readonly unknown: readonly UnknownName[];
  readonly today: PlantDay;
}

/** What a sheet is judged by in a plant: the rules in force, and the parts of the pair it names where the plant has it. */
export function fitContext(plant: Plant, sheet: RunSheet): FitContext {
  const { state } = plant;
  return {
    rules: state.rules,
    parts: partsOfSheet(state, sheet),
    unknown: unknownNames(state, sheet),
    today: plant.today(),
  };
}

/** Answers the fit of a sheet with levels, budgets, checks and acceptance. Problems: those of `fitCalibration`. */
export function fitSheet(
  sheet: RunSheet,
  options: { readonly degree: Degree | 'auto'; readonly set?: SetQuantity | undefined },
  { rules, parts, unknown, today }: FitContext,
): Outcome<FitAnswer> {
  const fit = fitCalibration(sheet, options);
  if (!fit.ok) return fit;
  const asSet = options.set === undefined ? sheet : { ...sheet, set: options.set };
  const judged = judgeFit(sheet, fit.value, rules, parts);
  const checks = entryChecks(asSet, {
    ...parts,
    pistonArea: parts.jack?.pistonArea,
    lowestOfCell: rules.cellWindowLow,
    unknown,
    today,
  });
  return succeed(writeFit(fit.value, judged, { checks, rules, parts, pair: sheet.pair ?? null }));
}

/** Writes a fit and its judgement as every interface shows them. */
export function writeFit(
  { curve, degrees, residuals }: CalibrationFit,
  judged: JudgedFit,
  of: {
    readonly checks: readonly EntryCheck[];
    readonly rules: RuleProfile;
    readonly parts: CalibrationParts;
    readonly pair: string | null;
  },
): FitAnswer {
  const { fit } = curve;
  const { jack, gauge, cell, certificate } = of.parts;
  return {
    units: curve.units,
    rules: { name: of.rules.name, title: of.rules.title },
    parts: {
      pair: of.pair,
      jack: jack?.tag ?? null,
      pistonArea: jack?.pistonArea ?? null,
      gauge: gauge?.tag ?? null,
      step: judged.step,
      loadCell: cell?.tag ?? null,
      cellCapacity: cell?.capacity ?? null,
      certificate: certificate?.number ?? null,
      certificateUncertainty: certificate
        ? { expandedPercent: certificate.expandedUncertaintyPercent, k: certificate.coverageFactor }
        : null,
      traceableTo: certificate?.traceableTo ?? null,
    },
    curve: {
      response: curve.response,
      degree: fit.degree,
      coefficients: [...fit.coefficients],
      standardErrors: [...fit.standardErrors],
      covariance: fit.covariance.map((row) => [...row]),
      residualStandardDeviation: fit.residualStandardDeviation,
      degreesOfFreedom: fit.degreesOfFreedom,
      rSquared: fit.rSquared,
      lackOfFit: fit.lackOfFit,
      forceRange: curve.forceRange,
      readingRange: curve.readingRange,
    },
    degrees: degrees.map((each) => ({ ...each, coefficients: [...each.coefficients] })),
    residuals: [...residuals],
    levels: judged.levels.map((level) => ({
      ...level,
      cycles: [...level.cycles],
      machineClass: { ...level.machineClass, notJudged: [...level.machineClass.notJudged] },
      errorBudget: { ...level.errorBudget, contributions: [...level.errorBudget.contributions] },
      budget: { ...level.budget, contributions: [...level.budget.contributions] },
    })),
    zeros: [...judged.zeros],
    zeroErrorPercent: judged.zeroErrorPercent,
    machineClass: judged.machineClass,
    machineClassRanges: [...judged.machineClassRanges],
    checks: of.checks.map((check) => ({ ...check })),
    acceptance: [...judged.acceptance],
    verdict: judged.verdict,
  };
}
