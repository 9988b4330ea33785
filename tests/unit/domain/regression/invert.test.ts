import { describe, expect, it } from 'vitest';
import { fitPolynomial } from '../../../../src/domain/regression/fit-polynomial.ts';
import { invert } from '../../../../src/domain/regression/invert.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const fitOf = (y: (x: number) => number, degree: 1 | 2 | 3) =>
  outcomeValue(
    fitPolynomial(
      [1, 2, 3, 4, 5, 6].map((x) => ({ x, y: y(x) })),
      degree,
    ),
  );

describe('the x at which a curve has a value', () => {
  it('is exact for a line and close to exact for a cubic', () => {
    expectDigits(
      outcomeValue(
        invert(
          fitOf((x) => 2 * x + 1, 1),
          8,
        ),
      ),
      {
        certified: 3.5,
        digits: 14,
        because: 'a few roundings',
      },
    );
    const cubic = fitOf((x) => x ** 3, 3);
    expectDigits(outcomeValue(invert(cubic, 4 ** 3 + 10)), {
      certified: 74 ** (1 / 3),
      digits: 13,
      because: 'the coefficients themselves carry about fourteen digits',
    });
  });

  it('takes both ends and refuses what lies beyond them', () => {
    const line = fitOf((x) => 2 * x + 1, 1);
    expect(outcomeValue(invert(line, 3))).toBe(1);
    expect(outcomeValue(invert(line, 13))).toBe(6);
    for (const y of [2.999, 13.001, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(invert(line, y)).toMatchObject({ ok: false, problem: { code: 'outside-calibrated-range' } });
    }
  });

  it('stays at the end for a value that lies one rounding inside it', () => {
    // Such a value once came out at the other end: the distance to it already rounds to zero at its own end.
    const line = outcomeValue(
      fitPolynomial(
        [100, 200, 1000].map((y, index) => ({ x: [1, 2, 10][index] ?? 0, y })),
        1,
      ),
    );
    const because = 'one rounding of the value, carried to x';
    expectDigits(outcomeValue(invert(line, 100.00000000000001)), { certified: 1, digits: 14, because });
    expectDigits(outcomeValue(invert(line, 999.9999999999999)), { certified: 10, digits: 14, because });
  });

  it('refuses a curve on which a value has two origins', () => {
    expect(
      invert(
        fitOf((x) => (x - 3) ** 2, 2),
        2,
      ),
    ).toMatchObject({ problem: { code: 'curve-not-increasing' } });
  });
});
