import { describe, expect, it } from 'vitest';
import { type DriftFindings, judgeDrift } from '../../../../src/domain/drift/judge-drift.ts';
import type { InterimCheck } from '../../../../src/domain/drift/judge-interim-check.ts';
import type { InServiceSignal } from '../../../../src/domain/drift/watch-in-service.ts';

const nothing: DriftFindings = {
  calibratedOn: '2026-01-01',
  comparison: null,
  forecast: null,
  checks: [],
  inService: null,
  clearedOn: null,
};
const judged = (findings: Partial<DriftFindings>) => judgeDrift({ ...nothing, ...findings }, { driftPercent: 2 });
const checkOf = (deviationPercent: number): InterimCheck => {
  const worst = {
    force: 100,
    reading: 50,
    count: 3,
    deviationPercent,
    limitPercent: 0.8,
    isOutside: Math.abs(deviationPercent) > 0.8,
  };
  return { kind: 'judged', levels: [worst], worst, isOutside: worst.isOutside };
};
const signalsOf = (signals: readonly InServiceSignal[]): DriftFindings['inService'] => ({
  state: {
    kind: 'charted',
    baseline: { mean: 1, standardDeviation: 0.005 },
    charted: [],
    ewma: [],
    cusum: [],
    signals,
  },
});
const cusum: InServiceSignal = { chart: 'cusum', side: 'low', day: '2026-03-01', bed: 'A', value: 5.5, limit: 5 };
const ewma: InServiceSignal = { chart: 'ewma', side: 'low', day: '2026-02-20', bed: 'A', value: 0.99, limit: 0.995 };

describe('a drifting pair', () => {
  it('is none where nothing was found, nor without a calibration', () => {
    expect(judged({})).toEqual({ isDrifting: false, evidence: [] });
    const withoutCalibration = { calibratedOn: null, checks: [{ day: '2026-02-01', check: checkOf(3) }] };
    expect(judged(withoutCalibration).isDrifting).toBe(false);
  });

  it('shows what the calibrations say since the newer one, from beyond the limit on', () => {
    expect(judged({ comparison: { changePercent: -2 } }).isDrifting).toBe(false);
    expect(judged({ comparison: { changePercent: -2.1 } }).evidence).toEqual([
      { test: 'between-calibrations', value: 2.1, limit: 2, unit: '%', since: '2026-01-01' },
    ]);
    const trend = { percentPerYear: 1, low: 0.5, high: 1.5, latestPercent: 2.5 };
    expect(judged({ forecast: { kind: 'outside-already', side: 'high', trend } }).evidence).toEqual([
      { test: 'trend', value: -2.5, limit: -2, unit: '%', since: '2026-01-01' },
    ]);
  });

  it('shows the latest check alone, and none before the calibration in force', () => {
    expect(judged({ checks: [{ day: '2025-12-31', check: checkOf(-1) }] }).isDrifting).toBe(false);
    const twice = [
      { day: '2026-03-01', check: checkOf(-1) },
      { day: '2026-02-01', check: checkOf(0.9) },
    ];
    expect(judged({ checks: twice }).evidence).toEqual([
      { test: 'interim-check', value: -1, limit: -0.8, unit: '%', since: '2026-03-01' },
    ]);
    expect(judged({ checks: [{ day: '2026-02-01', check: { kind: 'no-scatter' } }] }).isDrifting).toBe(false);
  });

  it('shows the charts since their first signals, the oldest first, with their sides', () => {
    expect(judged({ inService: signalsOf([cusum, ewma]) }).evidence).toEqual([
      { test: 'ewma', value: 0.99, limit: 0.995, unit: 'ratio', since: '2026-02-20' },
      { test: 'cusum', value: -5.5, limit: -5, unit: 'standard-deviations', since: '2026-03-01' },
    ]);
    expect(judged({ inService: { state: { kind: 'too-little-data', needed: 25, given: 3 } } }).isDrifting).toBe(false);
  });

  it('is cleared by a check that passed, up to its day, and by a decision likewise', () => {
    const inService = signalsOf([ewma, cusum]);
    const passed = (day: string) => [{ day, check: checkOf(0.1) }];
    expect(judged({ inService, checks: passed('2026-02-25') }).evidence.map(({ test }) => test)).toEqual(['cusum']);
    expect(judged({ inService, checks: passed('2026-03-01') }).isDrifting).toBe(false);
    expect(judged({ inService, clearedOn: '2026-02-20' }).evidence.map(({ test }) => test)).toEqual(['cusum']);
    expect(judged({ comparison: { changePercent: 5 }, clearedOn: '2026-01-02' }).isDrifting).toBe(false);
  });

  it('drifts again where a later check fails after one that passed', () => {
    const checks = [
      { day: '2026-02-01', check: checkOf(0.1) },
      { day: '2026-03-01', check: checkOf(1) },
    ];
    expect(judged({ checks, inService: signalsOf([ewma]) }).evidence.map(({ test }) => test)).toEqual([
      'ewma',
      'interim-check',
    ]);
  });
});
