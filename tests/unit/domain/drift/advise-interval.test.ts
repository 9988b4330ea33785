import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseByDrift, adviseByStaircase, adviseInterval } from '../../../../src/domain/drift/advise-interval.ts';
import type { DriftForecast, DriftTrend } from '../../../../src/domain/drift/forecast-drift.ts';

const found = (errorPercent: number) => [
  { day: '2025-01-01', errorPercent: 9, limitPercent: 2 },
  { day: '2026-01-01', errorPercent, limitPercent: 2 },
];
const six = { currentMonths: 6, profileMonths: 12 };
const trend: DriftTrend = { percentPerYear: 1, low: 0.5, high: 1.5, latestPercent: 0 };
const forecastOn = (earliest: string): DriftForecast => ({
  kind: 'forecast',
  side: 'high',
  trend,
  day: '2028-01-01',
  earliest,
  latest: null,
});
const none: DriftForecast = { kind: 'too-few-calibrations', needed: 3, given: 2 };

describe('the staircase', () => {
  it('goes a step up within 80 % of the limit, stays up to the limit and goes a step down beyond it', () => {
    expect(adviseByStaircase(found(-1.6), six)).toMatchObject({
      advice: 'lengthen',
      months: 9,
      because: 'well-within',
    });
    expect(adviseByStaircase(found(1.61), six)).toMatchObject({ advice: 'keep', months: 6, because: 'near-the-limit' });
    expect(adviseByStaircase(found(2), six)).toMatchObject({ advice: 'keep', months: 6 });
    expect(adviseByStaircase(found(-2.01), six)).toMatchObject({
      advice: 'shorten',
      months: 4,
      because: 'found-outside',
    });
  });

  it('never goes beyond the profile, nor below a month', () => {
    const twelve = { currentMonths: 12, profileMonths: 12 };
    expect(adviseByStaircase(found(0), twelve)).toMatchObject({ advice: 'keep', because: 'profile-allows-no-longer' });
    expect(adviseByStaircase(found(0), { currentMonths: 24, profileMonths: 12 }).months).toBe(12);
    expect(adviseByStaircase(found(5), { currentMonths: 1, profileMonths: 12 })).toMatchObject({
      advice: 'keep',
      months: 1,
      because: 'shortest-already',
    });
  });

  it('keeps what nobody looked at', () => {
    expect(adviseByStaircase([], six)).toMatchObject({ advice: 'keep', months: 6, because: 'never-found' });
  });
});

describe('the advice by drift', () => {
  const latestOn = '2026-01-31';

  it('is the whole months until the limit may be reached at the earliest', () => {
    expect(adviseByDrift(forecastOn('2026-09-30'), latestOn, '2036-01-01', six)).toMatchObject({
      advice: 'lengthen',
      months: 8,
    });
    expect(adviseByDrift(forecastOn('2026-09-29'), latestOn, '2036-01-01', six)?.months).toBe(7);
    expect(adviseByDrift(forecastOn('2026-05-01'), latestOn, '2036-01-01', six)).toMatchObject({
      advice: 'shorten',
      months: 3,
      because: 'drift-reaches-limit',
    });
    expect(adviseByDrift(forecastOn('2026-02-01'), latestOn, '2036-01-01', six)?.months).toBe(1);
  });

  it('ends at the profile where nothing is reached before', () => {
    const safe: DriftForecast = {
      kind: 'no-forecast-before-horizon',
      reason: 'beyond-horizon',
      trend,
      safeUntil: null,
    };
    expect(adviseByDrift(safe, latestOn, '2036-01-01', six)).toMatchObject({
      months: 12,
      because: 'profile-allows-no-longer',
    });
    const early: DriftForecast = { ...safe, safeUntil: '2026-05-01' };
    expect(adviseByDrift(early, latestOn, '2036-01-01', six)?.months).toBe(3);
  });

  it('is none where the trend gives no day, and the staircase then advises, as it does after a failure', () => {
    expect(adviseByDrift(none, latestOn, '2036-01-01', six)).toBeNull();
    const ofTrend = { forecast: forecastOn('2027-01-01'), latestOn, horizon: '2036-01-01' };
    expect(adviseInterval(found(0), { ...ofTrend, forecast: none }, six).method).toBe('staircase');
    expect(adviseInterval(found(0), ofTrend, six).method).toBe('control-chart');
    expect(adviseInterval(found(3), ofTrend, six)).toMatchObject({ method: 'staircase', advice: 'shorten' });
  });
});

describe('the advice on an interval', () => {
  it('is never longer than the profile allows and never less than a month', () => {
    const months = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 5, noNaN: true }),
        months,
        months,
        months,
        (error, current, profile, reach) => {
          const options = { currentMonths: current, profileMonths: profile };
          const earliest = `${2026 + Math.floor(reach / 12)}-${String((reach % 12) + 1).padStart(2, '0')}-15`;
          for (const forecast of [none, forecastOn(earliest)]) {
            const advice = adviseInterval(
              found(error),
              { forecast, latestOn: '2026-01-01', horizon: '2040-01-01' },
              options,
            );
            expect(advice.months).toBeLessThanOrEqual(profile);
            expect(advice.months).toBeGreaterThanOrEqual(1);
          }
        },
      ),
    );
  });
});
