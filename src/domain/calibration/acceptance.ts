// The verdict on a calibration against the limits of a rule profile.
// The figures come from levels.ts, the shape of a result is in acceptance-result.ts; what merely looks wrong in the sheet
// is in entry-checks.ts.

import { daysBetween } from '../dates/plant-day.ts';
import type { Certificate } from '../equipment/equipment.ts';
import type { Limit, RuleProfile } from '../rules/rule-profile.ts';
import type { AreaUnit } from '../units/area.ts';
import type { Quantity } from '../units/quantity.ts';
import { writeQuantity } from '../units/write-quantity.ts';
import { type AcceptanceResult, type AcceptanceRule, withoutUncertainty, writeBasis } from './acceptance-result.ts';
import type { Curve } from './curve.ts';
import { judgeAccuracy } from './judge-accuracy.ts';
import type { CalibrationLevel } from './levels.ts';
import { fittedPoints, type RunSheet } from './run-sheet.ts';
import { type ZeroCheck, zeroChecks, zeroErrorPercent } from './zero-checks.ts';

export interface AcceptanceContext {
  /** The load cell's certificate valid on the calibration day; null when there was none, left out when not known. */
  readonly certificate?: Certificate | null | undefined;
  /** Nominal effective area of the jack's piston, from which the levels took the load efficiency. */
  readonly pistonArea?: Quantity<AreaUnit> | undefined;
}

/**
 * Answers, rule by rule, whether a calibration holds the limits of a profile; a value equal to its limit holds it.
 * Accuracy: the |q| of the level judged worst, with the guard band w = guardFactor x U of that error: pass to limit - w,
 * conditional pass to the limit, conditional fail to limit + w. Repeatability, reversibility, zero, resolution: the
 * largest b, |v|, f0, a, by simple acceptance. Cycles: those with rising points above zero. Levels: how many different
 * ones. Certificate: of the load cell, valid on the calibration day. Loading: the jack pushed the cell. Load efficiency:
 * the level furthest outside its two limits, `conditional-pass` at worst, on condition that area, units, zero and
 * loading were looked at, since a wrong area on paper does not make the curve wrong. First use: days from the
 * calibration to it. Rules the profile does not have are left out.
 * `not-judged` where there is nothing to judge: no level met twice, no falling points, no zero checked, no load cell
 * named, not said how it was loaded, no nominal area, no day of first use.
 * Source: the limits' own, named in `basis`; the quantities in levels.ts; JCGM 106:2012 8.2.1 and 8.3.2 and ILAC-G8:09/2019
 * 4.2 (from memory) for simple and guarded acceptance.
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
  const zeros = zeroChecks(sheet, curve);
  const largest = (
    rule: AcceptanceRule,
    limit: Limit | undefined,
    figureOf: (level: CalibrationLevel) => number | null,
    words: { readonly what: string; readonly missing: string },
  ): readonly AcceptanceResult[] =>
    limit === undefined ? [] : [judgeLargest(rule, largestOf(levels, figureOf, at), limit, words)];
  return [
    judgeAccuracy(levels, rules, at),
    ...largest('repeatability', rules.repeatabilityPercent, (level) => level.repeatabilityPercent, {
      what: 'Largest spread of the cycles at one level',
      missing: 'No level was met more than once, so the repeatability is not known.',
    }),
    ...largest('reversibility', rules.reversibilityPercent, (level) => level.reversibilityPercent, {
      what: 'Largest difference between falling and rising series',
      missing: 'No level was met on falling pressure, so the reversibility is not known.',
    }),
    ...(rules.zeroPercent === undefined ? [] : [judgeZero(zeros, rules.zeroPercent)]),
    ...largest('resolution', rules.resolutionPercent, (level) => level.resolutionPercent, {
      what: 'Largest step of the gauge',
      missing: 'The graduation of the gauge is not known, so the resolution is not judged.',
    }),
    judgeCount('cycles', cycles, rules.minimumCycles, 'cycles with rising points'),
    judgeCount('levels', levels.length, rules.minimumLevels, 'different levels'),
    judgeCertificate(rules.validCertificates, context.certificate),
    judgeLoading(rules.activeLoading, sheet.loading),
    judgeEfficiency(levels, rules, context, at),
    ...(rules.firstUseDays === undefined ? [] : [judgeFirstUse(sheet, rules.firstUseDays)]),
  ];
}

const percent = (value: number): string => writeQuantity({ value, unit: '%' });

interface Largest {
  readonly size: number;
  /** Where it was found, in words. */
  readonly at: string;
}

