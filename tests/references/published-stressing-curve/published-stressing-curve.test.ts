// A published worked example: the gauge pressures for 10 % and 100 % of a jacking force, through the look-up.

import { describe, expect, it } from 'vitest';
import { lookUpForce } from '../../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../../src/domain/lookup/look-up-reading.ts';
import { readingsTable } from '../../../src/domain/lookup/readings-table.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { basisOfCurve, lineThrough } from '../basis-of-curve.ts';
import reference from './case.json' with { type: 'json' };

const { slope_kN_per_MPa: slope, intercept_kN: intercept } = reference.data;
const printed = { digits: 'as-printed', because: 'the digits the example prints' } as const;
const exact = { digits: 12, because: 'points on the line itself, fitted in doubles' } as const;
const released = null;

/** The example prints the equation alone, so these points are put on it. */
const readings = [4, 10, 20, 30, 45];
const onLine = (constant: number) => readings.map((reading) => ({ reading, force: slope * reading + constant }));
const target = (force: string) => ({
  force: { value: Number(force), unit: 'kN' as const },
  ceiling: null,
  preload: null,
});

describe.each(['force', 'reading'] as const)('published stressing curve, %s set', (set) => {
  const basis = basisOfCurve(lineThrough(onLine(intercept), set));

  it('gives the pressures printed, and sets the gauge to them', () => {
    for (const { force_kN, reading_MPa } of reference.results) {
      const result = lookUpReading(basis, target(force_kN), { released });
      expectDigits(result.reading?.value ?? Number.NaN, { certified: reading_MPa, ...printed });
      expectDigits(result.reading?.value ?? Number.NaN, {
        certified: (Number(force_kN) - intercept) / slope,
        ...exact,
      });
      expect(result.readingToSet).toEqual({ value: Number(reading_MPa), unit: 'MPa' });
    }
  });

  it('gives the force of the equation at the pressures printed, and what rounding to them costs', () => {
    for (const { force_kN, reading_MPa } of reference.results) {
      const atPrinted = slope * Number(reading_MPa) + intercept;
      const reading = { value: Number(reading_MPa), unit: 'MPa' as const };
      const behind = lookUpForce(basis, reading, { unit: 'kN', released });
      expectDigits(behind.force?.value ?? Number.NaN, { certified: atPrinted, ...exact });
      const { roundingError } = lookUpReading(basis, target(force_kN), { released });
      expectDigits(roundingError?.value ?? Number.NaN, {
        certified: atPrinted - Number(force_kN),
        digits: 8,
        because: 'a difference that leaves a hundredth to a ten-thousandth of forces good to twelve digits',
      });
    }
  });

  it('gives the same as a row of a table', () => {
    const [ten] = reference.results;
    const from = Number(ten?.force_kN);
    const table = outcomeValue(readingsTable(basis, { unit: 'kN', from, to: null, step: 9 * from }));
    expect(table.rows.map(({ readingToSet }) => readingToSet)).toEqual(
      reference.results.map(({ reading_MPa }) => Number(reading_MPa)),
    );
  });
});

describe('a look-up that is wrong', () => {
  it('is caught where it leaves out the constant of the equation', () => {
    const throughZero = basisOfCurve(lineThrough(onLine(0), 'reading'));
    for (const { force_kN, reading_MPa } of reference.results) {
      const wrong = lookUpReading(throughZero, target(force_kN), { released });
      expect(() => expectDigits(wrong.reading?.value ?? 0, { certified: reading_MPa, ...printed })).toThrow(
        printed.because,
      );
    }
  });

  it('is caught where it cuts the reading off instead of rounding it', () => {
    const basis = basisOfCurve(lineThrough(onLine(intercept), 'reading'));
    for (const { force_kN, reading_MPa } of reference.results) {
      const exactReading = lookUpReading(basis, target(force_kN), { released }).reading?.value ?? 0;
      const cutOff = Math.floor(exactReading / 0.01) * 0.01;
      expect(() => expectDigits(cutOff, { certified: reading_MPa, ...printed })).toThrow(printed.because);
    }
  });
});
