import { describe, expect, it } from 'vitest';
import type { Gauge } from '../../../../src/domain/equipment/equipment.ts';
import { markSpacing, readableStep } from '../../../../src/domain/equipment/readable-step.ts';
import { expectDigits } from '../../../expect-digits.ts';

const dial = (changes: Partial<Gauge> = {}): Gauge => ({
  kind: 'gauge',
  tag: 'G-1',
  serial: 'S-1',
  display: 'dial',
  fullScale: { value: 10000, unit: 'psi' },
  graduation: { value: 100, unit: 'psi' },
  ...changes,
});

describe('readable step of a gauge', () => {
  it('is one increment of a digital display, whatever its size', () => {
    expect(readableStep(dial({ display: 'digital', dialDiameter: { value: 6, unit: 'in' } }))).toEqual({
      value: 100,
      unit: 'psi',
    });
  });

  it('is half a graduation of a dial whose size nobody recorded', () => {
    expect(readableStep(dial())).toEqual({ value: 50, unit: 'psi' });
  });

  it('is a tenth from 2.5 mm between the marks, a fifth from 1.25 mm, else half', () => {
    const stepAt = (millimetres: number) =>
      readableStep(dial({ dialDiameter: { value: (millimetres * 100) / (0.6 * Math.PI), unit: 'mm' } })).value;
    expect([2.51, 2.49, 1.26, 1.24].map(stepAt)).toEqual([10, 20, 20, 50]);
  });

  it('is what was recorded for the gauge before anything is computed', () => {
    expect(readableStep(dial({ readablePart: 5, dialDiameter: { value: 6, unit: 'in' } })).value).toBe(20);
  });

  it('rests on the spacing of the marks, in any units', () => {
    const spacing = markSpacing(
      dial({
        dialDiameter: { value: 6, unit: 'in' },
        fullScale: { value: 70, unit: 'MPa' },
        graduation: { value: 7, unit: 'bar' },
      }),
    );
    expectDigits(spacing ?? Number.NaN, {
      certified: (0.75 * 2 * Math.PI * 0.4 * 152.4) / 100,
      digits: 12,
      because: 'three quarters of a circle of 0.4 of the diameter, in a hundred parts',
    });
    expect(markSpacing(dial())).toBeNull();
  });
});
