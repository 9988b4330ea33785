import { describe, expect, it } from 'vitest';
import { writeQuantity } from '../../../../src/domain/units/write-quantity.ts';

describe('a quantity inside a sentence', () => {
  it.each([
    [31.0249, 'kip', '31.02 kip'],
    [4500, 'psi', '4500 psi'],
    [0, 'N', '0 N'],
    [-0.000123456, 'MN', '-0.0001235 MN'],
    [1234567, 'N', '1235000 N'],
  ])('has four significant digits and its unit: %d %s', (value, unit, written) => {
    expect(writeQuantity({ value, unit })).toBe(written);
  });
});
