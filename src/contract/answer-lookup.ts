// The body of a look-up, of a pair or of a bare run sheet: what is asked in words becomes a target, the domain answers. The
// server and a device without network answer by this same code. The table of readings is in answer-readings.ts.

import type { PlantDay } from '../domain/dates/plant-day.ts';
import { lookUpForce } from '../domain/lookup/look-up-force.ts';
import { lookUpReading } from '../domain/lookup/look-up-reading.ts';
import type { LookupBasis, LookupTarget } from '../domain/lookup/lookup-basis.ts';
import type { LookupResult } from '../domain/lookup/lookup-result.ts';
import type { PairBasis, PairSnapshot } from '../domain/lookup/pair-snapshot.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { jackingForce } from '../domain/strand/jacking-force.ts';
import { columnFor } from '../domain/strand/strand-row.ts';
import { findStrand, strandTable } from '../domain/strand/strand-table.ts';
import { stressCeiling } from '../domain/strand/stress-ceiling.ts';
import { force } from '../domain/units/force.ts';
import { parseNumber } from '../domain/units/number.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert } from '../domain/units/quantity.ts';
import { parseTemperature } from '../domain/units/temperature.ts';
import type { LookupAnswer, LookupQuery } from './lookup.ts';
import { readPositiveQuantity } from './quantity.ts';

/** A named person who lets a withheld reading be shown. */
export type Released = { readonly name: string } | null;

/** A pair and what look-ups of it rest on at the day asked for. */
export interface PairOnDay {
  readonly snapshot: PairSnapshot;
  readonly basis: PairBasis;
  readonly on: PlantDay;
}

/** Answers the reading to set with a pair, or the force behind a reading. Problems: those of the query. */
export function answerLookup(
  { snapshot, basis, on }: PairOnDay,
  query: LookupQuery,
  released: Released,
): Outcome<LookupAnswer> {
  const { pair } = snapshot;
  const fraction = readFraction(query.fraction);
  if (!fraction.ok) return fraction;
  const result = answerQuery(basis, query, released);
  if (!result.ok) return result;
  return succeed({
    ...bodyOf(result.value, on),
    standing: basis.standing.standing,
    because: basis.standing.because,
    dueDate: basis.standing.dueDate,
    pair: {
      tag: pair.tag,
      jack: pair.jack,
      gauge: pair.gauge,
      strandsPulled: snapshot.jack.strandsPulled,
      strand: query.strand ?? null,
      fraction: fraction.value,
    },
    calibration: calibrationInForce(snapshot),
    dial: dialOf(basis),
  });
}

/** Answers the same on a bare run sheet, which has no pair, no standing and no due day. */
export function answerLookupOfSheet(basis: LookupBasis, query: LookupQuery, on: PlantDay): Outcome<LookupAnswer> {
  const result = answerQuery(basis, query, null);
  if (!result.ok) return result;
  return succeed({
    ...bodyOf(result.value, on),
    standing: null,
    because: null,
    dueDate: null,
    pair: null,
    calibration: null,
    dial: null,
  });
}

function answerQuery(basis: LookupBasis, query: LookupQuery, released: Released): Outcome<LookupResult> {
  const temperature = readTemperature(query.temperature);
  if (!temperature.ok) return temperature;
  const options = { released, temperatureCelsius: temperature.value };
  if (query.reading !== undefined) {
    if (query.force !== undefined || query.strand !== undefined) {
      return fail('usage', 'Ask for a force or for a reading, not for both.', { where: 'reading' });
    }
    const reading = readPositiveQuantity(pressure, query.reading, 'reading');
    if (!reading.ok) return reading;
    const unit = basis.curve?.units.force ?? 'kN';
    return succeed(lookUpForce(basis, reading.value, { unit, ...options }));
  }
  const target = readTarget(basis, query);
  return target.ok ? succeed(lookUpReading(basis, target.value, options)) : target;
}

