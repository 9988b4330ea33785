import { describe, expect, it } from 'vitest';
import { forceBehindReading } from '../../../../src/domain/calibration/curve.ts';
import { doNotExceedReading } from '../../../../src/domain/lookup/do-not-exceed.ts';
import { lookUpForce } from '../../../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../../../src/domain/lookup/look-up-reading.ts';
import type { BudgetBasis } from '../../../../src/domain/lookup/lookup-basis.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { pressure } from '../../../../src/domain/units/pressure.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { runSheet } from '../../../plant-at-work.ts';
import { basisOf, curveOf, gauge, jack, targetOf } from './basis-of.ts';

const released = null;
const because = 'the same numbers through a change of units; a few roundings of a double';

describe('the reading to set for a force', () => {
  it('is the curve at the force, rounded to half a graduation, with the force at the rounded reading', () => {
    const basis = basisOf();
    const result = lookUpReading(basis, targetOf(31), { released });
    expect(result.outcome).toBe('given');
    expect(result.readingToSet).toEqual({ value: 4500, unit: 'psi' });
    expect(Math.abs((result.reading?.value ?? 0) - (10 + 145 * 31))).toBeLessThan(3);
    const at = outcomeValue(forceBehindReading(curveOf(), 4500));
    expect(result.forceAtReadingToSet).toEqual({ value: at, unit: 'kip' });
    expect(result.forceInterval).toMatchObject({ level: 0.95, unit: 'kip' });
    // At the reading that is set, as the look-up of that reading gives it.
    const behind = lookUpForce(basisOf(), result.readingToSet ?? { value: Number.NaN, unit: 'psi' }, {
      unit: 'kip',
      released: null,
    });
    expect(result.settingInterval).toEqual(behind.forceInterval);
    expect(result.settingInterval).not.toEqual(result.forceInterval);
    expect(result.uncertainty?.unit).toBe('kip');
    expect(result.uncertainty?.expanded).toBeGreaterThan(0.24 * 0.31);
  });

  it('answers in the units of the target and of the gauge, whatever those of the sheet are', () => {
    const kipAndPsi = lookUpReading(basisOf(), targetOf(31), { released });
    const inBar = runSheet({
      units: { force: 'kN', reading: 'bar' },
      cycles: runSheet().cycles.map(({ points }) => ({
        points: points.map((point) => ({
          ...point,
          force: convert(force, { value: point.force, unit: 'kip' }, 'kN'),
          reading: convert(pressure, { value: point.reading, unit: 'psi' }, 'bar'),
        })),
      })),
    });
    const kilonewtonAndBar = lookUpReading(basisOf({ curve: curveOf(inBar) }), targetOf(31), { released });
    expect(kilonewtonAndBar.readingToSet).toEqual(kipAndPsi.readingToSet);
    expect(kilonewtonAndBar.reading?.unit).toBe('psi');
    expect(kilonewtonAndBar.doNotExceed).toEqual(kipAndPsi.doNotExceed);
    expect(kilonewtonAndBar.preload?.readingToSet).toEqual(kipAndPsi.preload?.readingToSet);
    const pairs = [
      [kilonewtonAndBar.reading?.value, kipAndPsi.reading?.value],
      [kilonewtonAndBar.forceAtReadingToSet?.value, kipAndPsi.forceAtReadingToSet?.value],
      [kilonewtonAndBar.forceInterval?.low, kipAndPsi.forceInterval?.low],
      [kilonewtonAndBar.forceInterval?.high, kipAndPsi.forceInterval?.high],
      [kilonewtonAndBar.uncertainty?.expanded, kipAndPsi.uncertainty?.expanded],
    ];
    for (const [actual = Number.NaN, certified = Number.NaN] of pairs) {
      expectDigits(actual, { certified, digits: 10, because: 'the fit of the same points in other units' });
    }
  });

  it('takes the target in any unit and answers force in that unit', () => {
    const inKip = lookUpReading(basisOf(), targetOf(31), { released });
    for (const unit of ['N', 'kN', 'MN', 'lbf', 'kgf', 'tf', 'short-tonf', 'long-tonf'] as const) {
      const value = convert(force, { value: 31, unit: 'kip' }, unit);
      const result = lookUpReading(basisOf(), targetOf(value, unit), { released });
      expect(result.force).toEqual({ value, unit });
      expect(result.readingToSet).toEqual(inKip.readingToSet);
      expect(result.forceInterval?.unit).toBe(unit);
      const back = convert(force, { value: result.forceInterval?.low ?? Number.NaN, unit }, 'kip');
      expectDigits(back, { certified: inKip.forceInterval?.low ?? Number.NaN, digits: 13, because });
    }
  });

  it('sets a gauge graduated in another unit than its full scale', () => {
    const mixed = { ...gauge, fullScale: { value: 700, unit: 'bar' as const } };
    const result = lookUpReading(basisOf({ gauge: mixed }), targetOf(31), { released });
    expect(result.readingToSet?.unit).toBe('bar');
    const psi = convert(pressure, { value: result.readingToSet?.value ?? 0, unit: 'bar' }, 'psi');
    expectDigits(psi, { certified: 4500, digits: 12, because: 'twelve decimals of bar are kept' });
  });

  it('has the ends of the calibrated range in it and nothing beyond them', () => {
    for (const value of [5, 45]) {
      expect(lookUpReading(basisOf(), targetOf(value), { released }).outcome).toBe('given');
    }
    for (const value of [4.999, 45.001, 0.001, 1e300]) {
      expect(lookUpReading(basisOf(), targetOf(value), { released }).outcome).toBe('refused');
    }
  });

  it('has the ends of the range in it in every unit', () => {
    for (const unit of ['N', 'kN', 'MN', 'lbf', 'kgf', 'tf', 'short-tonf', 'long-tonf'] as const) {
      for (const value of [5, 45]) {
        const asked = convert(force, { value, unit: 'kip' }, unit);
        expect(lookUpReading(basisOf(), targetOf(asked, unit), { released }).outcome, unit).toBe('given');
      }
    }
  });

  it('is rounded up at the foot of the range, where the nearest step would leave the curve', () => {
    const curve = curveOf();
    const basis = basisOf({ curve, step: { value: 90, unit: 'psi' } });
    expect(curve.readingRange.low).toBeGreaterThan(730);
    const result = lookUpReading(basis, targetOf(5), { released });
    expect(result.readingToSet).toEqual({ value: 810, unit: 'psi' });
    expect(result.forceAtReadingToSet?.value).toBeGreaterThan(5);
  });

  it('is rounded down at the top of the range, where the nearest step would leave the curve', () => {
    const result = lookUpReading(basisOf({ step: { value: 300, unit: 'psi' } }), targetOf(44.9), { released });
    expect(result.readingToSet).toEqual({ value: 6300, unit: 'psi' });
  });
});

