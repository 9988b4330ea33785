import { describe, expect, it } from 'vitest';
import { area } from '../../../../src/domain/units/area.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { length } from '../../../../src/domain/units/length.ts';
import { pressure } from '../../../../src/domain/units/pressure.ts';
import { convert, parseQuantity, parseUnit, type UnitTable } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';

const tables: readonly UnitTable<string>[] = [force, pressure, length, area];

describe('the factors of the units', () => {
  const exactToDoubles = { digits: 15, because: 'exact by definition; one rounding of a double, 1.1e-16' } as const;

  it.each([
    ['N', '1'],
    ['kN', '1000'],
    ['MN', '1000000'],
    ['lbf', '4.4482216152605'],
    ['kip', '4448.2216152605'],
    ['kgf', '9.80665'],
    ['tf', '9806.65'],
    ['short-tonf', '8896.443230521'],
    ['long-tonf', '9964.01641818352'],
  ] as const)('of force: 1 %s is %s N', (unit, certified) => {
    expectDigits(convert(force, { value: 1, unit }, 'N'), { certified, ...exactToDoubles });
  });

  it.each([
    ['Pa', '1'],
    ['kPa', '1000'],
    ['MPa', '1000000'],
    ['psi', '6894.757293168361'],
    ['ksi', '6894757.293168361'],
    ['bar', '100000'],
    ['kgf/cm2', '98066.5'],
  ] as const)('of pressure: 1 %s is %s Pa', (unit, certified) => {
    expectDigits(convert(pressure, { value: 1, unit }, 'Pa'), { certified, ...exactToDoubles });
  });

  it.each([
    ['mm', '1'],
    ['cm', '10'],
    ['m', '1000'],
    ['in', '25.4'],
    ['ft', '304.8'],
  ] as const)('of length: 1 %s is %s mm', (unit, certified) => {
    expectDigits(convert(length, { value: 1, unit }, 'mm'), { certified, ...exactToDoubles });
  });

  it.each([
    ['mm2', '1'],
    ['cm2', '100'],
    ['in2', '645.16'],
  ] as const)('of area: 1 %s is %s mm2', (unit, certified) => {
    expectDigits(convert(area, { value: 1, unit }, 'mm2'), { certified, ...exactToDoubles });
  });

  it('agree with each other: force is pressure times area, a long ton 2240 lbf, a short ton 2000 lbf', () => {
    const psi = convert(pressure, { value: 1, unit: 'psi' }, 'Pa') * convert(area, { value: 1, unit: 'in2' }, 'mm2');
    expectDigits(psi / 1e6, { certified: '4.4482216152605', digits: 15, because: 'three roundings of a double' });
    expectDigits(convert(force, { value: 1, unit: 'long-tonf' }, 'lbf'), { certified: 2240, ...exactToDoubles });
    expectDigits(convert(force, { value: 1, unit: 'short-tonf' }, 'kip'), { certified: 2, ...exactToDoubles });
  });
});

describe('a conversion', () => {
  it('leaves a value in its own unit exactly as it was typed', () => {
    expect(convert(force, { value: 0.1 + 0.2, unit: 'kip' }, 'kip')).toBe(0.1 + 0.2);
  });

  it('keeps zero and the sign', () => {
    expect(convert(force, { value: 0, unit: 'kip' }, 'kN')).toBe(0);
    expectDigits(convert(force, { value: -31, unit: 'kip' }, 'kN'), {
      certified: '-137.8948700730755',
      digits: 15,
      because: 'exact product of 31 and 4.4482216152605; two roundings',
    });
  });
});

