// Converting a quantity to another unit and back gives the quantity, for every pair of units.

import fc from 'fast-check';
import { describe, it } from 'vitest';
import { area } from '../../src/domain/units/area.ts';
import { force } from '../../src/domain/units/force.ts';
import { length } from '../../src/domain/units/length.ts';
import { modulus } from '../../src/domain/units/modulus.ts';
import { pressure } from '../../src/domain/units/pressure.ts';
import { convert, type UnitTable } from '../../src/domain/units/quantity.ts';
import { expectDigits } from '../expect-digits.ts';

function expectRoundTrip<U extends string>(table: UnitTable<U>): void {
  const units = fc.constantFrom(...(Object.keys(table.factors) as U[]));
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), units, units, (value, unit, other) => {
      const there = convert(table, { value, unit }, other);
      const back = convert(table, { value: there, unit: other }, unit);
      expectDigits(back, { certified: value, digits: 15, because: 'four roundings of a double, 1.1e-16 each' });
    }),
  );
}

describe('a unit round trip', () => {
  it('keeps a force', () => expectRoundTrip(force));
  it('keeps a pressure', () => expectRoundTrip(pressure));
  it('keeps a length', () => expectRoundTrip(length));
  it('keeps a modulus of elasticity', () => expectRoundTrip(modulus));
  it('keeps an area', () => expectRoundTrip(area));
});
