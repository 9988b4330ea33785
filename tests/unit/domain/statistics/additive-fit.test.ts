import { describe, expect, it } from 'vitest';
import { fitAdditive } from '../../../../src/domain/statistics/additive-fit.ts';
import { studentUpperProbability } from '../../../../src/domain/statistics/student-upper-probability.ts';
import { expectDigits } from '../../../expect-digits.ts';

const because = 'worked by hand';
const at = (first: string, second: string, y: number) => ({ y, levels: [first, second] });
const difference = (factor: number, level: string, other: string) => [
  { factor, level, weight: 1 },
  { factor, level: other, weight: -1 },
];

describe('an additive fit', () => {
  it('takes effects apart where they overlap', () => {
    const fit = fitAdditive([at('A', 'x', 1), at('A', 'y', 3), at('B', 'x', 5), at('B', 'y', 7)]);
    expect([fit.rank, fit.degreesOfFreedom]).toEqual([3, 1]);
    expectDigits(fit.contrast(difference(0, 'B', 'A'))?.estimate ?? 0, { certified: 4, digits: 12, because });
    expectDigits(fit.contrast(difference(1, 'y', 'x'))?.estimate ?? 0, { certified: 2, digits: 12, because });
  });

  it('says that a layout in two parts leaves differences between them open, and those within them not', () => {
    const fit = fitAdditive([at('A', 'x', 1), at('A', 'y', 2), at('B', 'z', 5), at('B', 'z', 6)]);
    expect(fit.contrast(difference(0, 'A', 'B'))).toBeNull();
    expect(fit.contrast(difference(1, 'x', 'z'))).toBeNull();
    expectDigits(fit.contrast(difference(1, 'y', 'x'))?.estimate ?? 0, { certified: 1, digits: 12, because });
    // The sum of both effects, which is what was observed, is estimable where neither is.
    const sum = [...difference(0, 'B', 'A'), ...difference(1, 'z', 'x')];
    expectDigits(fit.contrast(sum)?.estimate ?? 0, { certified: 4.5, digits: 12, because });
  });

  it('has no scatter where every observation is needed', () => {
    const fit = fitAdditive([at('A', 'x', 1), at('B', 'x', 2)]);
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit.residualStandardDeviation).toBeNaN();
  });

  it('of nothing, of a value that is none or of a level that is not there is an error of the program', () => {
    expect(() => fitAdditive([at('A', 'x', Number.NaN)])).toThrow(RangeError);
    expect(() => fitAdditive([{ y: 1, levels: ['A'] }, at('A', 'x', 1)])).toThrow(RangeError);
    expect(() => fitAdditive([at('A', 'x', 1)]).contrast(difference(0, 'A', 'B'))).toThrow(RangeError);
  });
});

describe('the upper probability of Student t', () => {
  it('is what the quantile table gives, on either side', () => {
    const printed = { digits: 4, because: 'a quantile printed to four digits, where the density is 0.04' } as const;
    expectDigits(1 + studentUpperProbability(2.228, 10), { certified: 1.025, ...printed });
    expectDigits(studentUpperProbability(-2.228, 10), { certified: 0.975, ...printed });
    expect(studentUpperProbability(0, 10)).toBe(0.5);
  });
});