describe('a unit a person wrote', () => {
  it('is every symbol as it stands in the table', () => {
    for (const table of tables) {
      for (const unit of Object.keys(table.factors)) expect(parseUnit(table, unit)).toEqual({ ok: true, value: unit });
    }
  });

  it('may be in capitals throughout, as on the face of many gauges', () => {
    for (const table of tables) {
      for (const unit of Object.keys(table.factors)) {
        expect(parseUnit(table, unit.toUpperCase())).toEqual({ ok: true, value: unit });
      }
    }
  });

  it('has no two symbols that differ by capitals alone', () => {
    for (const { factors } of tables) {
      const units = Object.keys(factors);
      expect(new Set(units.map((unit) => unit.toLowerCase())).size).toBe(units.length);
    }
  });

  it.each([
    ['Kips', 'kip', force],
    ['lbs', 'lbf', force],
    ['KN', 'kN', force],
    ['kN.', 'kN', force],
    [' kip\u00a0', 'kip', force],
    ['metric  ton-force', 'tf', force],
    ['short ton', 'short-tonf', force],
    ['Short Tons', 'short-tonf', force],
    ['long ton', 'long-tonf', force],
    ['long tons', 'long-tonf', force],
    ['metric ton', 'tf', force],
    ['metric tons', 'tf', force],
    ['PSI', 'psi', pressure],
    ['psi.', 'psi', pressure],
    ['KSI', 'ksi', pressure],
    ['mpa', 'MPa', pressure],
    ['N/mm²', 'MPa', pressure],
    ['kg/cm²', 'kgf/cm2', pressure],
    ['KGF/CM^2', 'kgf/cm2', pressure],
    ['in²', 'in2', area],
    ['in^2', 'in2', area],
    ['sq. in.', 'in2', area],
    ['SQ IN', 'in2', area],
    ['in.', 'in', length],
    ['"', 'in', length],
    ["'", 'ft', length],
  ] as const)('may be written %j for %s', (text, unit, table: UnitTable<string>) => {
    expect(parseUnit(table, text)).toEqual({ ok: true, value: unit });
  });

  it.each([
    't',
    'T',
    'ton',
    'Ton',
    'TON',
    'tons',
    'ton.',
    ' ton ',
    'tonf',
    'tonsf',
    'ton-f',
    'ton-force',
    'tons-force',
    'ton force',
    'tons  force',
    'tonne',
    'tonnes',
    'tonelada',
    'Toneladas',
  ])('is refused as ambiguous for a bare ton: %j', (text) => {
    const parsed = parseUnit(force, text, 'units.force');
    expect(parsed).toMatchObject({
      ok: false,
      problem: { code: 'unit-ambiguous', where: 'units.force', given: text },
    });
    if (!parsed.ok) for (const unit of ['tf', 'short-tonf', 'long-tonf']) expect(parsed.problem.needed).toContain(unit);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'psi', 'm', 'furlong', 'k', 'kip/in2'])(
    'is refused where it is not a unit of force: %s',
    (text) => {
      expect(parseUnit(force, text)).toMatchObject({ ok: false, problem: { code: 'unit-unknown', given: text } });
    },
  );

  it.each(['', ' ', '\t'])('is missed where there is none: %j', (text) => {
    const parsed = parseUnit(pressure, text);
    expect(parsed).toMatchObject({ ok: false, problem: { code: 'unit-missing' } });
    if (!parsed.ok) expect(parsed.problem.needed).toContain('psi');
  });
});

describe('a quantity a person typed', () => {
  it.each([
    ['31 kip', 31, 'kip'],
    ['31kip', 31, 'kip'],
    ['  31   KIP ', 31, 'kip'],
    ['31\u202fkip', 31, 'kip'],
    ['1,234.5 lbf', 1234.5, 'lbf'],
    ['.5 MN', 0.5, 'MN'],
    ['1e3 kN', 1000, 'kN'],
    ['\u22125 kip', -5, 'kip'],
    ['0 N', 0, 'N'],
  ])('keeps its value and its unit: %j', (text, value, unit) => {
    expect(parseQuantity(force, text)).toEqual({ ok: true, value: { value, unit } });
  });

  it.each([
    ['', 'not-a-number'],
    ['kip', 'not-a-number'],
    ['kip 31', 'not-a-number'],
    ['NaN kip', 'not-a-number'],
    ['Infinity kip', 'not-a-number'],
    ['31.5.2 kip', 'not-a-number'],
    ['5, kip', 'not-a-number'],
    ['31', 'unit-missing'],
    ['31 ', 'unit-missing'],
    ['31 ton', 'unit-ambiguous'],
    ['31t', 'unit-ambiguous'],
    ['31 psi', 'unit-unknown'],
    ['31 kip kip', 'unit-unknown'],
    ['31 000 kip', 'unit-unknown'],
    ['1/2 kip', 'unit-unknown'],
    ['31 __proto__', 'unit-unknown'],
    ['31,000 lbf', 'ambiguous-number'],
    ['5,5 kip', 'ambiguous-number'],
    ['1e400 kip', 'number-out-of-range'],
  ])('is refused whole, with what was typed: %j is %s', (text, code) => {
    expect(parseQuantity(force, text, '--force')).toMatchObject({
      ok: false,
      problem: { code, given: text, where: '--force' },
    });
  });
});
