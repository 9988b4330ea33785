// What looks wrong in a run sheet while it is being typed: the checks of the sheet as a whole, and all checks together.
// Checks of single points are in point-checks.ts. What stops a fit altogether is a problem of fit-calibration.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import { type Certificate, type Gauge, isCertificateValid, type LoadCell } from '../equipment/equipment.ts';
import type { AreaUnit } from '../units/area.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert, type Quantity } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { EntryCheck } from './entry-check.ts';
import { fewestPoints, setQuantity, whereOf } from './fit-calibration.ts';
import { loadEfficiency } from './levels.ts';
import { checkAgainstCurve, checkOrder, placeWords } from './point-checks.ts';
import { type PlacedPoint, placedPoints, type RunSheet } from './run-sheet.ts';

export type { EntryCheck } from './entry-check.ts';

export interface EntryCheckContext {
  /** The certificate of the load cell; null where none is valid on the calibration day, left out where nobody asked. */
  readonly certificate?: Certificate | null | undefined;
  readonly cell?: LoadCell | undefined;
  readonly gauge?: Gauge | undefined;
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
  readonly today?: PlantDay | undefined;
}

/** Largest reading at zero force, as a part of the largest reading. Source: ISO 7500-1:2018 class 3, relative zero error (from memory). */
const largestZero = 0.003;

/** Lowest part of a load cell's capacity it is used in. Source: Caltrans METS criteria 2025. */
const lowestOfCell = 0.1;

/** A load efficiency outside this cannot be friction: unit, area or part is wrong. House rule. */
const possibleEfficiency = { low: 0.6, high: 1.3 };
/** What a load efficiency is expected to be near when the right unit is tried. House rule, around the 0.93 to 1.00 of JJG 621. */
const usualEfficiency = { low: 0.85, high: 1.1 };

/** A sheet that stays below this part of the gauge's full scale was hardly read on that gauge in that unit. House rule. */
const leastOfGauge = 0.05;

/**
 * Answers everything in a sheet that a person should look at again, what concerns the whole sheet first.
 * Works on a half-typed sheet: values that are not finite numbers of zero or more are left to the problems of the fit,
 * and each check speaks only where it has what it needs. Changes no number.
 * Source: design of the program, "Calculations" 7; each limit has its own beside it.
 */