describe('the error that rounding makes', () => {
  it('is the force at the reading to set minus the target, in its unit and in % of it', () => {
    for (const unit of ['kip', 'lbf', 'kN'] as const) {
      const value = convert(force, { value: 31, unit: 'kip' }, unit);
      const { roundingError, forceAtReadingToSet } = lookUpReading(basisOf(), targetOf(value, unit), { released });
      const error = (forceAtReadingToSet?.value ?? Number.NaN) - value;
      expect(roundingError).toEqual({ value: error, unit, percent: (100 * error) / value });
    }
  });

  it('has the sign of the rounding: less force where the reading was rounded down, more where up', () => {
    const errorAt = (value: number, step: number) =>
      lookUpReading(basisOf({ step: { value: step, unit: 'psi' } }), targetOf(value), { released }).roundingError;
    // The line is near 10 psi + 145 psi per kip: 31 kip needs 4505 psi, 31.2 kip needs 4534 psi.
    expect(errorAt(31, 50)?.value).toBeLessThan(-0.02);
    expect(errorAt(31.2, 50)?.value).toBeGreaterThan(0.05);
    expect(errorAt(31, 50)?.percent).toBeLessThan(-0.06);
    expect(Math.abs(errorAt(31, 0.001)?.percent ?? Number.NaN)).toBeLessThan(1e-4);
  });

  it('is none where nothing was rounded or no reading can be set', () => {
    const reading = { value: 4321, unit: 'psi' } as const;
    const behind = lookUpForce(basisOf(), reading, { unit: 'kip', released });
    expect(behind).toMatchObject({ outcome: 'given', readingToSet: null, roundingError: null });
    const coarse = lookUpReading(basisOf({ step: { value: 7000, unit: 'psi' } }), targetOf(31), { released });
    expect(coarse).toMatchObject({ readingToSet: null, forceAtReadingToSet: null, roundingError: null });
    expectDigits(coarse.uncertainty?.force ?? Number.NaN, { certified: 31, digits: 14, because });
  });
});

