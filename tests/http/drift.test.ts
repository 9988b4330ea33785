import { beforeEach, describe, expect, it } from 'vitest';
import { driftAnswer } from '../../src/contract/drift.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { expectDigits } from '../expect-digits.ts';
import { calibrate, type PlantAtWork, plantAtWork, runSheet } from '../plant-at-work.ts';
import { testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

const drift = async (query = '') => driftAnswer.parse((await app.inject(`/api/pairs/P-1/drift${query}`)).json());
const problem = async (url: string) => problemAnswer.parse((await app.inject(url)).json());
/** More pressure for the same force by a factor, as seals that wear ask for. */
const calibrateAt = async (day: string, factor: number) => {
  work.setDay(day);
  await calibrate(work.plant, runSheet({ calibratedOn: day }, factor));
};

describe('the drift of a pair', () => {
  it('of one calibration is a history of one point, no forecast, no advice but to keep', async () => {
    expect(await drift()).toMatchObject({
      pair: 'P-1',
      calibration: 'C-0001',
      changes: [],
      history: [{ calibration: 'C-0001', day: '2026-03-02', driftPercent: 0 }],
      forecast: { kind: 'too-few-calibrations', needed: 3, given: 1 },
      interval: { advice: 'keep', because: 'never-found', months: 12 },
    });
  });

  it('of two calibrations is their change in % and E_n, by the year, and no forecast', async () => {
    await calibrateAt('2026-09-01', 1.01);
    const { changes, forecast, history } = await drift();
    expect(forecast).toEqual({ kind: 'too-few-calibrations', needed: 3, given: 2 });
    expect(changes).toMatchObject([{ from: 'C-0001', to: 'C-0002', on: '2026-09-01', days: 183 }]);
    const [change] = changes;
    // A hundredth more pressure for a force is a hundredth less force at a pressure.
    expect(change?.changePercent).toBeLessThan(-0.9);
    expect(change?.changePercent).toBeGreaterThan(-1.2);
    expectDigits((change?.percentPerYear ?? 0) / (change?.changePercent ?? 1), {
      certified: 365.2425 / 183,
      digits: 12,
      because: 'a quotient of two days, computed',
    });
    expect(change?.normalizedError).toBeGreaterThan(1);
    expect(change?.verdict).toBe('differ');
    expect(history.map(({ calibration }) => calibration)).toEqual(['C-0001', 'C-0002']);
    expect(history[0]?.driftPercent).toBeGreaterThan(0.9);
  });

  it('of four that move steadily is a day on which it leaves its limit, within bounds', async () => {
    work.setDay('2026-03-03');
    for (const [day, factor] of [
      ['2026-06-02', 1.003],
      ['2026-09-02', 1.006],
      ['2026-12-02', 1.009],
    ] as const) {
      await calibrateAt(day, factor);
    }
    const { forecast, limitPercent } = await drift();
    expect(limitPercent).toBe(2);
    if (forecast.kind !== 'forecast') throw new Error(`There is no forecast but ${forecast.kind}.`);
    // 0.9 % in nine months, so 2 % take about twenty.
    expect(forecast.side).toBe('low');
    expect(forecast.day > '2028-04-01' && forecast.day < '2028-12-01').toBe(true);
    expect(forecast.earliest <= forecast.day && (forecast.latest === null || forecast.day <= forecast.latest)).toBe(
      true,
    );
  });

  it('is told at the force asked for, and as of a day gone by', async () => {
    await calibrateAt('2026-09-01', 1.01);
    expect((await drift('?force=20%20kip')).force).toEqual({ value: 20, unit: 'kip' });
    expect((await drift('?asOf=2026-08-01')).history).toHaveLength(1);
    expect(await problem('/api/pairs/P-1/drift?force=90%20kip')).toMatchObject({ code: 'outside-calibrated-range' });
    expect(await problem('/api/pairs/P-1/drift?force=90')).toMatchObject({ code: 'unit-missing' });
    expect(await problem('/api/pairs/P-9/drift')).toMatchObject({ status: 404, code: 'unknown-pair' });
  });

  it('advises a shorter interval where the pair was found outside its limit', async () => {
    await calibrateAt('2026-09-01', 1.03);
    const found = runSheet({ calibratedOn: '2026-09-02', condition: 'as-found' }, 1.06);
    work.setDay('2026-09-02');
    await calibrate(work.plant, found);
    const { asFound, interval } = await drift();
    expect(asFound).toMatchObject([{ run: 'C-0003', day: '2026-09-02', limitPercent: 2 }]);
    expect(interval).toMatchObject({ advice: 'shorten', months: 9, currentMonths: 12, because: 'found-outside' });
  });
});