export function entryChecks(sheet: RunSheet, context: EntryCheckContext): readonly EntryCheck[] {
  const points = placedPoints(sheet).filter(
    (point) => Number.isFinite(point.force) && Number.isFinite(point.reading) && point.force >= 0 && point.reading >= 0,
  );
  const rising = points.filter((point) => point.direction === 'up' && point.force > 0);
  const against = checkAgainstCurve(sheet, rising, setQuantity(sheet));
  return [
    ...checkCount(rising),
    ...checkDay(sheet, context),
    ...checkCertificate(sheet, context),
    ...checkLoading(sheet),
    ...checkEfficiency(sheet, rising, context),
    ...checkGauge(sheet, points, context),
    ...checkCell(sheet, points, context),
    ...against.checks,
    ...checkOrder(sheet, against.suspects),
    ...checkZero(sheet, points, context),
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

function checkCertificate(
  { calibratedOn, loadCell }: RunSheet,
  { certificate }: EntryCheckContext,
): readonly EntryCheck[] {
  const found = { code: 'certificate-not-valid', where: 'loadCell', weight: 'error' } as const;
  if (certificate === undefined) return [];
  if (certificate === null) {
    const [cell, day] = [loadCell ?? 'The load cell', calibratedOn ?? 'the calibration day'];
    return [{ ...found, message: `${cell} has no certificate that is valid on ${day}.` }];
  }
  if (calibratedOn === undefined || isCertificateValid(certificate, calibratedOn)) return [];
  const { number, calibratedOn: from, validUntil } = certificate;
  const message = `Certificate ${number} of the load cell is valid from ${from} to ${validUntil}, not on ${calibratedOn}.`;
  return [{ ...found, message }];
}

function checkLoading({ loading }: RunSheet): readonly EntryCheck[] {
  if (loading !== 'passive') return [];
  const message =
    'A machine pushed the jack. That reverses the friction of the seals; the curve does not hold for stressing, where the jack pushes.';
  return [{ code: 'passive-set-up', message, where: 'loading', weight: 'error' }];
}

function checkEfficiency(
  { units }: RunSheet,
  rising: readonly PlacedPoint[],
  { pistonArea }: EntryCheckContext,
): readonly EntryCheck[] {
  if (pistonArea === undefined || rising.length < fewestPoints) return [];
  const medianIn = (tried: RunSheet['units']): number => {
    const each = rising.flatMap(({ force: value, reading }) => loadEfficiency(value, reading, tried, pistonArea) ?? []);
    return each.sort((a, b) => a - b)[Math.floor(each.length / 2)] ?? Number.NaN;
  };
  const efficiency = medianIn(units);
  if (!(efficiency < possibleEfficiency.low || efficiency > possibleEfficiency.high)) return [];
  const usual = (value: number): boolean => value >= usualEfficiency.low && value <= usualEfficiency.high;
  const start = `Force over reading times the nominal area ${writeQuantity(pistonArea)} is ${Number(efficiency.toPrecision(3))}; about 0.93 to 1.00 is expected.`;
  const reading = (Object.keys(pressure.factors) as PressureUnit[]).find((unit) =>
    usual(medianIn({ ...units, reading: unit })),
  );
  if (reading !== undefined) {
    const message = `${start} Readings in ${reading} in place of ${units.reading} would fit.`;
    return [{ code: 'unit-slip', message, where: 'units.reading', weight: 'error' }];
  }
  const unit = (Object.keys(force.factors) as ForceUnit[]).find((tried) => usual(medianIn({ ...units, force: tried })));
  if (unit !== undefined) {
    const message = `${start} Forces in ${unit} in place of ${units.force} would fit.`;
    return [{ code: 'unit-slip', message, where: 'units.force', weight: 'error' }];
  }
  const message = `${start} Check the units, the nominal area and whether this is the right jack.`;
  return [{ code: 'load-efficiency', message, where: 'units', weight: 'doubt' }];
}

function checkGauge(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  { gauge }: EntryCheckContext,
): readonly EntryCheck[] {
  const largest = points.reduce<PlacedPoint | null>(
    (most, next) => (next.reading > (most?.reading ?? 0) ? next : most),
    null,
  );
  if (gauge === undefined || largest === null) return [];
  const { value: span, unit } = gauge.fullScale;
  const part = convert(pressure, { value: largest.reading, unit: units.reading }, unit) / span;
  const asGauge = largest.reading / span;
  const scale = `the gauge goes to ${writeQuantity(gauge.fullScale)}`;
  if ((part > 1 || part < leastOfGauge) && unit !== units.reading && asGauge >= 2 * leastOfGauge && asGauge <= 1) {
    const message = `The readings reach ${largest.reading} ${units.reading}, but ${scale}. Readings in ${unit} would fit.`;
    return [{ code: 'unit-slip', message, where: 'units.reading', weight: 'error' }];
  }
  if (part <= 1) return [];
  const message = `${placeWords(largest)}: the reading ${largest.reading} ${units.reading} is above the full scale; ${scale}.`;
  return [{ code: 'above-gauge-span', message, where: whereOf(largest, 'reading'), weight: 'error' }];
}

function checkCell(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  { cell }: EntryCheckContext,
): readonly EntryCheck[] {
  if (cell === undefined) return [];
  const partOf = (point: PlacedPoint): number =>
    convert(force, { value: point.force, unit: units.force }, cell.capacity.unit) / cell.capacity.value;
  const above = points.filter((point) => partOf(point) > 1);
  const low = points.filter((point) => point.direction === 'up' && point.force > 0 && partOf(point) < lowestOfCell);
  const checks: EntryCheck[] = [];
  const capacity = `the capacity of load cell ${cell.tag}, ${writeQuantity(cell.capacity)}`;
  const others = (found: readonly PlacedPoint[]): string =>
    found.length === 1 ? '' : ` (${found.length} such points)`;
  const [firstAbove] = above;
  if (firstAbove !== undefined) {
    const message = `${placeWords(firstAbove)}: ${firstAbove.force} ${units.force} is above ${capacity}${others(above)}.`;
    checks.push({ code: 'cell-above-capacity', message, where: whereOf(firstAbove, 'force'), weight: 'error' });
  }
  const [firstLow] = low;
  if (firstLow !== undefined) {
    const message = `${placeWords(firstLow)}: ${firstLow.force} ${units.force} is below 10 % of ${capacity}, where it is not used${others(low)}.`;
    checks.push({ code: 'cell-low-range', message, where: whereOf(firstLow, 'force'), weight: 'doubt' });
  }
  return checks;
}

function checkZero(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  { gauge }: EntryCheckContext,
): readonly EntryCheck[] {
  const largest = points.reduce((most, { reading }) => Math.max(most, reading), 0);
  const graduation = gauge === undefined ? 0 : convert(pressure, gauge.graduation, units.reading);
  const allowed = Math.max(largestZero * largest, graduation);
  return points
    .filter((point) => point.force === 0 && point.reading > allowed)
    .map((point) => {
      const shows = writeQuantity({ value: point.reading, unit: units.reading });
      const message = `${placeWords(point)}: the gauge shows ${shows} at zero force; at most ${writeQuantity({ value: allowed, unit: units.reading })} would fit.`;
      return { code: 'zero-not-returned', message, where: whereOf(point, 'reading'), weight: 'doubt' };
    });
}
