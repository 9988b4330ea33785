// The run sheet a draft stands for as it is now, and what must be mended before it can be submitted.

import type { z } from 'zod';
import type { submissionBody } from '../../../contract/calibration.ts';
import { runSheetFormat } from '../../../contract/run-sheet-json.ts';
import type { RunSheet } from '../../../domain/calibration/run-sheet.ts';
import { parsePlantDay } from '../../../domain/dates/plant-day.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import type { GridPoints } from './sheet-from-grid.ts';

/** Answers the sheet of the points that can be read; what is left blank is left out. */
export function sheetOfDraft(draft: CalibrationDraft, points: GridPoints): RunSheet {
  const temperature = readTemperature(draft.temperature);
  return {
    units: { force: draft.forceUnit, reading: draft.readingUnit },
    set: draft.set,
    loading: draft.loading,
    cycles: points.cycles,
    ...(draft.pair === '' ? {} : { pair: draft.pair }),
    ...(parsePlantDay(draft.calibratedOn).ok ? { calibratedOn: draft.calibratedOn.trim() } : {}),
    ...(draft.loadCell === '' ? {} : { loadCell: draft.loadCell }),
    ...(typeof temperature === 'number' ? { temperatureCelsius: temperature } : {}),
    ...(parsePlantDay(draft.firstUseOn).ok ? { firstUseOn: draft.firstUseOn.trim() } : {}),
    ...(draft.condition === '' ? {} : { condition: draft.condition }),
    ...(draft.note.trim() === '' ? {} : { note: draft.note.trim() }),
  };
}

/** Degrees Celsius; null where nothing was typed, `bad` where it is no temperature a plant has. */
export function readTemperature(text: string): number | null | 'bad' {
  if (text.trim() === '') return null;
  const read = parseNumber(text);
  return read.ok && read.value >= -60 && read.value <= 80 ? read.value : 'bad';
}

export type DayProblem = 'missing' | 'invalid' | 'in-future';

export function judgeDay(day: string, today: string | null): DayProblem | null {
  if (day.trim() === '') return 'missing';
  if (!parsePlantDay(day).ok) return 'invalid';
  return today !== null && day.trim() > today ? 'in-future' : null;
}

/** A day that was typed and does not exist; blank is no problem. */
export const isFirstUseBad = ({ firstUseOn }: Pick<CalibrationDraft, 'firstUseOn'>): boolean =>
  firstUseOn.trim() !== '' && !parsePlantDay(firstUseOn).ok;

/** Shortest reason for a degree chosen by hand. House rule: as for every other reason. */
export const shortestReason = 5;

export const isReasonMissing = ({ degree, degreeReason }: CalibrationDraft): boolean =>
  degree !== 'auto' && degreeReason.trim().length < shortestReason;

/** The body of the submission. */
export function submissionOf(draft: CalibrationDraft, points: GridPoints): z.input<typeof submissionBody> {
  const { cycles, ...sheet } = sheetOfDraft(draft, points);
  return {
    sheet: {
      ...sheet,
      format: runSheetFormat,
      pair: draft.pair,
      calibratedOn: draft.calibratedOn.trim(),
      loadCell: draft.loadCell,
      cycles: cycles.map((cycle) => ({ ...cycle, points: [...cycle.points] })),
    },
    degree: draft.degree,
    ...(draft.degree === 'auto' ? {} : { degreeReason: draft.degreeReason.trim() }),
  };
}