describe('the uncertainty of a look-up', () => {
  const sourcesOf = (budget: Partial<BudgetBasis>, temperatureCelsius?: number) => {
    const basis = basisOf({ budget: { ...basisOf().budget, ...budget } });
    const { uncertainty } = lookUpReading(basis, targetOf(31), { released, temperatureCelsius });
    return uncertainty?.contributions.map(({ source }) => source);
  };
  const plain = ['load-cell-certificate', 'gauge-resolution', 'scatter-and-fit'];

  it('is of the force at the reading to set, not of the target', () => {
    const { uncertainty, forceAtReadingToSet } = lookUpReading(basisOf(), targetOf(31.1), { released });
    expect(uncertainty?.force).toBe(forceAtReadingToSet?.value);
    expect(uncertainty?.force).not.toBe(31.1);
    const reading = { value: 4521, unit: 'psi' } as const;
    const behind = lookUpForce(basisOf(), reading, { unit: 'kip', released });
    expect(behind.uncertainty?.force).toBe(behind.force?.value);
  });

  it('carries drift, indicator, reversibility and temperature only where the basis has them', () => {
    expect(sourcesOf({})).toEqual(plain);
    expect(sourcesOf({ driftPercent: 0.4 })).toEqual([...plain, 'drift']);
    expect(sourcesOf({ reversibilityPercent: 1 })).toEqual([...plain, 'reversibility']);
    expect(sourcesOf({ cellResolution: { value: 10, unit: 'lbf' } })).toContain('cell-indicator');
    expect(sourcesOf({ calibratedAtCelsius: 20 })).toEqual(plain);
    expect(sourcesOf({ calibratedAtCelsius: 20 }, 35)).toEqual([...plain, 'temperature']);
    expect(sourcesOf({}, 35)).toEqual(plain);
  });

  it('adds up to the same in lbf as in kip, both ways of looking up', () => {
    const budget = {
      cellResolution: { value: 10, unit: 'lbf' as const },
      reversibilityPercent: 1,
      driftPercent: 0.4,
      calibratedAtCelsius: 20,
    };
    const options = { released, temperatureCelsius: 35 };
    const inUnit = (unit: 'kip' | 'lbf', value: number) => [
      lookUpReading(basisOf({ budget }), targetOf(value, unit), options).uncertainty,
      lookUpForce(basisOf({ budget }), { value: 4500, unit: 'psi' }, { ...options, unit }).uncertainty,
    ];
    const [kips, pounds] = [inUnit('kip', 31), inUnit('lbf', 31000)];
    for (const [index, inKip] of kips.entries()) {
      const inPounds = pounds[index];
      const sumOf = (lines: readonly { readonly standardUncertainty: number }[] = []) =>
        Math.sqrt(lines.reduce((sum, each) => sum + each.standardUncertainty ** 2, 0));
      expect(inKip?.contributions).toHaveLength(7);
      const certified = 1000 * sumOf(inKip?.contributions);
      expectDigits(sumOf(inPounds?.contributions), { certified, digits: 13, because });
      expectDigits(inPounds?.combined ?? Number.NaN, { certified, digits: 13, because });
      expectDigits(inPounds?.expanded ?? Number.NaN, { certified: certified * (inKip?.k ?? 0), digits: 13, because });
    }
  });
});

