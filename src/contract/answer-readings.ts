// The body of a table of readings, of a pair or of a bare run sheet, by the same code on the server and on a device.
// One look-up alone is in answer-lookup.ts.

import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { LookupBasis } from '../domain/lookup/lookup-basis.ts';
import { type ReadingsTable, readingsTable, type TableRequest } from '../domain/lookup/readings-table.ts';
import { explainWarning } from '../domain/lookup/warning-meanings.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import { type ForceUnit, force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert, parseUnit, type Quantity } from '../domain/units/quantity.ts';
import { calibrationInForce, type PairOnDay, readTemperature } from './answer-lookup.ts';
import { readPositiveQuantity } from './quantity.ts';
import type { ReadingsAnswer, ReadingsQuery } from './readings-table.ts';

/** Answers the readings to set with a pair over a range. Problems: those of the query and of the table. */
export function answerReadings(
  { snapshot, basis, on }: PairOnDay,
  query: ReadingsQuery,
  ledgerHead: string,
): Outcome<ReadingsAnswer> {
  const table = tableOf(basis, query);
  if (!table.ok) return table;
  const { pair, jack } = snapshot;
  return succeed({
    ...bodyOf(table.value, basis, on),
    standing: basis.standing.standing,
    because: basis.standing.because,
    dueDate: basis.standing.dueDate,
    pair: { tag: pair.tag, jack: pair.jack, gauge: pair.gauge, strandsPulled: jack.strandsPulled },
    calibration: calibrationInForce(snapshot),
    ledgerHead,
  });
}

/** Answers the same on a bare run sheet, which has no pair and no due day and stands in no ledger. */
export function answerReadingsOfSheet(basis: LookupBasis, query: ReadingsQuery, on: PlantDay): Outcome<ReadingsAnswer> {
  const table = tableOf(basis, query);
  if (!table.ok) return table;
  return succeed({
    ...bodyOf(table.value, basis, on),
    standing: null,
    because: null,
    dueDate: null,
    pair: null,
    calibration: null,
    ledgerHead: null,
  });
}

function tableOf(basis: LookupBasis, query: ReadingsQuery): Outcome<ReadingsTable> {
  const request = readRequest(basis, query);
  if (!request.ok) return request;
  const temperature = readTemperature(query.temperature);
  if (!temperature.ok) return temperature;
  return readingsTable(basis, request.value, { temperatureCelsius: temperature.value });
}

/** A number without a unit takes the unit asked for, so that from=10&to=40&step=2&unit=kip needs it once. */
function readRequest(basis: LookupBasis, query: ReadingsQuery): Outcome<TableRequest> {
  const asked = query.unit === undefined ? null : parseUnit(force, query.unit, 'unit');
  if (asked !== null && !asked.ok) return asked;
  const read = (field: 'from' | 'to' | 'step'): Outcome<Quantity<ForceUnit> | null> => {
    const text = query[field];
    if (text === undefined) return succeed(null);
    const isPlain = asked !== null && !/[a-z]/i.test(text.replace(/e[+-]?\d+\s*$/i, ''));
    return readPositiveQuantity(force, isPlain ? `${text} ${asked.value}` : text, field);
  };
  const from = read('from');
  if (!from.ok) return from;
  const to = read('to');
  if (!to.ok) return to;
  const step = read('step');
  if (!step.ok) return step;
  const unit =
    asked?.value ??
    step.value?.unit ??
    from.value?.unit ??
    to.value?.unit ??
    basis.curve?.units.force ??
    basis.jack?.ratedForce.unit ??
    'kN';
  const inUnit = (quantity: Quantity<ForceUnit> | null) => (quantity === null ? null : convert(force, quantity, unit));
  return succeed({ unit, from: inUnit(from.value), to: inUnit(to.value), step: inUnit(step.value) });
}

function bodyOf(table: ReadingsTable, { step }: LookupBasis, asOf: PlantDay) {
  return {
    ...table,
    gaugeStep: convert(pressure, step, table.readingUnit),
    rows: table.rows.map((row) => ({ ...row, warnings: [...row.warnings] })),
    rowWarnings: [...new Set(table.rows.flatMap((row) => row.warnings))].map(explainWarning),
    warnings: [...table.warnings],
    asOf,
  };
}
