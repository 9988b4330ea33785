import { describe, expect, it } from 'vitest';
import type { StretchedStrand } from '../../../../src/domain/strand/elongation.ts';
import { seatingOverpull, temperatureCorrection } from '../../../../src/domain/strand/force-correction.ts';
import { strandExpansions } from '../../../../src/domain/strand/strand-expansion.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const bed: StretchedStrand = {
  strands: 1,
  length: { value: 100, unit: 'ft' },
  area: { value: 0.153, unit: 'in2' },
  modulus: { value: 28_500, unit: 'ksi' },
};
const roundings = { digits: 14, because: 'an exact quotient; under twenty roundings of a double' } as const;

describe('the overpull for live-end seating', () => {
  it('is s A E / L: a quarter of an inch on 100 ft of 1/2 in is 0.25 x 0.153 x 28500 / 1200 kip', () => {
    const { kind, value } = outcomeValue(seatingOverpull(bed, { value: 0.25, unit: 'in' }, 'kip'));
    expect([kind, value.unit]).toEqual(['live-end-seating', 'kip']);
    expectDigits(value.value, { certified: 1090.125 / 1200, ...roundings });
  });

  it('is nothing where nothing seats, and is refused below zero', () => {
    expect(outcomeValue(seatingOverpull(bed, { value: 0, unit: 'in' }, 'kip')).value).toEqual({
      value: 0,
      unit: 'kip',
    });
    expect(seatingOverpull(bed, { value: -0.25, unit: 'in' }, 'kip')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'seating' },
    });
  });

  it('shows its formula with the numbers as entered', () => {
    const { step } = outcomeValue(seatingOverpull(bed, { value: 6, unit: 'mm' }, 'kip'));
    expect(step.formula).toBe('P_over = s n A E / L');
    expect(step.numbers[0]).toEqual({ symbol: 's', quantity: { value: 6, unit: 'mm' } });
  });
});

describe('the correction for temperature', () => {
  const warming = (value: number, unit: 'C' | 'F') => ({
    coefficient: { value: 6.5e-6, unit: '1/F' } as const,
    difference: { value, unit },
  });

  it('is A E alpha dT: 40 F on 1/2 in is 0.153 x 28500 x 6.5e-6 x 40 kip', () => {
    const { kind, value } = outcomeValue(temperatureCorrection(bed, warming(40, 'F'), 'kip'));
    expect(kind).toBe('temperature');
    expectDigits(value.value, { certified: 4360.5 * 6.5e-6 * 40, ...roundings });
  });

  it('is the same in degrees Celsius, and takes away where the strand cools', () => {
    const fahrenheit = outcomeValue(temperatureCorrection(bed, warming(-45, 'F'), 'kip')).value.value;
    const celsius = outcomeValue(temperatureCorrection(bed, warming(-25, 'C'), 'kip')).value.value;
    expectDigits(celsius, { certified: fahrenheit, ...roundings });
    expect(celsius).toBeLessThan(0);
  });

  it('is refused without a coefficient that can be', () => {
    const none = { ...warming(40, 'F'), coefficient: { value: 0, unit: '1/C' } as const };
    expect(temperatureCorrection(bed, none, 'kip')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'coefficient' },
    });
    expect(temperatureCorrection(bed, warming(Number.NaN, 'F'), 'kip')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'difference' },
    });
  });
});

describe('the coefficients offered', () => {
  it('are those of the measurements, rising with the stress, and the one in common use', () => {
    expect(strandExpansions.map(({ coefficient, stressFraction }) => [coefficient.value, stressFraction])).toEqual([
      [6.5e-6, 0],
      [11.8e-6, 0],
      [13.6e-6, 0.4],
      [14.1e-6, 0.5],
      [14.4e-6, 0.65],
    ]);
    expect(strandExpansions.filter(({ provenance }) => provenance !== 'read').map(({ source }) => source)).toEqual([
      'common practice, no source',
    ]);
  });
});
