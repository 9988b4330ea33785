import { describe, expect, it } from 'vitest';
import {
  forceBehindElongation,
  forceOfStretch,
  type StretchedStrand,
  theoreticalElongation,
} from '../../../../src/domain/strand/elongation.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const bed: StretchedStrand = {
  strands: 1,
  length: { value: 400, unit: 'ft' },
  area: { value: 0.153, unit: 'in2' },
  modulus: { value: 28_500, unit: 'ksi' },
};
const kip = (value: number) => ({ value, unit: 'kip' }) as const;
const inch = (value: number) => ({ value, unit: 'in' }) as const;
const roundings = { digits: 14, because: 'an exact quotient; under twenty roundings of a double' } as const;

describe('the theoretical elongation', () => {
  it('is that of the force above the preload: (31 - 3) x 4800 / (0.153 x 28500) in', () => {
    const { value } = outcomeValue(theoreticalElongation(bed, { force: kip(31), preload: kip(3) }, 'in'));
    expect(value.unit).toBe('in');
    expectDigits(value.value, { certified: 134_400 / 4360.5, ...roundings });
  });

  it('is nothing where the preload is the final force', () => {
    const { value } = outcomeValue(theoreticalElongation(bed, { force: kip(31), preload: kip(31) }, 'in'));
    expect(value).toEqual({ value: 0, unit: 'in' });
  });

  it('is shown as its formula with the numbers as entered', () => {
    const { step } = outcomeValue(theoreticalElongation(bed, { force: kip(31), preload: kip(3) }, 'in'));
    expect(step).toMatchObject({ code: 'elongation', formula: 'dL = (P - P0) L / (n A E)' });
    expect(step.numbers.map(({ symbol }) => symbol)).toEqual(['P', 'P0', 'L', 'n', 'A', 'E']);
    expect(step.numbers[2]?.quantity).toEqual({ value: 400, unit: 'ft' });
    expect(step.result.symbol).toBe('dL');
  });

  it.each([
    ['length', { ...bed, length: { value: 0, unit: 'ft' } as const }],
    ['area', { ...bed, area: { value: -0.153, unit: 'in2' } as const }],
    ['modulus', { ...bed, modulus: { value: Number.NaN, unit: 'ksi' } as const }],
    ['strands', { ...bed, strands: 1.5 }],
    ['strands', { ...bed, strands: 0 }],
  ])('is refused where the %s cannot be', (where, strand) => {
    const refused = { ok: false, problem: { code: 'number-out-of-range', where } };
    expect(theoreticalElongation(strand, { force: kip(31), preload: kip(3) }, 'in')).toMatchObject(refused);
    expect(forceBehindElongation(strand, { elongation: inch(30), preload: kip(3) })).toMatchObject(refused);
  });

  it.each([
    ['preload', kip(31), kip(-1)],
    ['force', kip(0), kip(0)],
    ['force', kip(Number.POSITIVE_INFINITY), kip(3)],
    ['force above the preload', kip(3), kip(31)],
  ])('is refused where the %s cannot be', (where, force, preload) => {
    expect(theoreticalElongation(bed, { force, preload }, 'in')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where },
    });
  });
});

describe('the force behind an elongation', () => {
  it('is the preload with what stretched the strand since: 3 + 30 x 0.153 x 28500 / 4800 kip', () => {
    const behind = outcomeValue(forceBehindElongation(bed, { elongation: inch(30), preload: kip(3) }));
    expect(behind.unit).toBe('kip');
    expectDigits(behind.value, { certified: 3 + 130_815 / 4800, ...roundings });
  });

  it('is the preload where nothing stretched', () => {
    expect(outcomeValue(forceBehindElongation(bed, { elongation: inch(0), preload: kip(3) }))).toEqual(kip(3));
  });

  it('rises with the strands pulled together', () => {
    const four = forceOfStretch({ ...bed, strands: 4 }, inch(1), 'kip');
    expectDigits(four / forceOfStretch(bed, inch(1), 'kip'), { certified: 4, ...roundings });
  });

  it('is refused for an elongation below zero', () => {
    expect(forceBehindElongation(bed, { elongation: inch(-1), preload: kip(3) })).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'elongation' },
    });
  });
});
