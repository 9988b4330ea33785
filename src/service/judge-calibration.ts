// One calibration as everybody judges it: curve, levels, checks, acceptance, certificate of the day, due day.

import { doubtOfWithdrawal } from '../domain/calibration/doubt.ts';
import { type EntryCheck, entryChecks } from '../domain/calibration/entry-checks.ts';
import type { UnknownName } from '../domain/calibration/equipment-checks.ts';
import type { CalibrationFit } from '../domain/calibration/fit-calibration.ts';
import { type CalibrationParts, type JudgedFit, judgeFit } from '../domain/calibration/judge-fit.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
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
import { type CalibrationRecord, type PlantState, standingCertificate, standingPart } from '../ledger/plant-state.ts';
import { type ReviewedParts, reviewHash } from '../ledger/review-hash.ts';
import { findEquipment, findPair } from './find-record.ts';
import type { Plant } from './plant.ts';

export interface JudgedCalibration {
  readonly record: CalibrationRecord;
  readonly fit: CalibrationFit;
  readonly judged: JudgedFit;
  readonly checks: readonly EntryCheck[];
  readonly parts: PairParts;
  readonly dueDate: PlantDay;
  readonly reviewHash: string;
  /** The entries that hold its parts now. */
  readonly reviewedParts: ReviewedParts;
  /** Whether approving it needs a note that says why: it fails a rule or may fail it, or an entry check found an error. */
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

/** Answers the parts of a recorded calibration; a withdrawn certificate counts where somebody cleared the doubt about it. */
export function partsOfRecord(state: PlantState, record: CalibrationRecord): Outcome<PairParts> {
  const { pair, loadCell, calibratedOn: day, clearedDoubts = {} } = record;
  const parts = partsOf(state, { pair, loadCell, day });
  if (!parts.ok || parts.value.certificate !== null) return parts;
  const certificate = (state.certificates.get(loadCell) ?? []).findLast(
    ({ withdrawn, ...before }) =>
      withdrawn !== undefined &&
      isCertificateValid(before, day) &&
      Object.hasOwn(clearedDoubts, doubtOfWithdrawal(loadCell, before.number)),
  );
  return certificate === undefined ? parts : succeed({ ...parts.value, certificate });
}

/** Answers the parts of a sheet that names a pair of the plant, as far as it names them; none where it does not. */
export function partsOfSheet(state: PlantState, sheet: RunSheet): CalibrationParts {
  const pair = sheet.pair === undefined ? null : findPair(state, sheet.pair);
  if (pair === null || !pair.ok) return {};
  const cell = sheet.loadCell === undefined ? null : findEquipment(state, 'load-cell', sheet.loadCell, 'loadCell');
  const loadCell = cell?.ok ? cell.value.tag : null;
  const parts = partsOf(state, { pair: pair.value.pair.tag, loadCell, day: sheet.calibratedOn ?? null });
  if (!parts.ok) return {};
  const { certificate, ...others } = calibrationParts(parts.value);
  return loadCell !== null && sheet.calibratedOn !== undefined ? { ...others, certificate } : others;
}

/** Answers which names in a sheet stand for nothing in the plant. */
export function unknownNames(state: PlantState, { pair, loadCell }: RunSheet): readonly UnknownName[] {
  const isPair = pair === undefined || findPair(state, pair).ok;
  const isCell = loadCell === undefined || findEquipment(state, 'load-cell', loadCell, 'loadCell').ok;
  return [
    ...(isPair ? [] : [{ where: 'pair', name: pair } as const]),
    ...(isCell ? [] : [{ where: 'loadCell', name: loadCell } as const]),
  ];
}

/** The parts of a recorded calibration, its certificate asked for and null where none was valid. */
export function calibrationParts({ jack, gauge, cell, certificate }: PairParts): CalibrationParts {
  return { jack, gauge, certificate, ...(cell === null ? {} : { cell }) };
}

/** The curve of a calibration as the rules in force judge it, and the parts it was made with. */
export interface JudgedCurve {
  readonly fit: CalibrationFit;
  readonly judged: JudgedFit;
  readonly parts: PairParts;
}

/** Judges the curve of a recorded calibration by the rules in force, once for the same rules and certificate. */
export function judgeCurve(plant: Plant, record: CalibrationRecord): Outcome<JudgedCurve> {
  const { state } = plant;
  const parts = partsOfRecord(state, record);
  if (!parts.ok) return parts;
  const key = `curve ${record.runHash} ${state.rulesHash} ${standingOfParts(state, parts.value)}`;
  return plant.once(key, () => {
    const fit = plant.fitOf(record);
    if (!fit.ok) return fit;
    const judged = judgeFit(record.sheet, fit.value, state.rules, calibrationParts(parts.value));
    return succeed({ fit: fit.value, judged, parts: parts.value });
  });
}

/** Names the entries that hold the parts and the certificate as they now are, so that a correction is judged anew. */
export function standingOfParts(state: PlantState, { jack, gauge, cell, certificate }: PairParts): string {
  const entries = [jack, gauge, ...(cell === null ? [] : [cell])].map(({ tag }) =>
    state.standing.get(standingPart(tag)),
  );
  if (certificate === null) return entries.join(' ');
  const { loadCell, number, withdrawn } = certificate;
  const filed = state.standing.get(standingCertificate(loadCell, number));
  return [...entries, filed, withdrawn?.lastGood ?? '', number].join(' ');
}

/** Answers the numbers of the entries that hold the parts of a calibration as they now are. */
export function entriesOfParts(
  state: PlantState,
  record: CalibrationRecord,
  { jack, gauge }: PairParts,
): ReviewedParts {
  const entryOf = (tag: string): number => state.standing.get(standingPart(tag)) ?? 0;
  return { jack: entryOf(jack.tag), gauge: entryOf(gauge.tag), loadCell: entryOf(record.loadCell) };
}

/** Judges a recorded calibration as its reviewer sees it. Problems: those of the fit. */
export function judgeCalibration(plant: Plant, record: CalibrationRecord): Outcome<JudgedCalibration> {
  const { state } = plant;
  const curve = judgeCurve(plant, record);
  if (!curve.ok) return curve;
  const { fit, judged, parts } = curve.value;
  const { certificate } = parts;
  const checks = entryChecks(record.sheet, {
    ...calibrationParts(parts),
    pistonArea: parts.jack.pistonArea,
    lowestOfCell: state.rules.cellWindowLow,
    today: plant.today(),
  });
  const isInDoubt = judged.verdict === 'fail' || judged.verdict === 'conditional-fail';
  const reviewedParts = entriesOfParts(state, record, parts);
  return succeed({
    record,
    fit,
    judged,
    checks,
    parts,
    dueDate: dueDate(record.calibratedOn, state.rules.intervalMonths.value),
    needsNote: isInDoubt || checks.some(({ weight }) => weight === 'error'),
    reviewHash: reviewHash(
      {
        runHash: record.runHash,
        response: fit.curve.response,
        degree: fit.curve.fit.degree,
        coefficients: fit.curve.fit.coefficients,
        rulesHash: state.rulesHash,
        rules: state.rules,
        certificate,
        parts: reviewedParts,
      },
      plant.sha256,
    ),
    reviewedParts,
  });
}
