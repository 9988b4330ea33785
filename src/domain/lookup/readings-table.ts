// A table of readings to set over a range of forces: one look-up per row. One look-up alone is in look-up-reading.ts.

import { forceBehindReading, type WorkingCurve } from '../calibration/curve.ts';
import type { Gauge } from '../equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../problem.ts';
import { type ForceUnit, force } from '../units/force.ts';
import { type PressureUnit, pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantity, writeQuantityInFull } from '../units/write-quantity.ts';
import type { DoNotExceed } from './do-not-exceed.ts';
import { warningsOfStanding } from './judge-target.ts';
import { lookUpReading } from './look-up-reading.ts';
import type { LookupBasis, LookupOptions } from './lookup-basis.ts';
import type { LookupResult } from './lookup-result.ts';
import { byWeight, type Warning, type WarningCode, warn } from './warning.ts';

/** Which rows are wanted, all in `unit`; null leaves it to the pair. */
export interface TableRequest {
  readonly unit: ForceUnit;
  readonly from: number | null;
  readonly to: number | null;
  readonly step: number | null;
}

/** One row, forces in the table's unit and readings in its reading unit; as a look-up of `force` answers it. */
export interface TableRow {
  readonly force: number;
  readonly reading: number;
  readonly readingToSet: number | null;
  readonly forceAtReadingToSet: number | null;
  readonly roundingError: number | null;
  readonly roundingErrorPercent: number | null;
  readonly expandedUncertainty: number | null;
  /** What must be heeded at this row and not at every one. */
  readonly warnings: readonly WarningCode[];
}

/** Where the rows begin or end and why: as asked, or because nothing beyond may be set. */
export interface TableEnd {
  readonly force: number;
  readonly because: 'asked' | 'calibrated-range' | 'jack-rating' | 'gauge-span';
}

export interface ReadingsTable {
  readonly outcome: LookupResult['outcome'];
  readonly unit: ForceUnit;
  readonly readingUnit: PressureUnit;
  /** From row to row; null without rows. */
  readonly step: number | null;
  readonly lowest: TableEnd | null;
  readonly highest: TableEnd | null;
  readonly rows: readonly TableRow[];
  readonly doNotExceed: DoNotExceed | null;
  readonly warnings: readonly Warning[];
}

/** More rows than this are no table for a person. House rule. */
export const mostRows = 500;

/** A step left to the program gives at most this many intervals, so that the table fits one printed page. House rule. */
const ownIntervals = 25;

/** Warnings that belong to single rows; a table has no preload. */
const ofRow: readonly WarningCode[] = [
  'near-end-of-range',
  'outside-dial-window',
  'graduation-too-coarse',
  'gauge-class-coarse',
  'interval-not-finite',
];

/**
 * Answers the readings to set from force to force, each row as `lookUpReading` gives it, and why the rows begin and end
 * where they do. Left to the pair: the calibrated range, at the least step of 1, 2 or 5 x 10^n that makes at most 25
 * intervals. Rows lie at `from` plus whole steps, without `from` at whole steps from zero.
 * Range: calibrated range, jack rating and gauge span; what is asked beyond them has no rows, and where nothing is left the
 * outcome is `refused`. A stop gives `withheld`: single readings are released, never a table.
 * Problems: `field-invalid` where `from` lies above `to`, `number-out-of-range` for more than 500 rows or none.
 * Source: design of the program, "Calculations" 11.
 */
