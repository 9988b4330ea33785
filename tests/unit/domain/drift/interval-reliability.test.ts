import { describe, expect, it } from 'vitest';
import { intervalReliability } from '../../../../src/domain/drift/interval-reliability.ts';
import { expectDigits } from '../../../expect-digits.ts';

const outcomes = (months: number, within: number, found: number) =>
  Array.from({ length: found }, (_, index) => ({ months, isWithin: index < within }));
// R. G. Newcombe, Statistics in Medicine 17 (1998) 857, Table I, score method (from memory).
const printed = { digits: 'as-printed', because: 'the four decimals the paper prints' } as const;

describe('the reliability of intervals', () => {
  it('is the share found within, with the published bounds of Wilson', () => {
    const rows = intervalReliability([...outcomes(12, 81, 263), ...outcomes(6, 15, 148)], 0.95);
    expect(rows.map(({ months, found, within }) => [months, found, within])).toEqual([
      [6, 148, 15],
      [12, 263, 81],
    ]);
    expectDigits(rows[0]?.low ?? Number.NaN, { certified: '0.0624', ...printed });
    expectDigits(rows[0]?.high ?? Number.NaN, { certified: '0.1605', ...printed });
    expectDigits(rows[1]?.low ?? Number.NaN, { certified: '0.2553', ...printed });
    expectDigits(rows[1]?.high ?? Number.NaN, { certified: '0.3662', ...printed });
  });

  it('has bounds where all were within, or none', () => {
    const [all] = intervalReliability(outcomes(12, 5, 5), 0.95);
    expect(all?.share).toBe(1);
    expect(all?.high).toBe(1);
    // n / (n + z^2) in closed form.
    const z = 1.959963984540054;
    expectDigits(all?.low ?? Number.NaN, { certified: 5 / (5 + z * z), digits: 10, because: 'the formula at p = 1' });
    expect(intervalReliability(outcomes(12, 0, 5), 0.95)[0]?.low).toBe(0);
    expect(intervalReliability([], 0.95)).toEqual([]);
  });
});
