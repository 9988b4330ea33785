import { describe, expect, it } from 'vitest';
import { curveOfFit } from '../../../../src/domain/calibration/curve.ts';
import { addPlantDays } from '../../../../src/domain/dates/plant-day.ts';
import type { DatedCurve } from '../../../../src/domain/drift/dated-curve.ts';
import { type DriftPoint, driftHistory } from '../../../../src/domain/drift/drift-history.ts';
import { type DriftForecast, forecastDrift } from '../../../../src/domain/drift/forecast-drift.ts';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { seededScatter } from '../calibration/seeded-scatter.ts';

const options = { limitPercent: 2, level: 0.95, horizon: '2036-01-01' };
/** One calibration a year, the latest on 2026-01-01; drift in % against the latest. */
const yearly = (drifts: readonly number[], standardUncertaintyPercent = 0.2): DriftPoint[] =>
  drifts.map((driftPercent, index) => ({
    day: `${2026 - (drifts.length - 1 - index)}-01-01`,
    driftPercent,
    standardUncertaintyPercent,
  }));
const forecastOf = (points: readonly DriftPoint[], of: Partial<typeof options> = {}): DriftForecast =>
  outcomeValue(forecastDrift(points, { ...options, ...of }));

describe('the forecast of a drift', () => {
  it('is none with two calibrations, nor with three on two days', () => {
    expect(forecastOf([])).toEqual({ kind: 'too-few-calibrations', needed: 3, given: 0 });
    expect(forecastOf(yearly([-1, 0]))).toEqual({ kind: 'too-few-calibrations', needed: 3, given: 2 });
    const [first, second] = yearly([-1, 0]);
    if (first === undefined || second === undefined) throw new Error('two points');
    expect(forecastOf([first, second, second]).kind).toBe('too-few-calibrations');
  });

  it('is the day the line leaves the limit, with bounds on either side', () => {
    const forecast = forecastOf(yearly([-3, -2, -1, 0]));
    if (forecast.kind !== 'forecast') throw new Error(forecast.kind);
    expect(forecast.side).toBe('high');
    expectDigits(forecast.trend.percentPerYear, { certified: 1, digits: 3, because: 'a leap year of 366 days' });
    // 1 % a year from 0 takes two years to 2 %; the years of the calibrations differ from the mean year by up to 0.76 days.
    expect(['2027-12-31', '2028-01-01', '2028-01-02']).toContain(forecast.day);
    expect(forecast.earliest < forecast.day).toBe(true);
    expect(forecast.latest !== null && forecast.latest > forecast.day).toBe(true);
  });

  it('follows a fall to the lower limit', () => {
    const forecast = forecastOf(yearly([3, 2, 1, 0]));
    expect(forecast).toMatchObject({ kind: 'forecast', side: 'low' });
  });

  it('is none where the trend cannot be told from zero, and says up to when nothing can happen', () => {
    const forecast = forecastOf(yearly([-0.1, 0.1, -0.1, 0]));
    if (forecast.kind !== 'no-forecast-before-horizon') throw new Error(forecast.kind);
    expect(forecast.reason).toBe('trend-not-distinguishable');
    expect(forecast.trend.low < 0 && forecast.trend.high > 0).toBe(true);
    expect(forecast.safeUntil !== null && forecast.safeUntil > '2026-06-01').toBe(true);
  });

  it('is none where the day lies beyond the horizon, with nothing to fear before where the band stays inside', () => {
    const slow = yearly([-0.3, -0.2, -0.1, 0], 0.02);
    expect(forecastOf(slow)).toMatchObject({ reason: 'beyond-horizon', safeUntil: null });
    expect(forecastOf(slow, { horizon: '2060-01-01' }).kind).toBe('forecast');
  });

  it('is none where the calibrations lie on no line, such as after a step', () => {
    const forecast = forecastOf(yearly([-2, -2, -2, 0, 0, 0], 0.1));
    if (forecast.kind !== 'not-a-line') throw new Error(forecast.kind);
    expect(forecast.degreesOfFreedom).toBe(4);
    expect(forecast.probability).toBeLessThan(0.05);
  });

  it('says where the trend is outside already, whatever the last calibration found', () => {
    const points = yearly([-9, -6, -3, 0], 0.5).map((point, index) =>
      index === 3 ? { ...point, standardUncertaintyPercent: 3 } : point,
    );
    const outside = points.map((point, index) =>
      index === 3 ? point : { ...point, driftPercent: point.driftPercent + 3 },
    );
    expect(forecastOf(outside)).toMatchObject({ kind: 'outside-already', side: 'high' });
  });

  it('passes on an uncertainty that cannot be', () => {
    expect(forecastDrift(yearly([-3, -2, 0], 0), options)).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range' },
    });
  });

  it('holds the true day in 95 % of pairs that drift as it assumes', () => {
    // True drift 1 % a year, standard uncertainty 0.2 %, five calibrations: the slope is ever distinguishable. The curve in
    // use is off by the error of the latest calibration, and everything is measured against it.
    const normal = seededScatter(20_261);
    const trials = 2000;
    let [held, without] = [0, 0];
    for (let trial = 0; trial < trials; trial += 1) {
      const found = [-4, -3, -2, -1, 0].map((drift) => drift + 0.2 * normal());
      const inUse = found.at(-1) ?? Number.NaN;
      const forecast = forecastOf(yearly(found.map((drift) => drift - inUse)), { horizon: '2099-01-01' });
      const trueDay = addPlantDays('2026-01-01', Math.round((2 + inUse) * 365.2425));
      // One in twenty series lies on no line by chance and gives no forecast.
      if (forecast.kind === 'not-a-line') {
        without += 1;
        continue;
      }
      if (forecast.kind !== 'forecast') throw new Error(forecast.kind);
      if (forecast.earliest <= trueDay && trueDay <= (forecast.latest ?? '9999-12-31')) held += 1;
    }
    expect(without).toBeLessThan(0.08 * trials);
    expectDigits(held / (trials - without), {
      certified: 0.95,
      digits: -Math.log10((4 * Math.sqrt((0.95 * 0.05) / trials)) / 0.95),
      because: 'four binomial standard deviations of 2,000 trials',
    });
  });
});

