import { describe, expect, it } from 'vitest';
import { agreeingDigits, expectDigits, printedDigits } from '../expect-digits.ts';

const because = 'a test of the comparison itself';

describe('comparing numbers by digits', () => {
  it('accepts a value that agrees to the digits asked for', () => {
    expect(() => expectDigits(2.543219, { certified: '2.54321987', digits: 6, because })).not.toThrow();
  });

  it('rejects a value that agrees to fewer digits, and says how many', () => {
    expect(() => expectDigits(2.54321, { certified: '2.54321987', digits: 6, because })).toThrow(
      /to 5\.41 digits; 6\.00/,
    );
  });

  it('rejects a wrong sign, a wrong factor, NaN and infinity', () => {
    for (const wrong of [-2, 20, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => expectDigits(wrong, { certified: 2, digits: 1, because })).toThrow(because);
    }
  });

  it('reads the digits of a printed value as half a unit of its last digit', () => {
    expect(() => expectDigits(0.00218449, { certified: '0.00218', digits: 'as-printed', because })).not.toThrow();
    expect(() => expectDigits(0.00218551, { certified: '0.00218', digits: 'as-printed', because })).toThrow(because);
    expect(() => expectDigits(1.2345e-7, { certified: '1.234E-07', digits: 'as-printed', because })).not.toThrow();
    expect(() => expectDigits(1.2346e-7, { certified: '1.234E-07', digits: 'as-printed', because })).toThrow(because);
  });

  it('counts a trailing zero as a printed digit', () => {
    expect(printedDigits('2.000') - printedDigits('2.00')).toBe(1);
  });

  it('compares with zero by the absolute error', () => {
    expect(agreeingDigits(1e-7, 0)).toBe(7);
    expect(() => expectDigits(1e-3, { certified: 0, digits: 6, because })).toThrow(because);
  });

  it('refuses a certified value that is not a number', () => {
    expect(() => expectDigits(1, { certified: 'about 1', digits: 1, because })).toThrow('not a number');
  });
});
