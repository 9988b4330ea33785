// The curve of a calibration that the server answered, fitted again from its run sheet to draw the band around it.

import type { CalibrationAnswer } from '../../contract/calibration.ts';
import { readRunSheetBody } from '../../contract/run-sheet-json.ts';
import { type CalibrationFit, fitCalibration } from '../../domain/calibration/fit-calibration.ts';

/** Answers the fit to draw; null where the sheet has none, and then the page shows the tables alone. */
export function redrawFit({ sheet, degree }: Pick<CalibrationAnswer, 'sheet' | 'degree'>): CalibrationFit | null {
  const read = readRunSheetBody(sheet);
  if (!read.ok) return null;
  const fit = fitCalibration(read.value, { degree });
  return fit.ok ? fit.value : null;
}
