import { describe, expect, it } from 'vitest';
import { swappedDigits } from '../../../../src/domain/calibration/digit-slips.ts';

describe('swapping adjacent digits', () => {
  it('gives every different value once', () => {
    expect(swappedDigits(5240)).toEqual([2540, 5420, 5204]);
    expect(swappedDigits(11)).toEqual([]);
    expect(swappedDigits(7)).toEqual([]);
  });

  it('swaps across a decimal point and leaves the point where it is', () => {
    expect(swappedDigits(23.5)).toEqual([32.5, 25.3]);
  });

  it('leaves alone what is not written in plain digits', () => {
    expect(swappedDigits(1e21)).toEqual([]);
    expect(swappedDigits(1e-7)).toEqual([]);
  });
});
