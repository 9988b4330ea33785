import { describe, expect, it } from 'vitest';
import { findStrand, strandTable } from '../../../../src/domain/strand/strand-table.ts';
import { outcomeValue } from '../../../outcome-value.ts';

describe('the strand table', () => {
  it('holds the rows of ASTM A416, both columns as printed and neither converted', () => {
    expect(
      strandTable.map((row) => [row.designation, row.areaIn2, row.breakingLbf, row.areaMm2, row.breakingKn]),
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

  it('says of the breaking loads known from memory that they are', () => {
    const fromMemory = strandTable.filter(({ provenance }) => provenance === 'memory');
    expect(fromMemory.map(({ designation }) => designation)).toEqual([
      '1/2 in special 270',
      '9/16 in 270',
      '0.62 in 270',
      '0.7 in 270',
    ]);
    expect(strandTable.every(({ provenance }) => provenance === 'memory' || provenance === 'read')).toBe(true);
  });

  it('takes the yield load of low-relaxation strand as 0.90 of the breaking load', () => {
    expect(new Set(strandTable.map(({ yieldOfBreaking }) => yieldOfBreaking))).toEqual(new Set([0.9]));
  });

  it('gives breaking stresses of the named grade, so that no row has a slipped digit', () => {
    for (const { designation, areaIn2, breakingLbf, areaMm2, breakingKn } of strandTable) {
      const grade = Number(designation.slice(-3));
      const ksi = breakingLbf / areaIn2 / 1000;
      const megapascals = (breakingKn * 1000) / areaMm2;
      expect(Math.abs(ksi / grade - 1), designation).toBeLessThan(0.01);
      expect(Math.abs(megapascals / (grade * 6.894757293168361) - 1), designation).toBeLessThan(0.01);
    }
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
