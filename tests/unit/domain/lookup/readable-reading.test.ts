import { describe, expect, it } from 'vitest';
import { roundDownToStep, roundToStep } from '../../../../src/domain/lookup/readable-reading.ts';

const anywhere = { low: 0, high: Number.POSITIVE_INFINITY };

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
