import { describe, expect, it } from 'vitest';
import { jackingForce } from '../../../../src/domain/strand/jacking-force.ts';
import { columnFor } from '../../../../src/domain/strand/strand-row.ts';
import { findStrand } from '../../../../src/domain/strand/strand-table.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const half = outcomeValue(findStrand('1/2 in 270'));
const six = outcomeValue(findStrand('0.6 in 270'));
const roundings = { digits: 15, because: 'exact decimal; two roundings of a double' } as const;

describe('the force one jack pulls', () => {
  it('is the fraction of the breaking load: 0.75 of 0.6 in 270 is 43.95 kip', () => {
    const pulled = jackingForce(six, 'in-pound', { fraction: 0.75, strands: 1 });
    expect(pulled.unit).toBe('kip');
    expectDigits(pulled.value, { certified: '43.95', ...roundings });
  });

  it('comes from the SI column by itself, not by conversion: 0.75 of 0.6 in 270 is 195.525 kN', () => {
    const pulled = jackingForce(six, 'si', { fraction: 0.75, strands: 1 });
    expect(pulled.unit).toBe('kN');
    expectDigits(pulled.value, { certified: '195.525', ...roundings });
    const converted = convert(force, jackingForce(six, 'in-pound', { fraction: 0.75, strands: 1 }), 'kN');
    expect(Math.abs(converted - pulled.value)).toBeGreaterThan(0.02);
  });

  it('is taken times the strands the jack pulls together', () => {
    const pulled = jackingForce(half, 'in-pound', { fraction: 0.75, strands: 12 });
    expectDigits(pulled.value, { certified: '371.7', ...roundings });
  });

  it('is the breaking load itself at a fraction of 1', () => {
    expect(jackingForce(half, 'si', { fraction: 1, strands: 1 })).toEqual({ value: 183.7, unit: 'kN' });
  });
});

describe('a strand without a column in inches and pounds', () => {
  it('is pulled to its SI column in kip, converted once', () => {
    const european = outcomeValue(findStrand('15.2 mm Y1860S7 (prEN 10138-3:2000)'));
    const pulled = jackingForce(european, 'in-pound', { fraction: 0.75, strands: 1 });
    expect(pulled.unit).toBe('kip');
    expectDigits(convert(force, pulled, 'kN'), { certified: '195', ...roundings });
  });
});

describe('the column of the standard', () => {
  it.each(['lbf', 'kip', 'short-tonf', 'long-tonf'] as const)('is in-pound for %s', (unit) => {
    expect(columnFor(unit)).toBe('in-pound');
  });

  it.each(['N', 'kN', 'MN', 'kgf', 'tf'] as const)('is SI for %s', (unit) => {
    expect(columnFor(unit)).toBe('si');
  });
});
