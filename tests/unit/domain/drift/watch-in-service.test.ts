import { describe, expect, it } from 'vitest';
import { addPlantDays } from '../../../../src/domain/dates/plant-day.ts';
import { bedRatios, type Pull } from '../../../../src/domain/drift/bed-ratios.ts';
import { bedsOfBaseline, watchInService } from '../../../../src/domain/drift/watch-in-service.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { seededScatter } from '../calibration/seeded-scatter.ts';

const because = 'worked by hand, in doubles';
const pull = (day: string, ratio: number, more: Partial<Pull> = {}): Pull => ({
  day,
  bed: 'A',
  pair: 'P-1',
  reel: 'R-1',
  gaugeForceKn: 100 * ratio,
  elongationForceKn: 100,
  ...more,
});
/** One bed a day of one pull each. */
const daily = (from: string, ratios: readonly number[]): Pull[] =>
  ratios.map((ratio, index) => pull(addPlantDays(from, index), ratio));
const around = (count: number, off: (index: number) => number = () => 0, seed = 5): number[] => {
  const normal = seededScatter(seed);
  return Array.from({ length: count }, (_, index) => 1 + 0.005 * (normal() + off(index)));
};
const periodsOf = (pulls: readonly Pull[], days: readonly string[], beds = bedsOfBaseline) =>
  outcomeValue(watchInService(pulls, 'P-1', days, beds));

describe('the ratios of beds', () => {
  it('are the means of their pulls, by day, a name on another day being another bed', () => {
    const beds = outcomeValue(
      bedRatios([
        pull('2026-01-02', 1.03),
        pull('2026-01-01', 1.02),
        pull('2026-01-01', 1, { bed: 'B' }),
        pull('2026-01-01', 1.04),
      ]),
    );
    expect(beds.map(({ day, bed, pulls }) => [day, bed, pulls])).toEqual([
      ['2026-01-01', 'A', 2],
      ['2026-01-01', 'B', 1],
      ['2026-01-02', 'A', 1],
    ]);
    expectDigits(beds[0]?.ratio ?? Number.NaN, { certified: 1.03, digits: 14, because });
  });

  it('are refused for a force that is none', () => {
    for (const off of [{ elongationForceKn: 0 }, { gaugeForceKn: -1 }, { gaugeForceKn: Number.NaN }]) {
      expect(bedRatios([pull('2026-01-01', 1, off)])).toMatchObject({ problem: { code: 'number-out-of-range' } });
    }
  });
});

describe('a pair in service', () => {
  it('has no period without a calibration, and too little data after one until the baseline is full', () => {
    expect(periodsOf(daily('2026-01-01', around(5)), [])).toEqual([]);
    expect(periodsOf([], ['2026-01-01'])[0]?.state).toEqual({ kind: 'too-little-data', needed: 25, given: 0 });
    const almost = periodsOf(daily('2026-01-01', around(24)), ['2026-01-01']);
    expect(almost[0]?.state).toEqual({ kind: 'too-little-data', needed: 25, given: 24 });
    const full = periodsOf(daily('2026-01-01', around(25)), ['2026-01-01'])[0]?.state;
    expect(full).toMatchObject({ kind: 'charted', charted: [], signals: [] });
  });

  it('starts anew with each calibration, whose day counts after it; beds before the first are left out', () => {
    const periods = periodsOf(daily('2026-01-01', around(60)), ['2026-01-31', '2026-01-11', '2026-01-31'], 5);
    expect(periods.map(({ calibratedOn, beds }) => [calibratedOn, beds[0]?.day, beds.at(-1)?.day])).toEqual([
      ['2026-01-11', '2026-01-11', '2026-01-30'],
      ['2026-01-31', '2026-01-31', '2026-03-01'],
    ]);
  });

  it('looks at its own pulls alone', () => {
    const others = daily('2026-01-01', around(40)).map((each) => ({ ...each, pair: 'P-2' }));
    expect(periodsOf(others, ['2026-01-01'])[0]?.beds).toEqual([]);
  });

  it('has no chart where nothing scatters', () => {
    const state = periodsOf(
      daily(
        '2026-01-01',
        Array.from({ length: 30 }, () => 1),
      ),
      ['2026-01-01'],
    )[0]?.state;
    expect(state).toEqual({ kind: 'no-scatter', mean: 1 });
  });

  it('signals a step on its side, on the first bed of each chart that does, with value and limit', () => {
    const ratios = around(60, (index) => (index >= 40 ? 3 : 0));
    const state = periodsOf(daily('2026-01-01', ratios), ['2026-01-01'])[0]?.state;
    if (state?.kind !== 'charted') throw new Error(state?.kind);
    expect(new Set(state.signals.map(({ chart }) => chart))).toEqual(new Set(['ewma', 'cusum']));
    const stepDay = addPlantDays('2026-01-01', 40);
    for (const { side, day, value, limit } of state.signals) {
      expect(side).toBe('high');
      expect(day >= stepDay && day <= addPlantDays(stepDay, 6)).toBe(true);
      expect(value).toBeGreaterThan(limit);
    }
    expect((state.signals[0]?.day ?? '') <= (state.signals[1]?.day ?? '')).toBe(true);
  });

  it('signals a slow fall on the lower side, the limit being the lower one', () => {
    const ratios = around(90, (index) => (index >= 25 ? -0.06 * (index - 25) : 0));
    const state = periodsOf(daily('2026-01-01', ratios), ['2026-01-01'])[0]?.state;
    if (state?.kind !== 'charted') throw new Error(state?.kind);
    const ewma = state.signals.find(({ chart }) => chart === 'ewma');
    expect(ewma?.side).toBe('low');
    expect(ewma === undefined || ewma.value < ewma.limit).toBe(true);
    expect(state.signals.find(({ chart }) => chart === 'cusum')?.side).toBe('low');
  });

  it('gives no false signal in this series of a pair that did not change', () => {
    const state = periodsOf(daily('2026-01-01', around(60)), ['2026-01-01'])[0]?.state;
    expect(state).toMatchObject({ kind: 'charted', signals: [] });
  });
});
