import { describe, expect, it } from 'vitest';
import type { StrandFigures } from '../../../../src/domain/strand/strand-row.ts';
import { findStrand, strandTable } from '../../../../src/domain/strand/strand-table.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const figures = ({ area, breakingLoad, yieldLoad, modulus }: StrandFigures) => [area, breakingLoad, yieldLoad, modulus];
const ofStandard = (standard: string) => strandTable.filter((row) => row.standard === standard);
const inSi = (standard: string) =>
  ofStandard(standard).map(({ size, si }) => [size, si.area.value, si.breakingLoad.value, si.yieldLoad.value]);

describe('the strand table', () => {
  it('holds the rows of ASTM A416, both columns as printed and neither converted', () => {
    expect(
      ofStandard('ASTM A416').map(({ designation, inPound, si }) => [
        designation,
        inPound?.area.value,
        inPound?.breakingLoad.value,
        si.area.value,
        si.breakingLoad.value,
      ]),
    ).toEqual([
      ['3/8 in 250', 0.08, 20000, 51.61, 89],
      ['7/16 in 250', 0.108, 27000, 69.68, 120.1],
      ['1/2 in 250', 0.144, 36000, 92.9, 160.1],
      ['0.6 in 250', 0.216, 54000, 139.35, 240.2],
      ['3/8 in 270', 0.085, 23000, 54.84, 102.3],
      ['7/16 in 270', 0.115, 31000, 74.19, 137.9],
      ['1/2 in 270', 0.153, 41300, 98.71, 183.7],
      ['1/2 in special 270', 0.167, 45000, 107.7, 200.2],
      ['9/16 in 270', 0.192, 51700, 123.8, 230],
      ['0.6 in 270', 0.217, 58600, 140, 260.7],
      ['0.62 in 270', 0.231, 62400, 149, 277.6],
      ['0.7 in 270', 0.294, 79400, 189.7, 353],
    ]);
  });

  it('holds the rows of the two European drafts apart, since their 0.1 % forces differ', () => {
    expect(inSi('prEN 10138-3')).toEqual([
      ['12.5 mm', 93, 173, 149],
      ['13 mm', 100, 186, 160],
      ['15.2 mm', 140, 260, 224],
      ['16 mm', 150, 279, 240],
    ]);
    expect(inSi('FprEN 10138-3')).toEqual([
      ['12.5 mm', 93, 173, 152],
      ['12.9 mm', 100, 186, 164],
      ['15.2 mm', 139, 259, 228],
      ['15.7 mm', 150, 279, 246],
    ]);
    expect(ofStandard('prEN 10138-3').every(({ edition }) => edition === '2000')).toBe(true);
    expect(ofStandard('FprEN 10138-3').every(({ edition }) => edition === '2009')).toBe(true);
  });

  it('holds the rows of the Indian and the Canadian standard', () => {
    expect(inSi('IS 14268')).toEqual([
      ['9.5 mm', 54.8, 102.3, 92.1],
      ['11.1 mm', 74.2, 137.9, 124.1],
      ['12.7 mm', 98.7, 183.7, 165.3],
      ['15.2 mm', 140, 260.7, 234.6],
    ]);
    expect(inSi('CSA G279').map((row) => row.slice(0, 3))).toEqual([
      ['9', 54.8, 102.3],
      ['11', 74.1, 137.9],
      ['13', 98.7, 183.7],
      ['15', 140, 260.7],
    ]);
  });

  it('has computed forces of the draft of 2009: 1860 MPa x area, and 0.88 of it, to a whole kN', () => {
    for (const { si } of ofStandard('FprEN 10138-3')) {
      expect(si.breakingLoad.value).toBe(Math.round((1860 * si.area.value) / 1000));
      expect(si.yieldLoad.value).toBe(Math.round(0.88 * si.breakingLoad.value));
      expect([si.breakingLoad.provenance, si.yieldLoad.provenance]).toEqual(['computed', 'computed']);
    }
  });

  it('says of the values known from memory that they are', () => {
    const fromMemory = strandTable.filter(({ si }) => si.breakingLoad.provenance === 'memory');
    expect(fromMemory.map(({ designation }) => designation)).toEqual([
      '1/2 in special 270',
      '9/16 in 270',
      '0.62 in 270',
      '0.7 in 270',
    ]);
    expect(strandTable.filter(({ si }) => si.area.provenance === 'memory').map(({ size }) => size)).toEqual([
      '0.62 in',
    ]);
    expect(ofStandard('CSA G279').every(({ si }) => si.yieldLoad.provenance === 'memory')).toBe(true);
    expect(ofStandard('IS 14268').every(({ si }) => si.yieldLoad.provenance === 'second-hand')).toBe(true);
  });

  it('takes the yield load of low-relaxation strand by ASTM and CSA as 0.90 of the breaking load', () => {
    for (const row of [...ofStandard('ASTM A416'), ...ofStandard('CSA G279')]) {
      for (const { yieldLoad, breakingLoad } of row.inPound === null ? [row.si] : [row.inPound, row.si]) {
        expect(yieldLoad.basis).toBe('one-percent-extension');
        expect(yieldLoad.unit).toBe(breakingLoad.unit);
        expectDigits(yieldLoad.value / breakingLoad.value, {
          certified: '0.9',
          digits: 15,
          because: 'two roundings of a double',
        });
      }
    }
  });

  it('names no modulus where its source names none', () => {
    const named = strandTable.filter(({ si }) => si.modulus !== null).map(({ standard }) => standard);
    expect(new Set(named)).toEqual(new Set(['ASTM A416', 'FprEN 10138-3']));
    expect(ofStandard('ASTM A416').map(({ inPound, si }) => [inPound?.modulus, si.modulus])).toEqual(
      ofStandard('ASTM A416').map(() => [
        { value: 28500, unit: 'ksi', provenance: 'read' },
        { value: 197000, unit: 'MPa', provenance: 'read' },
      ]),
    );
  });

  it('gives breaking stresses of the named grade, so that no row has a slipped digit', () => {
    const grades: Readonly<Record<string, number>> = { Y1860S7: 1860, 'class II': 1860, 'grade 1860': 1860 };
    for (const { designation, grade, inPound, si } of strandTable) {
      const megapascals = grades[grade] ?? Number(grade) * 6.894757293168361;
      const stress = convert(force, si.breakingLoad, 'N') / si.area.value;
      expect(Math.abs(stress / megapascals - 1), designation).toBeLessThan(0.01);
      if (inPound === null) continue;
      const ksi = inPound.breakingLoad.value / inPound.area.value / 1000;
      expect(Math.abs(ksi / Number(grade) - 1), designation).toBeLessThan(0.01);
    }
  });

  it('keeps every figure above zero, in the units of its column, and every name once', () => {
    for (const { inPound, si } of strandTable) {
      for (const figure of [...figures(si), ...(inPound === null ? [] : figures(inPound))]) {
        if (figure !== null) expect(figure.value).toBeGreaterThan(0);
      }
      expect([si.area.unit, si.breakingLoad.unit, si.yieldLoad.unit]).toEqual(['mm2', 'kN', 'kN']);
      expect(si.yieldLoad.value).toBeLessThan(si.breakingLoad.value);
    }
    expect(new Set(strandTable.map(({ designation }) => designation)).size).toBe(strandTable.length);
  });
});

