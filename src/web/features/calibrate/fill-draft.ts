// What fills a draft at a stroke: an imported run sheet, or the units of the pair chosen.

import type { PairLine } from '../../../contract/equipment.ts';
import type { RunSheet } from '../../../domain/calibration/run-sheet.ts';
import { force } from '../../../domain/units/force.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { parseUnit } from '../../../domain/units/quantity.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import { gridFromSheet } from './grid-from-sheet.ts';
import { isUntouched } from './run-grid.ts';

/** Takes everything a sheet states; what it leaves open stays as it was in the draft. */
export function draftWithSheet(draft: CalibrationDraft, sheet: RunSheet): CalibrationDraft {
  return {
    ...draft,
    grid: gridFromSheet(sheet),
    set: sheet.set ?? 'force',
    forceUnit: sheet.units.force,
    readingUnit: sheet.units.reading,
    loading: sheet.loading ?? draft.loading,
    pair: sheet.pair ?? draft.pair,
    calibratedOn: sheet.calibratedOn ?? draft.calibratedOn,
    loadCell: sheet.loadCell ?? draft.loadCell,
    condition: sheet.condition ?? draft.condition,
    firstUseOn: sheet.firstUseOn ?? draft.firstUseOn,
    note: sheet.note ?? draft.note,
    temperature: sheet.temperatureCelsius === undefined ? draft.temperature : String(sheet.temperatureCelsius),
  };
}

/** The units a pair is read in, as long as nothing was typed that they would change the meaning of. */
export function unitsOfPair(
  tag: string,
  draft: CalibrationDraft,
  pairs: readonly PairLine[],
): Partial<Pick<CalibrationDraft, 'forceUnit' | 'readingUnit'>> {
  const line = pairs.find((pair) => pair.tag === tag);
  if (line === undefined || !isUntouched(draft.grid)) return {};
  const forceUnit = parseUnit(force, line.forceUnit);
  const readingUnit = parseUnit(pressure, line.readingUnit);
  return {
    ...(forceUnit.ok ? { forceUnit: forceUnit.value } : {}),
    ...(readingUnit.ok ? { readingUnit: readingUnit.value } : {}),
  };
}
