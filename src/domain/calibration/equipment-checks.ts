// Entry checks of a sheet against the parts it was taken with: gauge, load cell and its certificate.
// The nominal area of the jack is in area-checks.ts.

import { type Certificate, type Gauge, isCertificateValid, type Jack, type LoadCell } from '../equipment/equipment.ts';
import { readableStep } from '../equipment/readable-step.ts';
import type { Limit } from '../rules/rule-profile.ts';
import { force } from '../units/force.ts';
import { pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { EntryCheck } from './entry-check.ts';
import { whereOf } from './fit-calibration.ts';
import { placeWords } from './point-checks.ts';
import type { PlacedPoint, RunSheet } from './run-sheet.ts';

/** Largest reading at zero force, as a part of the largest reading. Source: ISO 7500-1:2018 class 3, relative zero error (from memory). */
const largestZero = 0.003;

/** A sheet that stays below this part of the gauge's full scale was hardly read on that gauge in that unit. House rule. */
const leastOfGauge = 0.05;

/** Answers a check where the certificate of the load cell does not cover the calibration day, or there is none. */
export function checkCertificate(
  { calibratedOn, loadCell }: RunSheet,
  certificate: Certificate | null | undefined,
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

/** Answers a check where the readings go beyond the gauge's full scale, or would fit it in its own unit. */
export function checkGauge(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  gauge: Gauge | undefined,
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

/**
 * Answers one check where readings are no multiples of the smallest step that can be read on the gauge, naming the first.
 * Points named by another check are left out. Only where the sheet is in the gauge's own unit, since a conversion has
 * digits of its own. Source: ISO 7500-1:1999 6.2 for the resolution, by `readableStep`.
 */
export function checkGraduation(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  gauge: Gauge | undefined,
): readonly EntryCheck[] {
  if (gauge === undefined) return [];
  const { value: step, unit } = readableStep(gauge);
  if (unit !== units.reading || !(step > 0)) return [];
  const finer = points.filter(({ reading }) => Math.abs(reading / step - Math.round(reading / step)) > 1e-6);
  const [first] = finer;
  if (first === undefined) return [];
  const [below, above] = [Math.floor(first.reading / step), Math.ceil(first.reading / step)].map((steps) =>
    Number((steps * step).toPrecision(10)),
  );
  const others = finer.length === 1 ? '' : ` (${finer.length} such readings)`;
  const message = `${placeWords(first)}: the reading ${first.reading} ${unit} is finer than the gauge shows, steps of ${writeQuantity({ value: step, unit })}${others}; ${below} or ${above} would fit.`;
  return [{ code: 'finer-than-graduation', message, where: whereOf(first, 'reading'), weight: 'doubt' }];
}

/** Answers a check for forces above the capacity of the load cell, and one for forces below the part of it the rules allow. */
export function checkCell(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  cell: LoadCell | undefined,
  lowestOfCell: Limit | undefined,
): readonly EntryCheck[] {
  if (cell === undefined) return [];
  const partOf = (point: PlacedPoint): number =>
    convert(force, { value: point.force, unit: units.force }, cell.capacity.unit) / cell.capacity.value;
  const above = points.filter((point) => partOf(point) > 1);
  const lowest = lowestOfCell?.value ?? 0;
  const low = points.filter((point) => point.direction === 'up' && point.force > 0 && partOf(point) < lowest);
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
    const message = `${placeWords(firstLow)}: ${firstLow.force} ${units.force} is below ${Number((100 * lowest).toPrecision(6))} % of ${capacity}, where it is not used${others(low)}.`;
    checks.push({ code: 'cell-low-range', message, where: whereOf(firstLow, 'force'), weight: 'doubt' });
  }
  return checks;
}

/** Answers a check where a force is above the rating of the jack. */
export function checkJack(
  { units }: RunSheet,
  points: readonly PlacedPoint[],
  jack: Jack | undefined,
): readonly EntryCheck[] {
  if (jack === undefined) return [];
  const above = points.filter(
    (point) => convert(force, { value: point.force, unit: units.force }, jack.ratedForce.unit) > jack.ratedForce.value,
  );
  const [first] = above;
  if (first === undefined) return [];
  const others = above.length === 1 ? '' : ` (${above.length} such points)`;
  const message = `${placeWords(first)}: ${first.force} ${units.force} is above the rating of jack ${jack.tag}, ${writeQuantity(jack.ratedForce)}${others}.`;
  return [{ code: 'above-jack-rating', message, where: whereOf(first, 'force'), weight: 'error' }];
}

/** Answers a check for each part the sheet names and the plant does not know. */
export function checkNames(unknown: readonly UnknownName[]): readonly EntryCheck[] {
  const words = { pair: 'pair', loadCell: 'load cell' } as const;
  return unknown.map(({ where, name }) => ({
    code: 'unknown-name',
    message: `The plant has no ${words[where]} ${name}; the sheet is judged without it.`,
    where,
    weight: 'doubt',
  }));
}

/** A name in a sheet that stands for nothing in the plant. */
export interface UnknownName {
  readonly where: 'pair' | 'loadCell';
  readonly name: string;
}

/**
 * Answers a check for each point at zero force where the gauge did not return, by more than a graduation where it is known,
 * and for each rising point at zero reading where the load cell shows a force; where the reading is set it is not fitted.
 */
export function checkZero(
  { units, set }: RunSheet,
  points: readonly PlacedPoint[],
  gauge: Gauge | undefined,
): readonly EntryCheck[] {
  const largest = points.reduce((most, { reading }) => Math.max(most, reading), 0);
  const graduation = gauge === undefined ? 0 : convert(pressure, gauge.graduation, units.reading);
  const allowed = Math.max(largestZero * largest, graduation);
  const ofCell = points
    .filter((point) => set === 'reading' && point.direction === 'up' && point.reading === 0 && point.force > 0)
    .map((point): EntryCheck => {
      const shows = writeQuantity({ value: point.force, unit: units.force });
      const message = `${placeWords(point)}: the load cell shows ${shows} at zero reading; 0 would fit, and the point is left out of the curve.`;
      return { code: 'zero-not-returned', message, where: whereOf(point, 'force'), weight: 'doubt' };
    });
  const ofGauge = points
    .filter((point) => point.force === 0 && point.reading > allowed)
    .map((point): EntryCheck => {
      const shows = writeQuantity({ value: point.reading, unit: units.reading });
      const message = `${placeWords(point)}: the gauge shows ${shows} at zero force; at most ${writeQuantity({ value: allowed, unit: units.reading })} would fit.`;
      return { code: 'zero-not-returned', message, where: whereOf(point, 'reading'), weight: 'doubt' };
    });
  return [...ofGauge, ...ofCell];
}
