// What a face says in words.

import { describe, expect, test } from 'vitest';
import { type DialFace, describeFace, shownStep, writeReading } from '../../../../src/web/dial/dial-face.ts';

const face: DialFace = {
  display: 'dial',
  gauge: 'G-07',
  fullScale: { value: 10_000, unit: 'psi' },
  graduation: { value: 100, unit: 'psi' },
  calibrated: { low: 812.44, high: 7905.2 },
  marks: [
    { kind: 'preload', reading: 950 },
    { kind: 'set', reading: 4650 },
    { kind: 'limit', reading: 4950 },
  ],
};

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');

describe('the sentence of a face', () => {
  test('names the gauge, its range and every mark with its reading', () => {
    expect(plain(describeFace(face))).toBe(
      'Face of gauge G-07, 0 to 10 000 psi, one graduation 100 psi; calibrated from 812 psi to 7905 psi; ' +
        'Preload 950 psi; Set to 4650 psi; Never above 4950 psi.',
    );
  });

  test('says that there is nothing to set when there is no mark', () => {
    expect(describeFace({ ...face, calibrated: null, marks: [] })).toMatch(/not calibrated; no mark to set\.$/);
  });
});

describe('the step of a face', () => {
  test('is half a graduation of a dial and one increment of a display', () => {
    expect(shownStep(face)).toBe(50);
    expect(shownStep({ display: 'digital', graduation: { value: 0.5, unit: 'bar' } })).toBe(0.5);
  });

  test('gives a reading its decimals', () => {
    const fine: DialFace = { ...face, fullScale: { value: 60, unit: 'MPa' }, graduation: { value: 1, unit: 'MPa' } };
    expect(plain(writeReading(fine, 32))).toBe('32.0 MPa');
  });
});
