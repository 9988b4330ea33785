import { describe, expect, it } from 'vitest';
import type { Gauge } from '../../../../src/domain/equipment/equipment.ts';
import { gaugeAccuracyAt } from '../../../../src/domain/lookup/gauge-accuracy.ts';
import { lookUpForce } from '../../../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../../../src/domain/lookup/look-up-reading.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { pressure } from '../../../../src/domain/units/pressure.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { basisOf, gauge, targetOf } from './basis-of.ts';

const because = 'one or two products of doubles';
const sevenHundredBar: Gauge = {
  ...gauge,
  fullScale: { value: 700, unit: 'bar' },
  graduation: { value: 10, unit: 'bar' },
  accuracyClass: '1',
};
const at = (reading: number, of: Gauge = sevenHundredBar, step = { value: 5, unit: 'bar' } as const) =>
  gaugeAccuracyAt(of, { step, rules }, reading);

describe('how true a gauge is at a reading', () => {
  it('is the error its class permits there, of the reading: class 1 on 700 bar is 7 bar, 3.5 % of 200 bar', () => {
    const { permittedError, standard, className, accuracyClass } = at(200);
    expect({ standard, className, accuracyClass }).toEqual({
      standard: 'EN 837-1',
      className: '1',
      accuracyClass: '1',
    });
    expect(permittedError?.unit).toBe('bar');
    expectDigits(permittedError?.value ?? Number.NaN, { certified: '7', digits: 15, because });
    expectDigits(permittedError?.percentOfReading ?? Number.NaN, { certified: '3.5', digits: 14, because });
    expectDigits(at(350).permittedError?.percentOfReading ?? Number.NaN, { certified: '2', digits: 14, because });
    expectDigits(at(700).permittedError?.percentOfReading ?? Number.NaN, { certified: '1', digits: 14, because });
  });

  it('follows the parts of the scale of an ASME grade', () => {
    const graded = { ...sevenHundredBar, accuracyClass: 'ASME B40.100 grade B' };
    const permitted = [100, 175, 300, 525, 600].map((reading) => at(reading, graded).permittedError?.value);
    expect(permitted).toEqual([21, 21, 14, 21, 21]);
    expect(at(300, graded)).toMatchObject({ standard: 'ASME B40.100', className: 'B' });
  });

  it('keeps a text it does not know as it was registered, and claims no error', () => {
    expect(at(200, { ...sevenHundredBar, accuracyClass: 'first quality' })).toMatchObject({
      accuracyClass: 'first quality',
      standard: null,
      className: null,
      permittedError: null,
    });
    const { accuracyClass: _, ...unclassed } = sevenHundredBar;
    expect(at(200, unclassed)).toMatchObject({ accuracyClass: null, standard: null, permittedError: null });
  });

  it('has no permitted error beyond full scale', () => {
    expect(at(701).permittedError).toBeNull();
    expect(at(701).isInDialWindow).toBe(false);
  });

  it('says where on the dial the reading lies, both ends of the window inside', () => {
    expect([174.9, 175, 400, 525, 525.1].map((reading) => at(reading).isInDialWindow)).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(at(175).partOfFullScale).toBe(0.25);
    expect(at(175).dialWindow).toEqual({ low: 0.25, high: 0.75 });
    const wide = { ...rules, dialWindowLow: { ...rules.dialWindowLow, value: 0.1 } };
    const low = gaugeAccuracyAt(sevenHundredBar, { step: { value: 5, unit: 'bar' }, rules: wide }, 70);
    expect(low.dialWindow).toEqual({ low: 0.1, high: 0.75 });
    expect(low.isInDialWindow).toBe(true);
  });

  it('gives graduation and step in % of the reading, whatever units they are in', () => {
    expectDigits(at(200).graduationPercent, { certified: '5', digits: 14, because });
    expectDigits(at(200).stepPercent, { certified: '2.5', digits: 14, because });
    const inMegapascal = { ...sevenHundredBar, graduation: { value: 1, unit: 'MPa' } as const };
    const mixed = gaugeAccuracyAt(inMegapascal, { step: { value: 500, unit: 'kPa' }, rules }, 200);
    expectDigits(mixed.graduationPercent, { certified: '5', digits: 14, because });
    expectDigits(mixed.stepPercent, { certified: '2.5', digits: 14, because });
  });
});

describe('a look-up on a gauge with a class', () => {
  const classed = (accuracyClass: string) => basisOf({ gauge: { ...gauge, accuracyClass } });
  const codes = (accuracyClass: string, force: number) =>
    lookUpReading(classed(accuracyClass), targetOf(force), { released: null }).warnings.map(({ code }) => code);

  it('says how true the gauge is at the reading to set, and at the reading that was asked about', () => {
    const basis = classed('2A');
    const set = lookUpReading(basis, targetOf(31), { released: null });
    expect(set.gaugeAccuracy).toEqual(gaugeAccuracyAt({ ...gauge, accuracyClass: '2A' }, basis, 4500));
    const bar = convert(pressure, { value: 4321, unit: 'psi' }, 'bar');
    const behind = lookUpForce(basis, { value: bar, unit: 'bar' }, { unit: 'kip', released: null });
    expect(behind.gaugeAccuracy?.permittedError?.unit).toBe('psi');
    expectDigits(behind.gaugeAccuracy?.partOfFullScale ?? Number.NaN, { certified: '0.4321', digits: 14, because });
  });

  it('notes a class that permits more than the accuracy limit here, and only then', () => {
    // Class 1 on 10,000 psi permits 100 psi: 2 % of 5,000 psi, which the curve reaches at 34.4 kip.
    expect(codes('1', 34)).toContain('gauge-class-coarse');
    expect(codes('1', 35)).not.toContain('gauge-class-coarse');
    expect(codes('4A', 15)).not.toContain('gauge-class-coarse');
    expect(codes('first quality', 15)).not.toContain('gauge-class-coarse');
  });

  it('says in that note the error, its share of the reading and the limit', () => {
    const { warnings } = lookUpReading(classed('class 1.6'), targetOf(31), { released: null });
    const note = warnings.find(({ code }) => code === 'gauge-class-coarse');
    expect(note?.weight).toBe('note');
    for (const part of ['class 1.6 (EN 837-1)', '160 psi', '3.55 %', '2 %']) expect(note?.message).toContain(part);
    const graded = lookUpReading(classed('B'), targetOf(31), { released: null }).warnings;
    expect(graded.find(({ code }) => code === 'gauge-class-coarse')?.message).toContain('grade B (ASME B40.100)');
  });

  it('knows nothing of the gauge of a bare sheet', () => {
    const bare = basisOf({ gauge: null });
    expect(lookUpReading(bare, targetOf(31), { released: null }).gaugeAccuracy).toBeNull();
    const reading = { value: 4500, unit: 'psi' } as const;
    expect(lookUpForce(bare, reading, { unit: 'kip', released: null }).gaugeAccuracy).toBeNull();
  });
});
