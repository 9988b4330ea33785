// One calibration, or the list of them, as the reviewer and the pair's page show it.

import type { z } from 'zod';
import type { CalibrationAnswer, calibrationLine } from '../contract/calibration.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord } from '../ledger/plant-state.ts';
import { asFoundOf } from './doubts-of.ts';
import { findPair } from './find-record.ts';
import { writeFit } from './fit-sheet.ts';
import { calibrationParts, judgeCalibration } from './judge-calibration.ts';
import type { Plant } from './plant.ts';

export type CalibrationLine = z.infer<typeof calibrationLine>;

export function calibrationLineOf(record: CalibrationRecord): CalibrationLine {
  const { number, pair, calibratedOn, loadCell, status, enteredBy, enteredAt } = record;
  return {
    number,
    pair,
    calibratedOn,
    loadCell,
    status,
    enteredBy,
    enteredAt,
    decidedBy: record.decidedBy ?? null,
    decidedAt: record.decidedAt ?? null,
    decisionNote: record.decisionNote ?? null,
    withdrawn: record.withdrawn ?? null,
  };
}

/** Calibrations, newest entry first, of one status or all. */
export function listCalibrations(plant: Plant, status: CalibrationRecord['status'] | null): readonly CalibrationLine[] {
  return [...plant.state.calibrations.values()]
    .filter((record) => status === null || record.status === status)
    .map(calibrationLineOf)
    .reverse();
}

/** Answers one calibration with its fit, judgement and review hash. Problems: those of the fit. */
export function showCalibration(plant: Plant, record: CalibrationRecord): Outcome<CalibrationAnswer> {
  const shown = judgeCalibration(plant, record);
  if (!shown.ok) return shown;
  const { fit, judged, checks, parts, dueDate, reviewHash, needsNote } = shown.value;
  const pair = findPair(plant.state, record.pair);
  const { cycles, ...sheet } = record.sheet;
  return succeed({
    ...calibrationLineOf(record),
    asOf: plant.today(),
    sheet: { ...sheet, cycles: cycles.map((cycle) => ({ ...cycle, points: [...cycle.points] })) },
    degree: record.degree,
    degreeReason: record.degreeReason ?? null,
    fit: writeFit(fit, judged, { checks, rules: plant.state.rules, parts: calibrationParts(parts), pair: record.pair }),
    certificate: parts.certificate,
    asFound: pair.ok ? asFoundOf(plant, pair.value, record) : null,
    dueDate,
    reviewHash,
    approvalNeedsNote: needsNote,
  });
}
