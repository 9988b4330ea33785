// Submitting a calibration: the run sheet enters the ledger and waits for approval by somebody else.

import { fitCalibration } from '../domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord, PlantState } from '../ledger/plant-state.ts';
import { findCalibration, findEquipment, findPair } from './find-record.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

export interface Submission {
  readonly sheet: RunSheet;
  readonly degree: 1 | 2 | 3 | 'auto';
  readonly degreeReason?: string | undefined;
}

/**
 * Records a run sheet. Refused before anything is stored: a sheet that names no pair, day or load cell, an unknown
 * one, a load cell taken out of use before, a parted pair, a day in the future or before the pair was formed, a sheet no curve can be fitted through.
 */
export function recordRun(
  plant: Plant,
  submission: Submission,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<CalibrationRecord>> {
  return performAction(plant, {
    ...by,
    action: 'record-run',
    decide: (at) => {
      const checked = checkSubmission(plant, submission);
      if (!checked.ok) return checked;
      const { sheet, degree, degreeReason } = submission;
      const body = { ...checked.value, sheet, degree, ...(degreeReason === undefined ? {} : { degreeReason }) };
      return succeed([{ at, actor: by.actor.id, kind: 'run-recorded/3', subject: nextNumber(plant.state), body }]);
    },
    answer: (number) => findCalibration(plant.state, number),
  });
}

/** Calibrations are numbered in the order they were entered: C-0001, C-0002 ... */
function nextNumber(state: PlantState): string {
  return `C-${String(state.calibrations.size + 1).padStart(4, '0')}`;
}

function checkSubmission(
  plant: Plant,
  { sheet, degree, degreeReason }: Submission,
): Outcome<{ readonly pair: string; readonly calibratedOn: string; readonly loadCell: string }> {
  const missing = (where: string, needed: string) =>
    fail('field-missing', `The sheet does not say ${needed}.`, { where, needed });
  if (sheet.pair === undefined) return missing('pair', 'which pair was calibrated');
  if (sheet.calibratedOn === undefined) return missing('calibratedOn', 'on which day it was calibrated');
  if (sheet.loadCell === undefined) return missing('loadCell', 'which load cell was used');
  if (degree !== 'auto' && (degreeReason ?? '').trim().length < 5) {
    return fail('field-missing', 'A degree chosen by a person needs a reason.', {
      where: 'degreeReason',
      needed: 'why this degree and not the one the F test picks',
    });
  }
  const pair = findPair(plant.state, sheet.pair, 'pair');
  if (!pair.ok) return pair;
  const { parted, formedOn, tag } = pair.value.pair;
  if (parted !== undefined && parted.on < sheet.calibratedOn) {
    return fail('pair-parted', `The pair ${tag} was parted on ${parted.on}: ${parted.reason}`, {
      where: 'pair',
      given: tag,
    });
  }
  const cell = findEquipment(plant.state, 'load-cell', sheet.loadCell, 'loadCell');
  if (!cell.ok) return cell;
  const retired = plant.state.retired.get(cell.value.tag);
  if (retired !== undefined && retired.on < sheet.calibratedOn) {
    return fail('part-retired', `${cell.value.tag} was taken out of use on ${retired.on}: ${retired.reason}`, {
      where: 'loadCell',
      needed: `a load cell that was in use on ${sheet.calibratedOn}`,
      given: cell.value.tag,
    });
  }
  const today = plant.today();
  if (daysBetween(today, sheet.calibratedOn) > 0) {
    return fail('date-in-future', `The calibration day ${sheet.calibratedOn} lies after today, ${today}.`, {
      where: 'calibratedOn',
      needed: `${today} or earlier`,
      given: sheet.calibratedOn,
    });
  }
  if (daysBetween(formedOn, sheet.calibratedOn) < 0) {
    return fail('field-invalid', `The pair ${tag} was formed on ${formedOn}; it cannot have been calibrated before.`, {
      where: 'calibratedOn',
      needed: `${formedOn} or later`,
      given: sheet.calibratedOn,
    });
  }
  const fit = fitCalibration(sheet, { degree });
  if (!fit.ok) return fit;
  return succeed({ pair: tag, calibratedOn: sheet.calibratedOn, loadCell: cell.value.tag });
}
