// What looks wrong in a run sheet while it is being typed: all checks together. The checks themselves are in
// point-checks.ts, cycle-checks.ts, equipment-checks.ts and area-checks.ts.
// What stops a fit altogether is a problem of fit-calibration.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import type { Certificate, Gauge, Jack, LoadCell } from '../equipment/equipment.ts';
import type { Limit } from '../rules/rule-profile.ts';
import type { AreaUnit } from '../units/area.ts';
import type { Quantity } from '../units/quantity.ts';
import { checkArea } from './area-checks.ts';
import { checkCopies, checkOrder, checkShift } from './cycle-checks.ts';
import type { EntryCheck } from './entry-check.ts';
import {
  checkCell,
  checkCertificate,
  checkGauge,
  checkGraduation,
  checkJack,
  checkNames,
  checkZero,
  type UnknownName,
} from './equipment-checks.ts';
import { fewestPoints, setQuantity } from './fit-calibration.ts';
import { checkAgainstCurve } from './point-checks.ts';
import { isFitted, type PlacedPoint, placedPoints, type RunSheet } from './run-sheet.ts';
import { shiftedCycle } from './shifted-cycles.ts';

export type { EntryCheck } from './entry-check.ts';

export interface EntryCheckContext {
  /** The certificate of the load cell; null where none is valid on the calibration day, left out where nobody asked. */
  readonly certificate?: Certificate | null | undefined;
  readonly cell?: LoadCell | undefined;
  /** The lowest part of a load cell's capacity to use; left out where no rules are known. */
  readonly lowestOfCell?: Limit | undefined;
  readonly gauge?: Gauge | undefined;
  readonly jack?: Jack | undefined;
  /** Names in the sheet that stand for nothing in the plant; left out where nobody asked. */
  readonly unknown?: readonly UnknownName[] | undefined;
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
  readonly today?: PlantDay | undefined;
}

/**
 * Answers everything in a sheet that a person should look at again, what concerns the whole sheet first.
 * Works on a half-typed sheet: values that are not finite numbers of zero or more are left to the problems of the fit,
 * and each check speaks only where it has what it needs. Changes no number. A cycle that is shifted by a row is named
 * once, and its points are not judged one by one.
 * Source: design of the program, "Calculations" 7; each limit has its own beside it.
 */
export function entryChecks(sheet: RunSheet, context: EntryCheckContext): readonly EntryCheck[] {
  const points = placedPoints(sheet).filter(
    (point) => Number.isFinite(point.force) && Number.isFinite(point.reading) && point.force >= 0 && point.reading >= 0,
  );
  const set = setQuantity(sheet);
  const rising = points.filter((point) => isFitted(point, set));
  const shifted = shiftedCycle(rising, set);
  const inPlace = rising.filter(({ cycle }) => cycle !== shifted?.cycle);
  const { checks: ofPoints, suspects, clean } = checkAgainstCurve(sheet, inPlace, set);
  const { gauge, cell, certificate, pistonArea } = context;
  return [
    ...checkCount(rising),
    ...checkDay(sheet, context),
    ...checkCertificate(sheet, certificate),
    ...checkLoading(sheet),
    ...checkArea(sheet, inPlace, { clean, set }, pistonArea),
    ...checkNames(context.unknown ?? []),
    ...checkGauge(sheet, points, gauge),
    ...checkJack(sheet, points, context.jack),
    ...checkCell(sheet, points, cell, context.lowestOfCell),
    ...(shifted === null ? [] : [checkShift(shifted, set)]),
    ...checkCopies(rising, set, [...suspects, ...rising.filter((point) => !inPlace.includes(point))]),
    ...ofPoints,
    ...checkOrder(sheet, suspects),
    ...checkGraduation(
      sheet,
      points.filter((point) => !suspects.includes(point)),
      gauge,
    ),
    ...checkZero(sheet, points, gauge),
  ];
}

function checkCount(rising: readonly PlacedPoint[]): readonly EntryCheck[] {
  if (rising.length >= fewestPoints) return [];
  const message = `There are ${rising.length} rising points above zero force; a curve needs at least ${fewestPoints}.`;
  return [{ code: 'too-few-points', message, where: 'cycles', weight: 'error' }];
}

function checkDay({ calibratedOn }: RunSheet, { today }: EntryCheckContext): readonly EntryCheck[] {
  if (calibratedOn === undefined || today === undefined || calibratedOn <= today) return [];
  const message = `The calibration day ${calibratedOn} lies after today, ${today}.`;
  return [{ code: 'day-in-future', message, where: 'calibratedOn', weight: 'error' }];
}

function checkLoading({ loading }: RunSheet): readonly EntryCheck[] {
  if (loading !== 'passive') return [];
  const message =
    'A machine pushed the jack. That reverses the friction of the seals; the curve does not hold for stressing, where the jack pushes.';
  return [{ code: 'passive-set-up', message, where: 'loading', weight: 'error' }];
}
