// Looking up a reading or a force on the server: of a pair of the plant, or on a bare run sheet.
// What is asked and answered is the business of contract/answer-lookup.ts.

import { answerLookup, answerLookupOfSheet, type Released } from '../contract/answer-lookup.ts';
import type { LookupAnswer, LookupQuery } from '../contract/lookup.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import type { PlantDay } from '../domain/dates/plant-day.ts';
import type { Outcome } from '../domain/problem.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { findPair } from './find-record.ts';
import { pairBasis } from './pair-basis.ts';
import type { Plant } from './plant.ts';
import { type SheetFitOptions, sheetBasis } from './sheet-basis.ts';

/** Answers the reading to set with a pair, or the force behind a reading. Problems: `unknown-pair`, those of the query. */
export function lookUpPair(plant: Plant, tag: string, query: LookupQuery, released: Released): Outcome<LookupAnswer> {
  const record = findPair(plant.state, tag);
  if (!record.ok) return record;
  const found = pairBasis(plant, record.value, query.on ?? plant.today());
  return found.ok ? answerLookup(found.value, query, released) : found;
}

/** Answers a look-up on a bare run sheet: no pair, no due day; what acceptance finds is a warning, never a refusal. */
export function lookUpSheet(
  sheet: RunSheet,
  rules: RuleProfile,
  query: LookupQuery,
  options: SheetFitOptions & { readonly today: PlantDay },
): Outcome<LookupAnswer> {
  const basis = sheetBasis(sheet, rules, options);
  return basis.ok ? answerLookupOfSheet(basis.value, query, query.on ?? options.today) : basis;
}