export function readingsTable(
  basis: LookupBasis,
  asked: TableRequest,
  { temperatureCelsius }: Pick<LookupOptions, 'temperatureCelsius'> = {},
): Outcome<ReadingsTable> {
  const { from, to, unit } = asked;
  if (from !== null && to !== null && from > to) {
    return fail('field-invalid', `The table cannot run from ${from} to ${to} ${unit}.`, {
      where: 'from',
      needed: `a force of at most ${to} ${unit}`,
      given: `${from} ${unit}`,
    });
  }
  const standing = warningsOfStanding(basis);
  const empty = (outcome: 'withheld' | 'refused', warnings: readonly Warning[]): Outcome<ReadingsTable> =>
    succeed({ ...withoutRows(basis, unit), outcome, warnings: byWeight(warnings) });
  if (basis.curve === null || standing.some(({ weight }) => weight === 'refuse')) return empty('refused', standing);
  if (standing.some(({ weight }) => weight === 'stop')) return empty('withheld', standing);
  const { lowest, highest } = endsOf(basis, basis.curve, asked);
  if (lowest.force > highest.force) {
    return empty('refused', [...standing, nothingToSet(basis, basis.curve, asked, highest.because)]);
  }
  const step = asked.step ?? roundStep(highest.force - lowest.force);
  if (!(step > 0 && Number.isFinite(step))) {
    return fail('number-out-of-range', 'The step of a table lies above zero.', {
      where: 'step',
      needed: 'a number above zero',
      given: `${step} ${unit}`,
    });
  }
  const places = placesOf(lowest.force, highest.force, { anchor: from ?? 0, step });
  if (!places.ok) return { ok: false, problem: { ...places.problem, given: `${step} ${unit}` } };
  const results = places.value
    .map((value) =>
      lookUpReading(
        basis,
        { force: { value, unit }, ceiling: null, preload: null },
        { released: null, temperatureCelsius },
      ),
    )
    .filter(({ outcome }) => outcome === 'given');
  return succeed({
    outcome: 'given',
    unit,
    readingUnit: withoutRows(basis, unit).readingUnit,
    step,
    lowest,
    highest,
    rows: results.flatMap(rowOf),
    doNotExceed: results[0]?.doNotExceed ?? null,
    warnings: byWeight(warningsOfAll(results)),
  });
}

function withoutRows(basis: LookupBasis, unit: ForceUnit): Omit<ReadingsTable, 'outcome' | 'warnings'> {
  const readingUnit = basis.gauge?.fullScale.unit ?? basis.curve?.units.reading ?? 'MPa';
  return { unit, readingUnit, step: null, lowest: null, highest: null, rows: [], doNotExceed: null };
}

function endsOf(
  { jack, gauge }: LookupBasis,
  curve: WorkingCurve,
  { from, to, unit }: TableRequest,
): { readonly lowest: TableEnd; readonly highest: TableEnd } {
  const inUnit = (value: number): number => convert(force, { value, unit: curve.units.force }, unit);
  const low = inUnit(curve.forceRange.low);
  let highest: TableEnd = { force: inUnit(curve.forceRange.high), because: 'calibrated-range' };
  const span = gauge === null ? Number.POSITIVE_INFINITY : inUnit(forceAtFullScale(gauge, curve));
  if (span < highest.force) highest = { force: span, because: 'gauge-span' };
  const rated = jack === null ? Number.POSITIVE_INFINITY : convert(force, jack.ratedForce, unit);
  if (rated < highest.force) highest = { force: rated, because: 'jack-rating' };
  if (to !== null && to <= highest.force) highest = { force: to, because: 'asked' };
  const lowest: TableEnd =
    from !== null && from >= low ? { force: from, because: 'asked' } : { force: low, because: 'calibrated-range' };
  return { lowest, highest };
}

/** Infinite where the gauge reaches beyond the calibrated range, minus infinite where it ends below it and nothing can be set. */
function forceAtFullScale({ fullScale }: Gauge, curve: WorkingCurve): number {
  const reading = convert(pressure, fullScale, curve.units.reading);
  if (reading > curve.readingRange.high) return Number.POSITIVE_INFINITY;
  const behind = forceBehindReading(curve, reading);
  return behind.ok ? behind.value : Number.NEGATIVE_INFINITY;
}

