// The straight scale of a digital gauge.

import { describe, expect, test } from 'vitest';
import { type BarMeasures, barNumbers, placeOnBar } from '../../../../src/web/dial/bar-geometry.ts';

const bar: BarMeasures = { left: 10, right: 310, characterWidth: 7, gap: 8 };

describe('the place on the scale', () => {
  test('is the left end at zero, the right end at full scale, and even between', () => {
    expect(placeOnBar(0, 700, bar)).toBe(10);
    expect(placeOnBar(350, 700, bar)).toBe(160);
    expect(placeOnBar(700, 700, bar)).toBe(310);
  });

  test('stays at the ends for a reading outside the scale', () => {
    expect(placeOnBar(-1, 700, bar)).toBe(10);
    expect(placeOnBar(900, 700, bar)).toBe(310);
  });
});

describe('the numbers of the scale', () => {
  test.each([
    [700, 11],
    [10_000, 6],
    [60, 11],
    [99_999, 2],
  ])('up to %d have room beside each other', (fullScale, count) => {
    const numbers = barNumbers(fullScale, bar);
    const room = (bar.right - bar.left) / (numbers.length - 1);
    expect(numbers[0]).toBe(0);
    expect(numbers.at(-1)).toBe(fullScale);
    expect(room).toBeGreaterThanOrEqual(String(fullScale).length * bar.characterWidth + bar.gap);
    expect(numbers).toHaveLength(count);
  });

  test('have no more digits than the full scale and one', () => {
    expect(barNumbers(1, bar).every((number) => String(number).length <= 3)).toBe(true);
  });
});