describe('the reading not to exceed', () => {
  const limitOf = (changes: Parameters<typeof basisOf>[0], ceiling: number | null = null) =>
    lookUpReading(
      basisOf(changes),
      targetOf(20, 'kip', { ceiling: ceiling === null ? null : { value: ceiling, unit: 'kip' } }),
      { released },
    ).doNotExceed;

  it('is the least of the four limits, and names it', () => {
    expect(limitOf({})).toEqual({ reading: { value: 6500, unit: 'psi' }, because: 'calibrated-range' });
    const smallGauge = { ...gauge, fullScale: { value: 6020, unit: 'psi' as const } };
    expect(limitOf({ gauge: smallGauge })).toEqual({ reading: { value: 6000, unit: 'psi' }, because: 'gauge-span' });
    const weak = { ...jack, ratedForce: { value: 40, unit: 'kip' as const } };
    expect(limitOf({ jack: weak, gauge: smallGauge })).toEqual({
      reading: { value: 5800, unit: 'psi' },
      because: 'jack-rating',
    });
    expect(limitOf({ jack: weak, gauge: smallGauge }, 33.04)).toEqual({
      reading: { value: 4800, unit: 'psi' },
      because: 'stress-ceiling',
    });
  });

  it('leaves out a force above the calibrated range, and a bare sheet has only its range', () => {
    const bare = doNotExceedReading(
      { jack: null, gauge: null, step: { value: 1, unit: 'psi' } },
      curveOf(),
      { value: 60, unit: 'kip' },
      'psi',
    );
    expect(bare.shown.because).toBe('calibrated-range');
    expect(bare.exact).toBe(curveOf().readingRange.high);
    expect(bare.shown.reading.value).toBe(Math.floor(bare.exact));
  });

  it('is never passed by the reading to set, however near the ceiling the target is', () => {
    for (let value = 32; value <= 33.04; value += 0.01) {
      const target = targetOf(value, 'kip', { ceiling: { value: 33.04, unit: 'kip' } });
      const result = lookUpReading(basisOf(), target, { released });
      expect(result.readingToSet?.value).toBeLessThanOrEqual(result.doNotExceed?.reading.value ?? 0);
      expect(result.forceAtReadingToSet?.value).toBeLessThanOrEqual(33.04);
    }
  });
});

describe('the preload', () => {
  const preloadOf = (value: number) =>
    lookUpReading(
      basisOf(),
      targetOf(31, 'kip', { preload: { value, unit: 'kip' }, ceiling: { value: 33.04, unit: 'kip' } }),
      { released },
    );

  it('is the fraction of the rule profile where none is asked for', () => {
    const { preload } = lookUpReading(basisOf(), targetOf(31), { released });
    expect(preload?.readingToSet).toEqual({ value: 900, unit: 'psi' });
    expectDigits(preload?.force.value ?? Number.NaN, { certified: '6.2', digits: 15, because: 'one product' });
  });

  it('is the force asked for where there is one, in its own unit', () => {
    expect(preloadOf(10).preload).toEqual({
      force: { value: 10, unit: 'kip' },
      readingToSet: { value: 1450, unit: 'psi' },
    });
  });

  it.each([4, 31, 32, 40, 60])('has no reading outside the range or at the target and above: %d kip', (value) => {
    const result = preloadOf(value);
    expect(result.outcome).toBe('given');
    expect(result.preload).toBeNull();
    expect(result.warnings.filter(({ code }) => code === 'preload-not-given')).toHaveLength(1);
  });
});

describe('the force behind a reading', () => {
  it('is the way back from the reading of a force, in any unit', () => {
    const there = lookUpReading(basisOf(), targetOf(137.9, 'kN'), { released });
    if (there.reading === null) throw new Error('There is no reading.');
    const back = lookUpForce(basisOf(), there.reading, { unit: 'kN', released });
    expect(back.reading).toEqual(there.reading);
    expectDigits(back.force?.value ?? Number.NaN, { certified: '137.9', digits: 13, because });
    expect(back.forceInterval).toEqual(there.forceInterval);
  });

  it('takes the reading in another unit than the sheet', () => {
    const bar = convert(pressure, { value: 4500, unit: 'psi' }, 'bar');
    const inBar = lookUpForce(basisOf(), { value: bar, unit: 'bar' }, { unit: 'kip', released });
    const inPsi = lookUpForce(basisOf(), { value: 4500, unit: 'psi' }, { unit: 'kip', released });
    expectDigits(inBar.force?.value ?? Number.NaN, {
      certified: inPsi.force?.value ?? Number.NaN,
      digits: 14,
      because,
    });
    // The limit is a mark on the gauge, so it stays in the gauge's own unit.
    expect(inBar.doNotExceed).toEqual(inPsi.doNotExceed);
  });
});
