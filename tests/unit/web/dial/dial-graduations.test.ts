// Which numbers and strokes a face carries.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  graduationsOf,
  type LabelMeasures,
  numbersCollide,
  writeFaceNumber,
} from '../../../../src/web/dial/dial-graduations.ts';
import { numberMeasures } from '../../../../src/web/dial/round-face.tsx';

const step = (fullScale: number, graduation: number): number | undefined =>
  graduationsOf(fullScale, graduation, numberMeasures).numbered[1];

describe('the numbers of a face', () => {
  test.each([
    ['700 bar', 700, 10, 8, 100],
    ['10 000 psi', 10_000, 100, 11, 1000],
    ['60 MPa', 60, 1, 7, 10],
    ['600 kgf/cm2', 600, 10, 7, 100],
    ['400 bar', 400, 5, 9, 50],
    ['250 bar', 250, 5, 11, 25],
    ['15 000 psi', 15_000, 100, 7, 2500],
    ['1 ksi', 1, 0.02, 11, 0.1],
  ])('of %s go to its full scale in even steps', (_name, fullScale, graduation, count, expectedStep) => {
    const { numbered } = graduationsOf(fullScale, graduation, numberMeasures);
    expect(numbered).toHaveLength(count);
    expect(step(fullScale, graduation)).toBe(expectedStep);
    expect(numbered[0]).toBe(0);
    expect(numbered.at(-1)).toBe(fullScale);
  });

  test('never touch, whatever the full scale', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (fullScale) => {
        const { numbered } = graduationsOf(fullScale, fullScale / 100, numberMeasures);
        expect(numbered.length).toBeGreaterThanOrEqual(2);
        expect(numbersCollide(numbered, fullScale, numberMeasures)).toBe(false);
      }),
    );
  });

  test('of a full scale no step divides still fit and start at zero', () => {
    const { numbered } = graduationsOf(733, 10, numberMeasures);
    expect(numbered[0]).toBe(0);
    expect(numbered.length).toBeGreaterThanOrEqual(4);
    expect(Math.max(...numbered)).toBeLessThanOrEqual(733);
  });

  test('are fewer where they are wider', () => {
    const wide: LabelMeasures = { ...numberMeasures, characterWidth: 14 };
    const few = graduationsOf(10_000, 100, wide).numbered.length;
    expect(few).toBeLessThan(graduationsOf(10_000, 100, numberMeasures).numbered.length);
  });
});

describe('the strokes of a face', () => {
  test('are every graduation of 700 bar, each once', () => {
    const { numbered, middle, fine } = graduationsOf(700, 10, numberMeasures);
    expect([...numbered, ...middle, ...fine].sort((a, b) => a - b)).toEqual(
      Array.from({ length: 71 }, (_, index) => index * 10),
    );
    expect(middle).toEqual([50, 150, 250, 350, 450, 550, 650]);
  });

  test('of a fine digital step are thinned to what a screen can show', () => {
    const { numbered, middle, fine } = graduationsOf(10_000, 1, numberMeasures);
    expect(numbered.length + middle.length + fine.length).toBe(101);
  });

  test('of a graduation that is not a whole part of the full scale stop below it', () => {
    const { numbered, middle, fine } = graduationsOf(100, 3, numberMeasures);
    expect(Math.max(...middle, ...fine)).toBe(99);
    expect(numbered.at(-1)).toBe(100);
  });
});

describe('numbers that touch', () => {
  test('are found by their boxes', () => {
    expect(numbersCollide([0, 350, 700], 700, numberMeasures)).toBe(false);
    expect(numbersCollide([345, 350, 355], 700, numberMeasures)).toBe(true);
  });

  test('are written without separators or lost digits', () => {
    expect(writeFaceNumber(10_000)).toBe('10000');
    expect(writeFaceNumber(0.1 + 0.2)).toBe('0.3');
  });
});
