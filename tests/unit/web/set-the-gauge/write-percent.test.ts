// A part of the breaking load, in per cent.

import { describe, expect, test } from 'vitest';
import { readPercent, writePercent } from '../../../../src/web/features/set-the-gauge/write-percent.ts';

describe('per cent', () => {
  test.each([
    [0.75, '75'],
    [0.725, '72.5'],
    [0.7, '70'],
    [0.57, '57'],
    [1, '100'],
  ])('of %d reads %s and back', (fraction, percent) => {
    expect(writePercent(fraction)).toBe(percent);
    expect(readPercent(percent)).toBe(fraction);
  });

  test('may be typed with its sign', () => {
    expect(readPercent(' 75 % ')).toBe(0.75);
  });

  test.each(['', '0', '100.1', '-5', '7,5', 'abc', '1e1', '75 kip'])('is not "%s"', (text) => {
    expect(readPercent(text)).toBeNull();
  });
});
