// The verdict on a calibration against the limits of a rule profile.
// The figures come from levels.ts; what merely looks wrong in the sheet is in entry-checks.ts.

import type { Certificate } from '../equipment/equipment.ts';
import type { Limit, Provenance, RuleProfile } from '../rules/rule-profile.ts';
import type { AreaUnit } from '../units/area.ts';
import type { Quantity } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import type { Curve } from './curve.ts';
import type { CalibrationLevel } from './levels.ts';
import { fittedPoints, type RunSheet } from './run-sheet.ts';

export type Verdict = 'pass' | 'conditional' | 'fail' | 'not-judged';
export type AcceptanceRule =
  | 'accuracy'
  | 'repeatability'
  | 'cycles'
  | 'levels'
  | 'certificate'
  | 'loading'
  | 'load-efficiency';

export interface AcceptanceResult {
  readonly rule: AcceptanceRule;
  /** In %, a count or a ratio; null where there is nothing to judge. */
  readonly value: number | null;
  readonly limit: number;
  readonly verdict: Verdict;
  /** Where the limit comes from and how it is known. */
  readonly basis: string;
  readonly message: string;
}

export interface AcceptanceContext {
  /** The load cell's certificate valid on the calibration day; null when there was none, left out when not known. */
  readonly certificate?: Certificate | null | undefined;
  /** Nominal effective area of the jack's piston, from which the levels took the load efficiency. */
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
}

/**
 * Answers, rule by rule, whether a calibration holds the limits of a profile; a value equal to its limit passes.
 * Accuracy: the largest |q| of any level. Repeatability: the largest b. Cycles: those with rising points above zero.
 * Levels: how many different ones. Certificate: of the load cell, valid on the calibration day. Loading: the jack pushed the cell. Load efficiency: the level furthest outside its two limits, `conditional` at worst,
 * since a wrong area on paper does not make the curve wrong.
 * `not-judged` where there is nothing to judge: no level met twice, no load cell named, not said how it was loaded, no nominal area.
 * Source: the limits' own, named in `basis`; the quantities in levels.ts; simple acceptance after JCGM 106:2012 8.2.1.
 */
export function judgeAcceptance(
  sheet: RunSheet,
  curve: Curve,
  levels: readonly CalibrationLevel[],
  rules: RuleProfile,
  context: AcceptanceContext,
): readonly AcceptanceResult[] {
  const unit = curve.response === 'reading' ? curve.units.force : curve.units.reading;
  const at = (level: CalibrationLevel): string => `at ${writeQuantity({ value: level.set, unit })}`;
  const cycles = new Set(fittedPoints(sheet).map(({ cycle }) => cycle)).size;
  return [
    judgeLargest('accuracy', levels, ({ accuracyErrorPercent }) => accuracyErrorPercent, {
      limit: rules.accuracyPercent,
      at,
      what: 'deviation of a level from the curve',
      missing: 'There is no level to judge.',
    }),
    judgeLargest('repeatability', levels, ({ repeatabilityPercent }) => repeatabilityPercent, {
      limit: rules.repeatabilityPercent,
      at,
      what: 'spread of the cycles at one level',
      missing: 'No level was met more than once, so the repeatability is not known.',
    }),
    judgeCount('cycles', cycles, rules.minimumCycles, 'cycles with rising points'),
    judgeCount('levels', levels.length, rules.minimumLevels, 'different levels'),
    judgeCertificate(rules.validCertificates, context.certificate),
    judgeLoading(rules.activeLoading, sheet.loading),
    judgeEfficiency(levels, rules, context, at),
  ];
}

/** Answers the one word for all rules: the worst of them. `not-judged` rules do not count, unless there is no other. */
export function overallVerdict(results: readonly AcceptanceResult[]): Verdict {
  for (const verdict of ['fail', 'conditional', 'pass'] as const) {
    if (results.some((result) => result.verdict === verdict)) return verdict;
  }
  return 'not-judged';
}

const provenanceWords: Readonly<Record<Provenance, string>> = {
  read: 'read in the document or a reproduction of it',
  memory: 'from memory',
  computed: 'computed from exact values',
  practice: 'common practice, no source',
  house: 'house rule',
};

/** Where a limit comes from and how it is known, in words. */
export function writeBasis(limit: Limit): string {
  return `${limit.source} (${provenanceWords[limit.provenance]})`;
}

