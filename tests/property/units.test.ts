// Laws of numbers and quantities as people write them; the round trip of conversions is in unit-round-trip.test.ts.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../src/domain/units/area.ts';
import { force } from '../../src/domain/units/force.ts';
import { length } from '../../src/domain/units/length.ts';
import { modulus } from '../../src/domain/units/modulus.ts';
import { parseNumber } from '../../src/domain/units/number.ts';
import { pressure } from '../../src/domain/units/pressure.ts';
import { convert, parseQuantity, parseUnit, type UnitTable } from '../../src/domain/units/quantity.ts';
import { expectDigits } from '../expect-digits.ts';

const tables: readonly UnitTable<string>[] = [force, pressure, length, area, modulus];
const anyTable = fc.constantFrom(...tables);
const unitOf = (table: UnitTable<string>) => fc.constantFrom(...Object.keys(table.factors));
const finite = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('a number', () => {
  it('reads back as it was printed', () => {
    fc.assert(
      fc.property(finite, (value) => {
        expect(parseNumber(String(value))).toEqual({ ok: true, value: value === 0 ? 0 : value });
      }),
    );
  });

  it('reads back as the United States print it with a decimal point, and is never misread without one', () => {
    const print = new Intl.NumberFormat('en-US', { maximumFractionDigits: 3 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e12 }), (thousandths) => {
        const value = thousandths / 1000;
        const parsed = parseNumber(print.format(value));
        if (parsed.ok) expect(parsed.value).toBe(value);
        else expect(parsed.problem.code).toBe('ambiguous-number');
      }),
    );
  });

  it('is never misread where it is printed with a decimal comma', () => {
    const print = new Intl.NumberFormat('de-DE', { maximumFractionDigits: 3 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e12 }), (thousandths) => {
        const text = print.format(thousandths / 1000);
        fc.pre(text.includes(','));
        expect(parseNumber(text)).toMatchObject({ ok: false, problem: { code: 'ambiguous-number' } });
      }),
    );
  });

  it('is finite or a problem, whatever is typed', () => {
    const typed = fc.string({ unit: fc.constantFrom(...'0123456789.,-+eE \u2212\u00a0'), maxLength: 20 });
    fc.assert(
      fc.property(fc.oneof(typed, fc.string()), (text) => {
        const parsed = parseNumber(text);
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
        else expect(['not-a-number', 'ambiguous-number', 'number-out-of-range']).toContain(parsed.problem.code);
      }),
    );
  });
});

describe('a quantity', () => {
  it('reads back as value and unit in any capitals and spacing', () => {
    const written = anyTable.chain((table) =>
      fc.record({
        table: fc.constant(table),
        unit: unitOf(table),
        value: finite,
        space: fc.constantFrom('', ' ', '\u00a0', '   '),
      }),
    );
    fc.assert(
      fc.property(written, fc.boolean(), ({ table, unit, value, space }, loud) => {
        const text = `${value}${space}${loud ? unit.toUpperCase() : unit}`;
        expect(parseQuantity(table, text)).toEqual({ ok: true, value: { value: value === 0 ? 0 : value, unit } });
      }),
    );
  });

  it('has a unit of its table or a problem, whatever is typed', () => {
    const names = fc.constantFrom(...Object.getOwnPropertyNames(Object.prototype));
    fc.assert(
      fc.property(anyTable, fc.oneof(fc.string(), names), (table, text) => {
        const parsed = parseUnit(table, text);
        if (parsed.ok) expect(Object.keys(table.factors)).toContain(parsed.value);
        else expect(['unit-missing', 'unit-unknown', 'unit-ambiguous']).toContain(parsed.problem.code);
      }),
    );
  });

  it('keeps its order and its ratio in every other unit', () => {
    const asked = anyTable.chain((table) =>
      fc.record({ table: fc.constant(table), unit: unitOf(table), other: unitOf(table) }),
    );
    const positive = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(
        asked,
        positive,
        fc.double({ min: 1.001, max: 1000, noNaN: true }),
        ({ table, unit, other }, value, times) => {
          const one = convert(table, { value, unit }, other);
          const more = convert(table, { value: value * times, unit }, other);
          expect(more).toBeGreaterThan(one);
          expectDigits(more / one, {
            certified: times,
            digits: 14,
            because: 'six roundings of a double, 1.1e-16 each',
          });
        },
      ),
    );
  });
});