describe('the history of a drift', () => {
  const certificate = {
    number: 'C-1',
    loadCell: 'LC-1',
    laboratory: 'invented laboratory',
    traceableTo: 'invented standard',
    calibratedOn: '2020-01-01',
    validUntil: '2030-12-31',
    expandedUncertaintyPercent: 0.4,
    coverageFactor: 2,
  };
  const dated = (factor: number, calibratedOn: string): DatedCurve => ({
    curve: curveOfFit(
      outcomeValue(
        fitPolynomial(
          [1000, 4000, 8000].map((x) => ({ x, y: (x / 80) * factor })),
          1,
        ),
      ),
      'force',
      { force: 'kip', reading: 'psi' },
    ),
    calibratedOn,
    budget: { certificate },
  });
  const because = 'worked by hand, in doubles';

  it('is in per cent of the force of the latest curve, with the uncertainty of each calibration', () => {
    const points = outcomeValue(
      driftHistory([dated(0.98, '2024-01-01'), dated(1, '2025-01-01')], { value: 50, unit: 'kip' }),
    );
    expect(points.map(({ day }) => day)).toEqual(['2024-01-01', '2025-01-01']);
    expectDigits(points[0]?.driftPercent ?? Number.NaN, { certified: -2, digits: 11, because });
    expect(points[1]?.driftPercent).toBe(0);
    expectDigits(points[0]?.standardUncertaintyPercent ?? Number.NaN, { certified: 0.2 * 0.98, digits: 9, because });
  });

  it('takes the force in any unit, and refuses one off a curve', () => {
    const curves = [dated(0.98, '2024-01-01'), dated(1, '2025-01-01')] as const;
    const points = outcomeValue(driftHistory(curves, { value: 50 * 4.4482216152605, unit: 'kN' }));
    expectDigits(points[0]?.driftPercent ?? Number.NaN, { certified: -2, digits: 11, because });
    expect(driftHistory(curves, { value: 500, unit: 'kip' })).toMatchObject({
      problem: { code: 'outside-calibrated-range' },
    });
  });
});
