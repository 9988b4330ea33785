// Whether a pair drifts, with the evidence as data: which test, its value, its limit and since when.
// The word it gets beside its due date is lookup/standing.ts; each test has its own file in this folder.

import type { PlantDay } from '../dates/plant-day.ts';
import type { CalibrationComparison } from './between-calibrations.ts';
import type { DriftForecast } from './forecast-drift.ts';
import type { InterimCheck } from './judge-interim-check.ts';
import type { InServicePeriod } from './watch-in-service.ts';

export interface DriftEvidence {
  readonly test: 'between-calibrations' | 'trend' | 'interim-check' | 'ewma' | 'cusum';
  /** With its sign, but for a ratio: positive where the gauge, or the older curve, promises more force than there is. */
  readonly value: number;
  /** The limit it passed, on the side of the value. */
  readonly limit: number;
  /** `ratio`: gauge force over elongation force. */
  readonly unit: '%' | 'ratio' | 'standard-deviations';
  readonly since: PlantDay;
}

export interface DriftJudgement {
  readonly isDrifting: boolean;
  /** The oldest first. */
  readonly evidence: readonly DriftEvidence[];
}

export interface DriftFindings {
  /** The calibration in force; null without one, and nothing then drifts. */
  readonly calibratedOn: PlantDay | null;
  /** Against the calibration before; null where there is none. */
  readonly comparison: Pick<CalibrationComparison, 'changePercent'> | null;
  readonly forecast: DriftForecast | null;
  /** Checks of any day; those before the calibration in force are not looked at. */
  readonly checks: readonly { readonly day: PlantDay; readonly check: InterimCheck }[];
  /** The period of the calibration in force, or of what cleared the drift since; null without beds. */
  readonly inService: Pick<InServicePeriod, 'state'> | null;
  /** Day of the last decision by name that the pair does not drift; null without one. */
  readonly clearedOn: PlantDay | null;
}

/**
 * Answers whether a pair drifts and what says so: the last two calibrations differ by more than `driftPercent`; the trend is
 * outside it already; the latest check lies outside its prediction interval; a chart of the beds signals. Two calibrations and
 * the trend speak from the day of the newer calibration, a check from its own, a chart from the day of its first signal.
 * Evidence ends with the next calibration, and what is older than a check that passed, or than a decision by name, or of the
 * same day, is cleared. A chart goes on signalling unless its period starts anew on that day: who clears starts it anew.
 * Range: any; without a calibration nothing drifts. Source: design of the program, "Calculations" 13; that a passed
 * check clears is a house rule: the curve in use was held against a reference and stood.
 */
export function judgeDrift(
  findings: DriftFindings,
  { driftPercent }: { readonly driftPercent: number },
): DriftJudgement {
  const { calibratedOn } = findings;
  if (calibratedOn === null) return { isDrifting: false, evidence: [] };
  const checks = findings.checks
    .filter(({ day }) => day >= calibratedOn)
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  const evidence = [
    ...ofCalibrations(findings, calibratedOn, driftPercent),
    ...checks.slice(-1).flatMap(({ day, check }) => ofCheck(day, check)),
    ...ofBeds(findings.inService),
  ];
  const passedOn = checks.findLast(({ check }) => check.kind === 'judged' && !check.isOutside)?.day;
  const isOpen = ({ since }: DriftEvidence): boolean =>
    (passedOn === undefined || since > passedOn) && (findings.clearedOn === null || since > findings.clearedOn);
  const open = evidence.filter(isOpen).sort((a, b) => (a.since < b.since ? -1 : a.since > b.since ? 1 : 0));
  return { isDrifting: open.length > 0, evidence: open };
}

function ofCalibrations(
  { comparison, forecast }: DriftFindings,
  since: PlantDay,
  driftPercent: number,
): readonly DriftEvidence[] {
  const change = comparison?.changePercent ?? 0;
  const limitFor = (value: number): number => Math.sign(value) * driftPercent;
  const found: DriftEvidence[] = [];
  // More force at a reading than before: the older curve promised less than there was, so the sign turns.
  if (Math.abs(change) > driftPercent) {
    found.push({ test: 'between-calibrations', value: -change, limit: limitFor(-change), unit: '%', since });
  }
  if (forecast?.kind === 'outside-already') {
    const value = -forecast.trend.latestPercent;
    found.push({ test: 'trend', value, limit: limitFor(value), unit: '%', since });
  }
  return found;
}

function ofCheck(since: PlantDay, check: InterimCheck): readonly DriftEvidence[] {
  if (check.kind !== 'judged' || !check.isOutside) return [];
  const { deviationPercent: value, limitPercent } = check.worst;
  return [{ test: 'interim-check', value, limit: Math.sign(value) * limitPercent, unit: '%', since }];
}

function ofBeds(period: DriftFindings['inService']): readonly DriftEvidence[] {
  if (period?.state.kind !== 'charted') return [];
  return period.state.signals.map(({ chart, side, value, limit, day }): DriftEvidence => {
    if (chart === 'ewma') return { test: 'ewma', value, limit, unit: 'ratio', since: day };
    const sign = side === 'high' ? 1 : -1;
    return { test: 'cusum', value: sign * value, limit: sign * limit, unit: 'standard-deviations', since: day };
  });
}
