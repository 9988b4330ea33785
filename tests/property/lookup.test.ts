// Laws of the look-up over random curves, gauges and units.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forceBehindReading, forcePerReading, type WorkingCurve } from '../../src/domain/calibration/curve.ts';
import { fitCalibration } from '../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import type { Gauge } from '../../src/domain/equipment/equipment.ts';
import { readableStep } from '../../src/domain/equipment/readable-step.ts';
import { lookUpForce } from '../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../src/domain/lookup/look-up-reading.ts';
import type { LookupBasis } from '../../src/domain/lookup/lookup-basis.ts';
import { readingsTable } from '../../src/domain/lookup/readings-table.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import { type ForceUnit, force } from '../../src/domain/units/force.ts';
import { type PressureUnit, pressure } from '../../src/domain/units/pressure.ts';
import { convert } from '../../src/domain/units/quantity.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

const forceUnit = fc.constantFrom(...(Object.keys(force.factors) as ForceUnit[]));
const pressureUnit = fc.constantFrom(...(Object.keys(pressure.factors) as PressureUnit[]));
const levels = [5, 10, 15, 20, 25, 30, 35, 40, 45];

/** A pair of 5 to 45 kip, its sheet and its gauge in any units, a little bent and a little scattered. */
const anyBasis = fc
  .record({
    sheetForce: forceUnit,
    sheetReading: pressureUnit,
    gaugeUnit: pressureUnit,
    graduation: pressureUnit,
    set: fc.constantFrom('force', 'reading'),
    slope: fc.double({ min: 60, max: 300, noNaN: true }),
    bend: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    scatter: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 27, maxLength: 27 }),
    graduationPsi: fc.constantFrom(10, 20, 50, 100, 200),
    display: fc.constantFrom('dial', 'digital'),
  })
  .map((drawn): LookupBasis => {
    const sheet: RunSheet = {
      units: { force: drawn.sheetForce, reading: drawn.sheetReading },
      set: drawn.set as 'force' | 'reading',
      cycles: [0, 1, 2].map((cycle) => ({
        points: levels.map((kip, row) => {
          const psi = 20 + drawn.slope * kip + drawn.bend * kip * kip + (drawn.scatter[9 * cycle + row] ?? 0);
          return {
            direction: 'up',
            force: convert(force, { value: kip, unit: 'kip' }, drawn.sheetForce),
            reading: convert(pressure, { value: psi, unit: 'psi' }, drawn.sheetReading),
          };
        }),
      })),
    };
    const gauge: Gauge = {
      kind: 'gauge',
      tag: 'G-1',
      serial: '1',
      display: drawn.display as 'dial' | 'digital',
      fullScale: { value: convert(pressure, { value: 20000, unit: 'psi' }, drawn.gaugeUnit), unit: drawn.gaugeUnit },
      graduation: {
        value: convert(pressure, { value: drawn.graduationPsi, unit: 'psi' }, drawn.graduation),
        unit: drawn.graduation,
      },
    };
    return {
      curve: outcomeValue(fitCalibration(sheet, { degree: 'auto' })).curve,
      jack: null,
      gauge,
      certificate: null,
      budget: { cellResolution: null, reversibilityPercent: null, driftPercent: null, calibratedAtCelsius: null },
      standing: null,
      parted: false,
      onHold: false,
      besides: [],
      acceptance: [],
      step: readableStep(gauge),
      rules: twelveMonthsTwoPercent,
      ownStrands: [],
    };
  });

const shareOfRange = fc.double({ min: 0, max: 1, noNaN: true });
const released = null;

function targetAt(basis: LookupBasis, share: number, unit: ForceUnit) {
  const { low = 0, high = 0 } = basis.curve?.forceRange ?? {};
  const value = convert(force, { value: low + share * (high - low), unit: basis.curve?.units.force ?? 'kip' }, unit);
  return { force: { value, unit }, ceiling: null, preload: null };
}

/** The largest dF/dp over the calibrated range of a curve of degree 3 or less: at its ends or at a thousand places between. */
function steepestForcePerReading(curve: WorkingCurve): number {
  const { low, high } = curve.readingRange;
  const places = Array.from({ length: 1001 }, (_, place) => low + ((high - low) * place) / 1000);
  return Math.max(...places.map((reading) => outcomeValue(forcePerReading(curve, reading))));
}

