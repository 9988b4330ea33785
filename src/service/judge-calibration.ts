// One calibration as everybody judges it: curve, levels, checks, acceptance, certificate of the day, due day.

import { type AcceptanceResult, judgeAcceptance, overallVerdict } from '../domain/calibration/acceptance.ts';
import { type EntryCheck, entryChecks } from '../domain/calibration/entry-checks.ts';
import type { CalibrationFit } from '../domain/calibration/fit-calibration.ts';
import { type CalibrationLevel, calibrationLevels } from '../domain/calibration/levels.ts';
import { dueDate } from '../domain/dates/due-date.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import {
  type Certificate,
  type Gauge,
  isCertificateValid,
  type Jack,
  type LoadCell,
} from '../domain/equipment/equipment.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord, PlantState } from '../ledger/plant-state.ts';
import { reviewHash } from '../ledger/review-hash.ts';
import { findEquipment, findPair } from './find-record.ts';
import type { Plant } from './plant.ts';

export interface JudgedCalibration {
  readonly record: CalibrationRecord;
  readonly fit: CalibrationFit;
  readonly levels: readonly CalibrationLevel[];
  readonly checks: readonly EntryCheck[];
  readonly acceptance: readonly AcceptanceResult[];
  readonly verdict: ReturnType<typeof overallVerdict>;
  readonly certificate: Certificate | null;
  readonly dueDate: PlantDay;
  readonly reviewHash: string;
  /** Whether approving it needs a note that says why: it fails a rule, or an entry check found an error. */
  readonly needsNote: boolean;
}

/** The parts a run sheet of a pair is judged against. */
export interface PairParts {
  readonly jack: Jack;
  readonly gauge: Gauge;
  readonly cell: LoadCell | null;
  readonly certificate: Certificate | null;
}

/** Answers the certificate of a load cell that covers a day; of several the one calibrated last. */
export function certificateOn(state: PlantState, cell: string, day: PlantDay): Certificate | null {
  const valid = (state.certificates.get(cell) ?? []).filter((certificate) => isCertificateValid(certificate, day));
  return valid.reduce<Certificate | null>(
    (latest, next) => (latest === null || next.calibratedOn >= latest.calibratedOn ? next : latest),
    null,
  );
}

export function partsOf(
  state: PlantState,
  of: { readonly pair: string; readonly loadCell: string | null; readonly day: PlantDay | null },
): Outcome<PairParts> {
  const pair = findPair(state, of.pair);
  if (!pair.ok) return pair;
  const jack = findEquipment(state, 'jack', pair.value.pair.jack, 'jack');
  if (!jack.ok) return jack;
  const gauge = findEquipment(state, 'gauge', pair.value.pair.gauge, 'gauge');
  if (!gauge.ok) return gauge;
  if (of.loadCell === null) return succeed({ jack: jack.value, gauge: gauge.value, cell: null, certificate: null });
  const cell = findEquipment(state, 'load-cell', of.loadCell, 'loadCell');
  if (!cell.ok) return cell;
  const certificate = of.day === null ? null : certificateOn(state, cell.value.tag, of.day);
  return succeed({ jack: jack.value, gauge: gauge.value, cell: cell.value, certificate });
}

/** What a calibration is accepted by: its curve, its levels and the rules in force. */
export interface AcceptedCurve {
  readonly fit: CalibrationFit;
  readonly levels: readonly CalibrationLevel[];
  readonly acceptance: readonly AcceptanceResult[];
  readonly parts: PairParts;
}

/** Judges the curve of a recorded calibration by the rules in force, once for the same rules and certificate. */
export function judgeCurve(plant: Plant, record: CalibrationRecord): Outcome<AcceptedCurve> {
  const { state } = plant;
  const parts = partsOf(state, { pair: record.pair, loadCell: record.loadCell, day: record.calibratedOn });
  if (!parts.ok) return parts;
  const { jack, certificate } = parts.value;
  const key = `curve ${record.runHash} ${state.rulesHash} ${certificate?.number}`;
  return plant.once(key, () => {
    const fit = plant.fitOf(record);
    if (!fit.ok) return fit;
    const levels = calibrationLevels(record.sheet, fit.value.curve, { pistonArea: jack.pistonArea });
    const acceptance = judgeAcceptance(record.sheet, fit.value.curve, levels, state.rules, {
      certificate,
      pistonArea: jack.pistonArea,
    });
    return succeed({ fit: fit.value, levels, acceptance, parts: parts.value });
  });
}

/** Judges a recorded calibration as its reviewer sees it. Problems: those of the fit. */
export function judgeCalibration(plant: Plant, record: CalibrationRecord): Outcome<JudgedCalibration> {
  const { state } = plant;
  const judged = judgeCurve(plant, record);
  if (!judged.ok) return judged;
  const { fit, levels, acceptance, parts } = judged.value;
  const { jack, gauge, cell, certificate } = parts;
  const checks = entryChecks(record.sheet, {
    certificate,
    pistonArea: jack.pistonArea,
    gauge,
    today: plant.today(),
    ...(cell === null ? {} : { cell }),
  });
  const verdict = overallVerdict(acceptance);
  return succeed({
    record,
    needsNote: verdict === 'fail' || checks.some(({ weight }) => weight === 'error'),
    fit,
    levels,
    checks,
    acceptance,
    verdict,
    certificate,
    dueDate: dueDate(record.calibratedOn, state.rules.intervalMonths.value),
    reviewHash: reviewHash(
      {
        runHash: record.runHash,
        response: fit.curve.response,
        degree: fit.curve.fit.degree,
        coefficients: fit.curve.fit.coefficients,
        rulesHash: state.rulesHash,
        rules: state.rules,
        certificate,
      },
      plant.sha256,
    ),
  });
}
