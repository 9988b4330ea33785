// Everything that is judged of a fitted run sheet by the parts it was made with: levels, zero checks, class and acceptance.
// What merely looks wrong in the sheet is in entry-checks.ts.

import type { Certificate, Gauge, Jack, LoadCell } from '../equipment/equipment.ts';
import { readableStep } from '../equipment/readable-step.ts';
import type { MachineClass } from '../rules/machine-class-limits.ts';
import type { RuleProfile } from '../rules/rule-profile.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';
import { judgeAcceptance } from './acceptance.ts';
import { type AcceptanceResult, overallVerdict, type Verdict } from './acceptance-result.ts';
import type { CalibrationFit } from './fit-calibration.ts';
import { type CalibrationLevel, calibrationLevels } from './levels.ts';
import { classOfAll, type MachineClassRange, machineClassRanges } from './machine-class.ts';
import { fittedPoints, type RunSheet } from './run-sheet.ts';
import { stepOfReadings } from './step-of-readings.ts';
import { type ZeroCheck, zeroChecks, zeroErrorPercent } from './zero-checks.ts';

/** The parts a calibration was made with, as far as they are known. */
export interface CalibrationParts {
  readonly jack?: Jack | undefined;
  readonly gauge?: Gauge | undefined;
  readonly cell?: LoadCell | undefined;
  /** The load cell's certificate valid on the calibration day; null when there was none, left out when not known. */
  readonly certificate?: Certificate | null | undefined;
}

export interface JudgedFit {
  readonly levels: readonly CalibrationLevel[];
  readonly zeros: readonly ZeroCheck[];
  /** In % of the largest force calibrated; null where zero was not checked. */
  readonly zeroErrorPercent: number | null;
  /** The class of ISO 7500-1 every level holds; null where one holds none. */
  readonly machineClass: MachineClass | null;
  /** Over which part of the range each class is held, in the unit of the set quantity. */
  readonly machineClassRanges: readonly MachineClassRange[];
  /** The smallest step of the gauge; of a sheet without a gauge the step its readings were written to. */
  readonly step: Quantity<PressureUnit>;
  readonly acceptance: readonly AcceptanceResult[];
  readonly verdict: Verdict;
}

/** Answers the levels of a fitted sheet with their budgets, its zero checks, class, acceptance by the rules, and verdict. */
export function judgeFit(
  sheet: RunSheet,
  { curve }: CalibrationFit,
  rules: RuleProfile,
  { jack, gauge, cell, certificate }: CalibrationParts,
): JudgedFit {
  const step = stepOf(sheet, gauge);
  const pistonArea = jack?.pistonArea;
  const levels = calibrationLevels(sheet, curve, {
    pistonArea,
    resolution: step,
    certificate,
    cell,
    fallingUse: rules.fallingUse?.value === 1,
  });
  const zeros = zeroChecks(sheet, curve);
  const acceptance = judgeAcceptance(sheet, curve, levels, rules, { certificate, pistonArea });
  return {
    levels,
    zeros,
    zeroErrorPercent: zeroErrorPercent(zeros),
    machineClass: classOfAll(levels.map((level) => level.machineClass)),
    machineClassRanges: machineClassRanges(levels),
    step,
    acceptance,
    verdict: overallVerdict(acceptance),
  };
}

/** Answers the smallest step of a gauge, or of a sheet's readings where no gauge is known. */
export function stepOf(sheet: RunSheet, gauge: Gauge | undefined): Quantity<PressureUnit> {
  if (gauge !== undefined) return readableStep(gauge);
  return { value: stepOfReadings(fittedPoints(sheet)), unit: sheet.units.reading };
}
