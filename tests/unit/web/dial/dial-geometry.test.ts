// Angles and points of a round face.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleForReading,
  arcPath,
  bandPath,
  pointAt,
  startDegrees,
  strokesPath,
  sweepDegrees,
} from '../../../../src/web/dial/dial-geometry.ts';
import { expectDigits } from '../../../expect-digits.ts';

const fullScales = [700, 10_000, 60, 600, 250, 15_000, 1] as const;

describe('the angle for a reading', () => {
  test.each(fullScales)('of a face to %d starts at lower left and ends at lower right', (fullScale) => {
    expect(angleForReading(0, fullScale)).toBe(-135);
    expect(angleForReading(fullScale, fullScale)).toBe(135);
    expect(angleForReading(fullScale / 2, fullScale)).toBe(0);
  });

  test('is 270 degrees times the share of the full scale', () => {
    expectDigits(angleForReading(4300, 10_000), {
      certified: -18.9,
      digits: 14,
      because: '-135 + 270 x 0.43 is exact in three digits; the rest is rounding of doubles',
    });
  });

  test('stays at the stops for a reading outside the face', () => {
    expect(angleForReading(-5, 700)).toBe(startDegrees);
    expect(angleForReading(701, 700)).toBe(startDegrees + sweepDegrees);
  });

  test('rises with the reading over the whole face', () => {
    const reading = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(reading, reading, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        const [below, above] = [angleForReading(low, 100_000), angleForReading(high, 100_000)];
        expect(low === high ? below === above : below < above).toBe(true);
      }),
    );
  });
});

describe('the point at an angle', () => {
  test('is up at 0, right at 90, down at 180 and left at -90', () => {
    const rounded = (angle: number) => {
      const { x, y } = pointAt(angle, 10);
      return [Math.round(x) + 0, Math.round(y) + 0];
    };
    expect(rounded(0)).toEqual([0, -10]);
    expect(rounded(90)).toEqual([10, 0]);
    expect(rounded(180)).toEqual([0, 10]);
    expect(rounded(-90)).toEqual([-10, 0]);
  });

  test('lies on its radius', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (angle) => {
        const { x, y } = pointAt(angle, 50);
        expectDigits(Math.hypot(x, y), {
          certified: 50,
          digits: 13,
          because: 'sine and cosine are good to the last bit',
        });
      }),
    );
  });
});

describe('paths', () => {
  test('an arc of more than half a turn takes the long way round', () => {
    expect(arcPath(-135, 135, 100)).toBe('M-70.711 70.711A100 100 0 1 1 70.711 70.711');
    expect(arcPath(0, 90, 100)).toBe('M0.000 -100.000A100 100 0 0 1 100.000 -0.000');
  });

  test('a band is closed and goes back along its inner radius', () => {
    expect(bandPath(-90, 90, 50, 60)).toBe(
      'M-60.000 -0.000A60 60 0 0 1 60.000 -0.000L50.000 -0.000A50 50 0 0 0 -50.000 -0.000Z',
    );
  });

  test('strokes run from the inner to the outer radius, one for each angle', () => {
    expect(strokesPath([0, 180], 80, 90)).toBe('M0.000 -80.000L0.000 -90.000M0.000 80.000L0.000 90.000');
    expect(strokesPath([], 80, 90)).toBe('');
  });
});
