import { describe, expect, it } from 'vitest';
import {
  readableStep,
  roundDownToStep,
  roundToStep,
  stepOfReadings,
} from '../../../../src/domain/lookup/readable-reading.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { gauge } from './basis-of.ts';

const anywhere = { low: 0, high: Number.POSITIVE_INFINITY };

describe('the smallest step a person can set', () => {
  it('is half a graduation of a dial and one increment of a digital display', () => {
    expect(readableStep(gauge)).toEqual({ value: 50, unit: 'psi' });
    expect(readableStep({ ...gauge, display: 'digital', graduation: { value: 0.1, unit: 'bar' } })).toEqual({
      value: 0.1,
      unit: 'bar',
    });
  });
});

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

describe('a reading rounded to what can be set', () => {
  it('is the nearest step, without the noise of binary fractions', () => {
    expect(roundToStep(4505, 50, anywhere)).toBe(4500);
    expect(roundToStep(4525, 50, anywhere)).toBe(4550);
    expect(roundToStep(0.3, 0.1, anywhere)).toBe(0.3);
    expect(roundToStep(310.37, 0.1, anywhere)).toBe(310.4);
    expect(roundToStep(7.1234, 0.05, anywhere)).toBe(7.1);
  });

  it('never passes the upper end, even where the nearest step lies above it', () => {
    expect(roundToStep(4540, 50, { low: 0, high: 4549.999 })).toBe(4500);
    expect(roundToStep(4540, 50, { low: 0, high: 4550 })).toBe(4550);
    expect(roundToStep(98, 100, { low: 0, high: 99 })).toBe(0);
  });

  it('never falls below the lower end, where the curve ends', () => {
    expect(roundToStep(720, 50, { low: 715, high: 6000 })).toBe(750);
    expect(roundToStep(720, 50, { low: 700, high: 6000 })).toBe(700);
  });

  it('is none where no step lies between the ends', () => {
    expect(roundToStep(720, 500, { low: 715, high: 900 })).toBeNull();
    expect(roundToStep(98, 100, { low: 5, high: 99 })).toBeNull();
  });
});

describe('a limit rounded down', () => {
  it('is the last step that does not pass it', () => {
    expect(roundDownToStep(6535.3, 50)).toBe(6500);
    expect(roundDownToStep(6550, 50)).toBe(6550);
    expect(roundDownToStep(49.9, 50)).toBe(0);
    expect(roundDownToStep(0.3, 0.1)).toBe(0.3);
    expect(roundDownToStep(310.39, 0.1)).toBe(310.3);
  });
});
