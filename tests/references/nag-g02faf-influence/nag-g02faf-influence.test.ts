// Published studentized residuals and Cook's distances, from printed residuals and leverages of a regression with eleven
// coefficients. The same statistics as parts of a fit are held against refits in tests/property/fit-polynomial.test.ts.

import { describe, expect, it } from 'vitest';
import { cooksDistance } from '../../../src/domain/regression/cooks-distance.ts';
import { deletedResidual } from '../../../src/domain/regression/deleted-residual.ts';
import { expectDigits } from '../../expect-digits.ts';
import reference from './case.json' with { type: 'json' };

const { data, results } = reference;
const printed = { digits: 'as-printed', because: 'the three decimals the manual prints' } as const;
const degreesOfFreedom = data.observations - data.coefficients;

describe('influence statistics of the NAG Library Manual, g02faf', () => {
  const rows = data.residual_and_leverage.map(([residual, leverage], index) => {
    const [studentized = '', deleted = '', distance = ''] =
      results.internally_studentized_externally_studentized_cooks_distance[index] ?? [];
    const deviation = Math.sqrt(Number(data.residual_mean_square) * (1 - Number(leverage)));
    return { r: Number(residual) / deviation, leverage: Number(leverage), studentized, deleted, distance };
  });

  it('are given as printed, for all ten points', () => {
    expect(rows).toHaveLength(10);
    for (const { r, leverage, studentized, deleted, distance } of rows) {
      expectDigits(r, { certified: studentized, ...printed });
      expectDigits(deletedResidual(r, degreesOfFreedom) ?? Number.NaN, { certified: deleted, ...printed });
      expectDigits(cooksDistance(r, leverage, data.coefficients), { certified: distance, ...printed });
    }
  });

  it('would not be met by the deleted residual with one degree of freedom more, nor by a distance of the deleted one', () => {
    const [, second, , , , , seventh] = rows;
    const wrong = deletedResidual(seventh?.r ?? Number.NaN, degreesOfFreedom + 1) ?? Number.NaN;
    expect(() => expectDigits(wrong, { certified: seventh?.deleted ?? '', ...printed })).toThrow(printed.because);
    const deleted = deletedResidual(second?.r ?? Number.NaN, degreesOfFreedom) ?? Number.NaN;
    const other = cooksDistance(deleted, second?.leverage ?? Number.NaN, data.coefficients);
    expect(() => expectDigits(other, { certified: second?.distance ?? '', ...printed })).toThrow(printed.because);
    const fewer = cooksDistance(second?.r ?? Number.NaN, second?.leverage ?? Number.NaN, data.coefficients - 1);
    expect(() => expectDigits(fewer, { certified: second?.distance ?? '', ...printed })).toThrow(printed.because);
  });
});