/** Why there is no row: the warning a look-up of any force of the table would meet. */
function nothingToSet(
  { jack, gauge }: LookupBasis,
  curve: WorkingCurve,
  { from, to, unit }: TableRequest,
  because: TableEnd['because'],
): Warning {
  if (because === 'jack-rating' && jack !== null) {
    const rated = writeQuantityInFull(jack.ratedForce);
    return warn('above-jack-rating', `Every force of the table is above the jack's rating of ${rated}.`);
  }
  if (because === 'gauge-span' && gauge !== null) {
    const span = writeQuantityInFull(gauge.fullScale);
    return warn('above-gauge-span', `Every reading of the table is above the gauge's full scale of ${span}.`);
  }
  const { low, high } = curve.forceRange;
  const write = (value: number): string => writeQuantity({ value, unit: curve.units.force });
  const asked = [from, to].flatMap((value) => (value === null ? [] : [writeQuantityInFull({ value, unit })]));
  return warn(
    'outside-calibrated-range',
    `No force of ${asked.join(' to ')} can be set: calibrated are ${write(low)} to ${write(high)}; nothing is extrapolated.`,
  );
}

/** The least of 1, 2 or 5 x 10^n that divides a range into at most `ownIntervals`. */
function roundStep(range: number): number {
  const least = range > 0 ? range / ownIntervals : 1;
  const power = Math.floor(Math.log10(least));
  for (const digit of [1, 2, 5]) {
    const step = Number(`${digit}e${power}`);
    if (step >= least * (1 - 1e-12)) return step;
  }
  return Number(`1e${power + 1}`);
}

/** The forces of the rows, as decimal as their step is. */
function placesOf(
  low: number,
  high: number,
  { anchor, step }: { readonly anchor: number; readonly step: number },
): Outcome<readonly number[]> {
  const first = Math.ceil((low - anchor) / step - 1e-9);
  const last = Math.floor((high - anchor) / step + 1e-9);
  const count = last - first + 1;
  if (count > mostRows) {
    const least = roundUp((high - low) / (mostRows - 1));
    return fail('number-out-of-range', `A table of ${count} rows is too long; at most ${mostRows} are given.`, {
      where: 'step',
      needed: `a step of about ${least} or more, or a shorter range`,
    });
  }
  if (count < 1) {
    return fail('number-out-of-range', 'No whole step falls between the two ends of the table.', {
      where: 'step',
      needed: `a step below ${Number((high - low).toPrecision(3))}`,
    });
  }
  // Twelve digits are coarser than the slack of the calibrated range, so a row at an end of it is put on the end itself.
  const within = (value: number): number => Math.min(high, Math.max(low, value));
  const place = (row: number): number => within(Number((anchor + (first + row) * step).toPrecision(12)));
  return succeed(Array.from({ length: count }, (_, row) => place(row)));
}

/** Two significant digits, never less than the value. */
function roundUp(value: number): number {
  const power = 10 ** (Math.floor(Math.log10(value)) - 1);
  return Number((Math.ceil(value / power - 1e-9) * power).toPrecision(2));
}

function rowOf(result: LookupResult): readonly TableRow[] {
  const { force: target, reading, readingToSet, forceAtReadingToSet, roundingError, uncertainty, warnings } = result;
  if (target === null || reading === null) return [];
  return [
    {
      force: target.value,
      reading: reading.value,
      readingToSet: readingToSet?.value ?? null,
      forceAtReadingToSet: forceAtReadingToSet?.value ?? null,
      roundingError: roundingError?.value ?? null,
      roundingErrorPercent: roundingError?.percent ?? null,
      expandedUncertainty: uncertainty?.expanded ?? null,
      warnings: warnings.map(({ code }) => code).filter((code) => ofRow.includes(code)),
    },
  ];
}

/** What every row says, once. */
function warningsOfAll(results: readonly LookupResult[]): readonly Warning[] {
  const [first] = results;
  return (first?.warnings ?? []).filter(({ code }) => !ofRow.includes(code) && code !== 'preload-not-given');
}