describe('a strand a person names', () => {
  it('is found by its own designation', () => {
    for (const row of strandTable) expect(findStrand(row.designation)).toEqual({ ok: true, value: row });
  });

  it.each([
    ['1/2 in 270', '1/2 in 270'],
    ['0.5" 270', '1/2 in 270'],
    ['0.5 in 270', '1/2 in 270'],
    ['.5 in 270', '1/2 in 270'],
    ['0.50 270', '1/2 in 270'],
    ['0.500 in. 270', '1/2 in 270'],
    ['1/2in 270', '1/2 in 270'],
    ['1/2-in 270', '1/2 in 270'],
    ['1/2-inch, grade 270', '1/2 in 270'],
    ['1/2" 270K', '1/2 in 270'],
    ['1/2 in 270 ksi', '1/2 in 270'],
    ['1/2 IN GR. 270', '1/2 in 270'],
    ['1/2”270', '1/2 in 270'],
    ['  1/2   in   250 ', '1/2 in 250'],
    ['1/2 special 270', '1/2 in special 270'],
    ['0.5 in special 270', '1/2 in special 270'],
    ['0.52 in 270', '1/2 in special 270'],
    ['.6" 270 k', '0.6 in 270'],
    ['0.60 in 270', '0.6 in 270'],
    ['0.600 in 270', '0.6 in 270'],
    ['0.62 in 270', '0.62 in 270'],
    ['0.620" 270', '0.62 in 270'],
    ['0.700 in 270', '0.7 in 270'],
    ['0.375 in 250', '3/8 in 250'],
    ['.438 in 270', '7/16 in 270'],
    ['0.4375 in 270', '7/16 in 270'],
    ['0.5625 in 270', '9/16 in 270'],
    ['0.563 in 270', '9/16 in 270'],
    ['15.2 mm Y1860S7 prEN 10138-3:2000', '15.2 mm Y1860S7 (prEN 10138-3:2000)'],
    ['15.2 mm y1860s7 (fpren 10138-3:2009)', '15.2 mm Y1860S7 (FprEN 10138-3:2009)'],
    ['12.7 mm class II (IS 14268:1995)', '12.7 mm class II (IS 14268:1995)'],
    ['13 1860 CSA G279', '13 grade 1860 (CSA G279)'],
  ])('is found however it is written: %j is %s', (text, designation) => {
    expect(outcomeValue(findStrand(text)).designation).toBe(designation);
  });

  it.each([
    '',
    ' ',
    '270',
    '1/2',
    '1/2 in',
    '5/8 in 270',
    '1/2 in 300',
    '0.6 in special 270',
    '0.6 in 2700',
    '11/2 in 270',
    '0.05 in 270',
    '12.7 mm 270',
    '15.2 mm 1860',
    '15.2 mm Y1860S7',
    '15.2 mm Y1860S7 EN 10138-3',
    '0.62 in 250',
    '1/2 in 250 270',
    '__proto__',
    'constructor',
  ])('is refused where no row is meant: %j', (text) => {
    const found = findStrand(text, 'strand');
    expect(found).toMatchObject({ ok: false, problem: { code: 'unknown-strand', where: 'strand', given: text } });
    if (!found.ok) expect(found.problem.needed).toContain('0.6 in 270');
  });
});
