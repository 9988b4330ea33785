import { describe, expect, it } from 'vitest';
import { deletedResidual } from '../../../../src/domain/regression/deleted-residual.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('the deleted residual', () => {
  it('is the studentized one where that is 1, larger above and smaller below', () => {
    expect(deletedResidual(1, 8)).toBe(1);
    expect(deletedResidual(-1, 2)).toBe(-1);
    expect(deletedResidual(2, 8)).toBeGreaterThan(2);
    expect(deletedResidual(0.5, 8)).toBeLessThan(0.5);
    expect(deletedResidual(0, 8)).toBe(0);
  });

  it('is r sqrt((nu - 1) / (nu - r^2)): r of 2 with 5 degrees of freedom is 4', () => {
    const because = 'whole numbers: 2 sqrt(4 / 1)';
    expectDigits(deletedResidual(2, 5) ?? Number.NaN, { certified: 4, digits: 15, because });
    expectDigits(deletedResidual(-2, 5) ?? Number.NaN, { certified: -4, digits: 15, because });
  });

  it('is infinite where all other points fit exactly, by rounding too', () => {
    expect(deletedResidual(2, 4)).toBe(Number.POSITIVE_INFINITY);
    expect(deletedResidual(-2 * (1 - 1e-14), 4)).toBe(Number.NEGATIVE_INFINITY);
    expect(deletedResidual(2 * (1 + 1e-14), 4)).toBe(Number.POSITIVE_INFINITY);
    expect(deletedResidual(2 * (1 - 1e-9), 4)).toBeLessThan(1e6);
  });

  it('does not exist where no degree of freedom is left without the point', () => {
    expect(deletedResidual(1, 1)).toBeNull();
  });
});
