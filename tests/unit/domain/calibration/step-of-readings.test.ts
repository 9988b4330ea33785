import { describe, expect, it } from 'vitest';
import { stepOfReadings } from '../../../../src/domain/calibration/step-of-readings.ts';
import { expectDigits } from '../../../expect-digits.ts';

describe('the step the readings of a bare sheet were written to', () => {
  const stepOf = (...readings: number[]): number => stepOfReadings(readings.map((reading) => ({ reading })));

  it('is the largest 1, 2 or 5 of a decade that divides them all', () => {
    expect(stepOf(735, 1461, 7205)).toBe(1);
    expect(stepOf(740, 1460, 7200)).toBe(20);
    expect(stepOf(735, 1460, 7205)).toBe(5);
    expect(stepOf(10.5, 21.3, 72.1)).toBe(0.1);
    expect(stepOf(0, 735, 1461)).toBe(1);
  });

  it('is read from five decimals without a rounding getting in its way', () => {
    expectDigits(stepOf(0.11019, 1.23972, 2.98), {
      certified: 1e-5,
      digits: 15,
      because: 'one rounding of a power of ten',
    });
  });

  it('never is coarser than half a per cent of the largest reading, since round settings say nothing of the dial', () => {
    expect(stepOf(5, 10, 15, 20, 25, 30, 35, 40, 45)).toBe(0.2);
    expect(stepOf(800, 1600, 2400, 7200)).toBe(20);
    expect(stepOf(1000, 2000, 3000)).toBe(10);
    expect(stepOf(10000)).toBe(50);
  });
});
