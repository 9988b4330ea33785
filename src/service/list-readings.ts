// A table of readings to set over a range of forces, of a pair or a bare run sheet.

import { readPositiveQuantity } from '../contract/quantity.ts';
import type { ReadingsAnswer, ReadingsQuery } from '../contract/readings-table.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { LookupBasis } from '../domain/lookup/lookup-basis.ts';
import { type ReadingsTable, readingsTable, type TableRequest } from '../domain/lookup/readings-table.ts';
import { explainWarning } from '../domain/lookup/warning.ts';
import { type Outcome, succeed } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { type ForceUnit, force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { convert, parseUnit, type Quantity } from '../domain/units/quantity.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import { findPair } from './find-record.ts';
import { calibrationOf, readTemperature } from './look-up.ts';
import { pairBasis } from './pair-basis.ts';
import type { Plant } from './plant.ts';
import { type SheetFitOptions, sheetBasis } from './sheet-basis.ts';

/** Answers the readings to set with a pair over a range. Problems: `unknown-pair`, those of the query and of the table. */
export function listReadings(plant: Plant, tag: string, query: ReadingsQuery): Outcome<ReadingsAnswer> {
  const record = findPair(plant.state, tag);
  if (!record.ok) return record;
  const on = query.on ?? plant.today();
  const found = pairBasis(plant, record.value, on);
  if (!found.ok) return found;
  const { basis, standing, current } = found.value;
  const table = tableOf(basis, query);
  if (!table.ok) return table;
  const { pair } = record.value;
  const strandsPulled = basis.jack?.strandsPulled ?? 1;
  return succeed({
    ...answerOf(table.value, basis, on),
    standing: standing.standing,
    because: standing.because,
    dueDate: standing.dueDate,
    pair: { tag: pair.tag, jack: pair.jack, gauge: pair.gauge, strandsPulled },
    calibration: calibrationOf(current),
    ledgerHead: writeShortHead(plant.state.head),
  });
}

/** Answers the same for a bare run sheet: no pair, no due day. Problems: those of the fit, the query and the table. */
export function listReadingsOfSheet(
  sheet: RunSheet,
  rules: RuleProfile,
  query: ReadingsQuery,
  options: SheetFitOptions & { readonly today: PlantDay },
): Outcome<ReadingsAnswer> {
  const basis = sheetBasis(sheet, rules, options);
  if (!basis.ok) return basis;
  const table = tableOf(basis.value, query);
  if (!table.ok) return table;
  return succeed({
    ...answerOf(table.value, basis.value, query.on ?? options.today),
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

function answerOf(table: ReadingsTable, { step }: LookupBasis, asOf: PlantDay) {
  return {
    ...table,
    gaugeStep: convert(pressure, step, table.readingUnit),
    rows: table.rows.map((row) => ({ ...row, warnings: [...row.warnings] })),
    rowWarnings: [...new Set(table.rows.flatMap((row) => row.warnings))].map(explainWarning),
    warnings: [...table.warnings],
    asOf,
  };
}