function largestOf(
  levels: readonly CalibrationLevel[],
  figureOf: (level: CalibrationLevel) => number | null,
  at: (level: CalibrationLevel) => string,
): Largest | null {
  let worst: Largest | null = null;
  for (const level of levels) {
    const value = figureOf(level);
    if (value !== null && (worst === null || Math.abs(value) > worst.size))
      worst = { size: Math.abs(value), at: at(level) };
  }
  return worst;
}

function judgeLargest(
  rule: AcceptanceRule,
  worst: Largest | null,
  limit: Limit,
  { what, missing }: { readonly what: string; readonly missing: string },
): AcceptanceResult {
  const judged = { rule, limit: limit.value, ...withoutUncertainty, basis: writeBasis(limit) };
  if (worst === null) return { ...judged, value: null, verdict: 'not-judged', message: missing };
  return {
    ...judged,
    value: worst.size,
    verdict: worst.size <= limit.value ? 'pass' : 'fail',
    message: `${what}: ${percent(worst.size)} of force ${worst.at}; the limit is ${limit.value} %.`,
  };
}

function judgeZero(zeros: readonly ZeroCheck[], limit: Limit): AcceptanceResult {
  const size = zeroErrorPercent(zeros);
  const worst = zeros.find(({ percent: each }) => Math.abs(each) === size);
  const judged = { rule: 'zero', limit: limit.value, ...withoutUncertainty, basis: writeBasis(limit) } as const;
  if (size === null || worst === undefined) {
    return { ...judged, value: null, verdict: 'not-judged', message: 'The sheet has no point at zero force.' };
  }
  return {
    ...judged,
    value: size,
    verdict: size <= limit.value ? 'pass' : 'fail',
    message: `Largest reading at zero force: ${percent(size)} of the calibrated maximum, in cycle ${worst.cycle + 1}; the limit is ${limit.value} %.`,
  };
}

function judgeFirstUse({ calibratedOn, firstUseOn }: RunSheet, limit: Limit): AcceptanceResult {
  const judged = { rule: 'first-use', limit: limit.value, ...withoutUncertainty, basis: writeBasis(limit) } as const;
  if (calibratedOn === undefined || firstUseOn === undefined) {
    const message = `The rules ask for a calibration at most ${limit.value} days before first use; the day of first use is not given.`;
    return { ...judged, value: null, verdict: 'not-judged', message };
  }
  const days = daysBetween(calibratedOn, firstUseOn);
  const when =
    days < 0
      ? `First use on ${firstUseOn} lies before the calibration on ${calibratedOn}.`
      : `Calibrated ${days} days before first use on ${firstUseOn}; at most ${limit.value} are allowed.`;
  return { ...judged, value: days, verdict: days >= 0 && days <= limit.value ? 'pass' : 'fail', message: when };
}

function judgeCount(rule: AcceptanceRule, count: number, limit: Limit, what: string): AcceptanceResult {
  return {
    rule,
    value: count,
    limit: limit.value,
    ...withoutUncertainty,
    verdict: count >= limit.value ? 'pass' : 'fail',
    basis: writeBasis(limit),
    message: `The sheet has ${count} ${what}; at least ${limit.value} are needed.`,
  };
}

function judgeCertificate(limit: Limit, certificate: Certificate | null | undefined): AcceptanceResult {
  const judged = { rule: 'certificate', limit: limit.value, ...withoutUncertainty, basis: writeBasis(limit) } as const;
  if (certificate === undefined) {
    return {
      ...judged,
      value: null,
      verdict: 'not-judged',
      message: 'No load cell and day of the plant are known for the sheet, so its certificate is not judged.',
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
  const judged = { rule: 'loading', limit: limit.value, ...withoutUncertainty, basis: writeBasis(limit) } as const;
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
  const judged = {
    rule: 'load-efficiency',
    limit: limit.value,
    ...withoutUncertainty,
    basis: writeBasis(limit),
  } as const;
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
    verdict: holds ? 'pass' : 'conditional-pass',
    message: `Load efficiency ${Number(worst.value.toPrecision(4))} ${at(worst.level)}; ${low.value} to ${high.value} is expected.${advice}`,
  };
}