function judgeLargest(
  rule: AcceptanceRule,
  levels: readonly CalibrationLevel[],
  figureOf: (level: CalibrationLevel) => number | null,
  words: {
    readonly limit: Limit;
    readonly at: (level: CalibrationLevel) => string;
    readonly what: string;
    readonly missing: string;
  },
): AcceptanceResult {
  const { limit, at, what, missing } = words;
  const judged = { rule, limit: limit.value, basis: writeBasis(limit) };
  let worst: { readonly level: CalibrationLevel; readonly size: number } | null = null;
  for (const level of levels) {
    const value = figureOf(level);
    if (value !== null && (worst === null || Math.abs(value) > worst.size)) worst = { level, size: Math.abs(value) };
  }
  if (worst === null) return { ...judged, value: null, verdict: 'not-judged', message: missing };
  const figure = `${writeQuantity({ value: worst.size, unit: '%' })} of force ${at(worst.level)}`;
  return {
    ...judged,
    value: worst.size,
    verdict: worst.size <= limit.value ? 'pass' : 'fail',
    message: `Largest ${what}: ${figure}; the limit is ${limit.value} %.`,
  };
}

function judgeCount(rule: AcceptanceRule, count: number, limit: Limit, what: string): AcceptanceResult {
  return {
    rule,
    value: count,
    limit: limit.value,
    verdict: count >= limit.value ? 'pass' : 'fail',
    basis: writeBasis(limit),
    message: `The sheet has ${count} ${what}; at least ${limit.value} are needed.`,
  };
}

function judgeCertificate(limit: Limit, certificate: Certificate | null | undefined): AcceptanceResult {
  const judged = { rule: 'certificate', limit: limit.value, basis: writeBasis(limit) } as const;
  if (certificate === undefined) {
    return {
      ...judged,
      value: null,
      verdict: 'not-judged',
      message: 'No load cell is named, so its certificate is not judged.',
    };
  }
  if (certificate === null) {
    const message = 'The load cell had no certificate valid on the calibration day.';
    return { ...judged, value: 0, verdict: limit.value > 0 ? 'fail' : 'pass', message };
  }
  const { number, loadCell, validUntil } = certificate;
  const message = `Certificate ${number} of load cell ${loadCell} was valid on the calibration day, until ${validUntil}.`;
  return { ...judged, value: 1, verdict: 'pass', message };
}

function judgeLoading(limit: Limit, loading: RunSheet['loading']): AcceptanceResult {
  const judged = { rule: 'loading', limit: limit.value, basis: writeBasis(limit) } as const;
  if (loading === undefined) {
    return { ...judged, value: null, verdict: 'not-judged', message: 'The sheet does not say what pushed what.' };
  }
  if (loading === 'active') return { ...judged, value: 1, verdict: 'pass', message: 'The jack pushed the load cell.' };
  const message = 'A machine pushed the jack: seal friction acts the other way, so this is not a stressing curve.';
  return { ...judged, value: 0, verdict: limit.value > 0 ? 'fail' : 'pass', message };
}

function judgeEfficiency(
  levels: readonly CalibrationLevel[],
  rules: RuleProfile,
  { pistonArea }: AcceptanceContext,
  at: (level: CalibrationLevel) => string,
): AcceptanceResult {
  const { efficiencyLow: low, efficiencyHigh: high } = rules;
  const beyond = (value: number): number => Math.max(low.value - value, value - high.value);
  let worst: { readonly level: CalibrationLevel; readonly value: number } | null = null;
  for (const level of levels) {
    const value = level.loadEfficiency;
    if (value !== null && (worst === null || beyond(value) > beyond(worst.value))) worst = { level, value };
  }
  const limit = worst !== null && worst.value - high.value > low.value - worst.value ? high : low;
  const judged = { rule: 'load-efficiency', limit: limit.value, basis: writeBasis(limit) } as const;
  if (worst === null) {
    const message =
      pistonArea === undefined
        ? "The jack's nominal piston area is not known, so the load efficiency is not judged."
        : 'No level has a load efficiency to judge.';
    return { ...judged, value: null, verdict: 'not-judged', message };
  }
  const holds = beyond(worst.value) <= 0;
  const advice = holds ? '' : ' Check the nominal area, the units, the zero of the gauge and how the jack was loaded.';
  return {
    ...judged,
    value: worst.value,
    verdict: holds ? 'pass' : 'conditional',
    message: `Load efficiency ${Number(worst.value.toPrecision(4))} ${at(worst.level)}; ${low.value} to ${high.value} is expected.${advice}`,
  };
}