function readTarget(basis: LookupBasis, query: LookupQuery): Outcome<LookupTarget> {
  const preload = query.preload === undefined ? null : readPositiveQuantity(force, query.preload, 'preload');
  if (preload !== null && !preload.ok) return preload;
  const common = { preload: preload?.value ?? null };
  const strands = basis.jack?.strandsPulled ?? 1;
  const strand =
    query.strand === undefined ? null : findStrand(query.strand, 'strand', [...strandTable, ...basis.ownStrands]);
  if (strand !== null && !strand.ok) return strand;
  if (query.force !== undefined) {
    if (query.fraction !== undefined) {
      return fail('usage', 'Give a force, or a strand with a fraction; a fraction of a given force means nothing.', {
        where: 'fraction',
      });
    }
    const asked = readPositiveQuantity(force, query.force, 'force');
    if (!asked.ok) return asked;
    const column = columnFor(asked.value.unit);
    const ceiling = strand === null ? null : stressCeiling(strand.value, column, { strands, rules: basis.rules });
    return succeed({ ...common, force: asked.value, ceiling });
  }
  if (strand === null) {
    return fail('field-missing', 'A target is needed: a force, or a strand with a fraction.', {
      where: 'force',
      needed: 'force "31 kip", or strand "1/2 in 270" with fraction 0.75',
    });
  }
  const fraction = readFraction(query.fraction);
  if (!fraction.ok) return fraction;
  if (fraction.value === null) {
    return fail('field-missing', 'A strand needs the fraction of its breaking load that is pulled.', {
      where: 'fraction',
      needed: 'a number above 0 and at most 1, for example 0.75',
    });
  }
  const column = columnFor(basis.curve?.units.force ?? basis.jack?.ratedForce.unit ?? 'kN');
  return succeed({
    ...common,
    force: jackingForce(strand.value, column, { fraction: fraction.value, strands }),
    ceiling: stressCeiling(strand.value, column, { strands, rules: basis.rules }),
  });
}

/** Answers the temperature at work in degrees Celsius; undefined where none was given. */
export function readTemperature(input: string | undefined): Outcome<number | undefined> {
  return input === undefined ? succeed(undefined) : parseTemperature(input, 'temperature');
}

function bodyOf(result: LookupResult, asOf: PlantDay) {
  const { uncertainty, warnings } = result;
  return {
    ...result,
    uncertainty: uncertainty === null ? null : { ...uncertainty, contributions: [...uncertainty.contributions] },
    asOf,
    warnings: [...warnings],
  };
}

/** Answers the calibration in force as every look-up shows it. */
export function calibrationInForce({ inForce, worksBy }: PairSnapshot): LookupAnswer['calibration'] {
  if (inForce === null) return null;
  const { number, approvedIn, calibratedOn, loadCell } = inForce;
  const certificate = worksBy?.certificate ?? null;
  return {
    number,
    approvedIn,
    calibratedOn,
    loadCell,
    certificate: certificate?.number ?? null,
    laboratory: certificate?.laboratory ?? null,
  };
}

function dialOf(basis: LookupBasis): LookupAnswer['dial'] {
  if (basis.gauge === null) return null;
  const { display, fullScale, graduation } = basis.gauge;
  if (basis.curve === null) return { display, fullScale, graduation, calibrated: null };
  const { units, readingRange } = basis.curve;
  const onDial = (value: number): number => convert(pressure, { value, unit: units.reading }, fullScale.unit);
  const calibrated = { low: onDial(readingRange.low), high: onDial(readingRange.high) };
  return { display, fullScale, graduation, calibrated };
}

/** Answers the fraction of the breaking load that was asked for; null where none was. */
function readFraction(input: LookupQuery['fraction']): Outcome<number | null> {
  if (input === undefined) return succeed(null);
  const number = typeof input === 'number' ? succeed(input) : parseNumber(input, 'fraction');
  if (!number.ok || (number.value > 0 && number.value <= 1)) return number;
  return fail('number-out-of-range', `A fraction of the breaking load cannot be ${input}.`, {
    where: 'fraction',
    needed: 'a number above 0 and at most 1, for example 0.75',
    given: String(input),
  });
}