describe('a look-up', () => {
  it('sets a reading whose force is within half a step of the target, unless an end of the range forbids it', () => {
    fc.assert(
      fc.property(anyBasis, shareOfRange, forceUnit, (basis, share, unit) => {
        const result = lookUpReading(basis, targetAt(basis, share, unit), { released });
        if (result.reading === null || result.readingToSet === null || basis.gauge === null || basis.curve === null) {
          throw new Error('There is no reading inside the range.');
        }
        const step = convert(pressure, basis.step, basis.gauge.fullScale.unit);
        const range = basis.curve.readingRange;
        const end = (value: number) =>
          convert(pressure, { value, unit: basis.curve?.units.reading ?? 'psi' }, result.reading?.unit ?? 'psi');
        const isNearEnd = result.reading.value - end(range.low) < step || end(range.high) - result.reading.value < step;
        const off = Math.abs(result.readingToSet.value - result.reading.value) / step;
        expect(off).toBeLessThanOrEqual((isNearEnd ? 1 : 0.5) + 1e-6);
        const behind = lookUpForce(basis, result.readingToSet, { unit, released });
        expectDigits(behind.force?.value ?? Number.NaN, {
          certified: result.forceAtReadingToSet?.value ?? Number.NaN,
          digits: 12,
          because: 'the same inversion, through changes of units',
        });
      }),
      { numRuns: 200 },
    );
  });

  it('never sets a reading above the one not to exceed, nor a preload above the reading', () => {
    fc.assert(
      fc.property(anyBasis, shareOfRange, shareOfRange, forceUnit, (basis, share, ceilingShare, unit) => {
        const target = targetAt(basis, share, unit);
        const ceiling = targetAt(basis, Math.max(share, ceilingShare), unit).force;
        const result = lookUpReading(basis, { ...target, ceiling }, { released });
        expect(result.outcome).toBe('given');
        // Between the foot of the range and a ceiling just above it there may be no reading that can be set.
        if (result.readingToSet === null) return;
        const limit = result.doNotExceed?.reading.value ?? Number.NaN;
        expect(result.readingToSet.value).toBeLessThanOrEqual(limit * (1 + 1e-12));
        if (result.preload !== null) {
          expect(result.preload.readingToSet.value).toBeLessThanOrEqual(result.readingToSet.value);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('has a reading that rises with the force, and a reading to set that never falls', () => {
    fc.assert(
      fc.property(anyBasis, shareOfRange, shareOfRange, forceUnit, (basis, one, other, unit) => {
        fc.pre(Math.abs(one - other) > 1e-9);
        const low = lookUpReading(basis, targetAt(basis, Math.min(one, other), unit), { released });
        const high = lookUpReading(basis, targetAt(basis, Math.max(one, other), unit), { released });
        expect(high.reading?.value ?? Number.NaN).toBeGreaterThan(low.reading?.value ?? Number.NaN);
        expect(high.readingToSet?.value ?? Number.NaN).toBeGreaterThanOrEqual(low.readingToSet?.value ?? Number.NaN);
      }),
      { numRuns: 200 },
    );
  });

  it('has its target inside its interval', () => {
    fc.assert(
      fc.property(anyBasis, shareOfRange, forceUnit, (basis, share, unit) => {
        const target = targetAt(basis, share, unit);
        const { forceInterval } = lookUpReading(basis, target, { released });
        if (forceInterval === null) return;
        expect(forceInterval.low).toBeLessThanOrEqual(target.force.value * (1 + 1e-12));
        expect(forceInterval.high).toBeGreaterThanOrEqual(target.force.value * (1 - 1e-12));
      }),
      { numRuns: 200 },
    );
  });

  it('makes an error by rounding of at most half a step times the steepest dF/dp, away from the ends of the range', () => {
    fc.assert(
      fc.property(anyBasis, shareOfRange, forceUnit, (basis, share, unit) => {
        const target = targetAt(basis, share, unit);
        const { curve, gauge } = basis;
        const { roundingError, reading, readingToSet } = lookUpReading(basis, target, { released });
        if (curve === null || gauge === null || reading === null) throw new Error('There is no reading in the range.');
        const step = convert(pressure, basis.step, curve.units.reading);
        const exact = convert(pressure, reading, curve.units.reading);
        // Nearer to an end of the range than a step the reading is rounded inwards, by up to a whole step.
        const isInside = exact - curve.readingRange.low > step && curve.readingRange.high - exact > step;
        if (roundingError === null || readingToSet === null) {
          expect(isInside).toBe(false);
          return;
        }
        const steepest = steepestForcePerReading(curve);
        const bound = convert(force, { value: (isInside ? 0.5 : 1) * step * steepest, unit: curve.units.force }, unit);
        expect(Math.abs(roundingError.value)).toBeLessThanOrEqual(bound * (1 + 1e-9));
        expectDigits(roundingError.percent, {
          certified: (100 * roundingError.value) / target.force.value,
          digits: 14,
          because: 'a product and a quotient',
        });
      }),
      { numRuns: 300 },
    );
  });

  it('makes the whole of that error where a straight line is rounded by half a step', () => {
    fc.assert(
      fc.property(anyBasis, fc.integer({ min: 20, max: 80 }), forceUnit, (basis, percent, unit) => {
        const { curve } = basis;
        if (curve === null) throw new Error('There is no curve.');
        fc.pre(curve.fit.degree === 1);
        const step = convert(pressure, basis.step, curve.units.reading);
        const { low, high } = curve.readingRange;
        const wholeSteps = Math.round((low + ((high - low) * percent) / 100) / step);
        const halfway = (wholeSteps + 0.499) * step;
        const value = outcomeValue(forceBehindReading(curve, halfway));
        const target = {
          force: { value: convert(force, { value, unit: curve.units.force }, unit), unit },
          ceiling: null,
          preload: null,
        };
        const { roundingError } = lookUpReading(basis, target, { released });
        const error = -0.499 * step * steepestForcePerReading(curve);
        expectDigits(roundingError?.value ?? Number.NaN, {
          certified: convert(force, { value: error, unit: curve.units.force }, unit),
          digits: 7,
          because: 'the difference of two forces, each to a few parts in 1e14, that is 1e-4 of them or more',
        });
      }),
      { numRuns: 200 },
    );
  });

  it('gives no number for any force outside the calibrated range', () => {
    const outside = fc.oneof(
      fc.double({ min: -100, max: -1e-6, noNaN: true }),
      fc.double({ min: 1 + 1e-6, max: 1000, noNaN: true }),
    );
    fc.assert(
      fc.property(anyBasis, outside, forceUnit, (basis, share, unit) => {
        const result = lookUpReading(basis, targetAt(basis, share, unit), { released });
        expect(result).toMatchObject({ outcome: 'refused', reading: null, readingToSet: null, preload: null });
      }),
    );
  });
});

describe('a table of readings', () => {
  it('answers in each row what the single look-up of its force does, to the last digit, and drops none', () => {
    fc.assert(
      fc.property(anyBasis, forceUnit, shareOfRange, fc.integer({ min: 1, max: 12 }), (basis, unit, share, steps) => {
        const from = targetAt(basis, share * 0.9, unit).force.value;
        const to = targetAt(basis, 1, unit).force.value;
        const table = outcomeValue(readingsTable(basis, { unit, from, to, step: (to - from) / steps }));
        expect(table.rows).toHaveLength(steps + 1);
        for (const row of table.rows) {
          const target = { force: { value: row.force, unit }, ceiling: null, preload: null };
          const single = lookUpReading(basis, target, { released });
          expect(single.outcome).toBe('given');
          expect([
            row.reading,
            row.readingToSet,
            row.forceAtReadingToSet,
            row.roundingError,
            row.roundingErrorPercent,
            row.expandedUncertainty,
          ]).toEqual([
            single.reading?.value,
            single.readingToSet?.value ?? null,
            single.forceAtReadingToSet?.value ?? null,
            single.roundingError?.value ?? null,
            single.roundingError?.percent ?? null,
            single.uncertainty?.expanded ?? null,
          ]);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never reaches beyond the calibrated range, has rising rows, and at most 26 where the step is its own', () => {
    fc.assert(
      fc.property(anyBasis, forceUnit, (basis, unit) => {
        const table = outcomeValue(readingsTable(basis, { unit, from: null, to: null, step: null }));
        const [low, high] = [0, 1].map((share) => targetAt(basis, share, unit).force.value) as [number, number];
        expect(table.rows.length).toBeGreaterThanOrEqual(9);
        expect(table.rows.length).toBeLessThanOrEqual(26);
        for (const [index, row] of table.rows.entries()) {
          expect(row.force).toBeGreaterThanOrEqual(low);
          expect(row.force).toBeLessThanOrEqual(high);
          if (index > 0) expect(row.reading).toBeGreaterThan(table.rows[index - 1]?.reading ?? Number.NaN);
        }
      }),
      { numRuns: 60 },
    );
  });
});
