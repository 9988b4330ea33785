// A published stressing sheet: the stretch of 15 strands inside a jack, and back from it to the force.

import { describe, expect, it } from 'vitest';
import {
  forceBehindElongation,
  type StretchedStrand,
  theoreticalElongation,
} from '../../../src/domain/strand/elongation.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import reference from './case.json' with { type: 'json' };

const { data, results } = reference;
const strand: StretchedStrand = {
  strands: data.strands,
  length: { value: data.length_mm, unit: 'mm' },
  area: { value: data.area_mm2, unit: 'mm2' },
  modulus: { value: data.modulus_kN_per_mm2, unit: 'GPa' },
};
const force = { value: data.force_kN, unit: 'kN' } as const;
const none = { value: 0, unit: 'kN' } as const;
const printed = {
  certified: results.elongation_mm,
  digits: 'as-printed',
  because: 'the sheet prints 0.01 mm',
} as const;
const stretchOf = (of: StretchedStrand, preload: { value: number; unit: 'kN' } = none) =>
  outcomeValue(theoreticalElongation(of, { force, preload }, 'mm')).value;

describe('published stressing sheet', () => {
  it('gives the stretch printed', () => {
    expectDigits(stretchOf(strand).value, printed);
  });

  it('gives the force back from that stretch', () => {
    const behind = outcomeValue(forceBehindElongation(strand, { elongation: stretchOf(strand), preload: none }));
    expectDigits(behind.value, { certified: data.force_kN, digits: 14, because: 'ten roundings of a double' });
  });
});

describe('an elongation that is wrong', () => {
  it.each([
    ['takes one strand for fifteen', stretchOf({ ...strand, strands: 1 })],
    ['takes the area of the imperial column', stretchOf({ ...strand, area: { value: 0.154, unit: 'in2' } })],
    ['takes the modulus of the table', stretchOf({ ...strand, modulus: { value: 197_000, unit: 'MPa' } })],
    ['forgets that the preload is in the mark', stretchOf(strand, { value: 204.24, unit: 'kN' })],
  ])('is caught where it %s', (_, { value }) => {
    expect(() => expectDigits(value, printed)).toThrow(printed.because);
  });
});
