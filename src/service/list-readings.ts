// A table of readings to set over a range of forces on the server, of a pair or a bare run sheet.
// What is asked and answered is the business of contract/answer-readings.ts.

import { answerReadings, answerReadingsOfSheet } from '../contract/answer-readings.ts';
import type { ReadingsAnswer, ReadingsQuery } from '../contract/readings-table.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { Outcome } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import { findPair } from './find-record.ts';
import { pairBasis } from './pair-basis.ts';
import type { Plant } from './plant.ts';
import { type SheetFitOptions, sheetBasis } from './sheet-basis.ts';

/** Answers the readings to set with a pair over a range. Problems: `unknown-pair`, those of the query and of the table. */
export function listReadings(plant: Plant, tag: string, query: ReadingsQuery): Outcome<ReadingsAnswer> {
  const record = findPair(plant.state, tag);
  if (!record.ok) return record;
  const found = pairBasis(plant, record.value, query.on ?? plant.today());
  return found.ok ? answerReadings(found.value, query, writeShortHead(plant.state.head)) : found;
}

/** Answers the same for a bare run sheet: no pair, no due day. Problems: those of the fit, the query and the table. */
export function listReadingsOfSheet(
  sheet: RunSheet,
  rules: RuleProfile,
  query: ReadingsQuery,
  options: SheetFitOptions & { readonly today: PlantDay },
): Outcome<ReadingsAnswer> {
  const basis = sheetBasis(sheet, rules, options);
  return basis.ok ? answerReadingsOfSheet(basis.value, query, query.on ?? options.today) : basis;
}
