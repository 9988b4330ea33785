// Parts as the server answers them, read as the domain knows them.

import { describe, expect, it } from 'vitest';
import { readableStep } from '../../../../src/domain/equipment/readable-step.ts';
import { domainCell, domainGauge } from '../../../../src/web/features/calibrate/domain-parts.ts';

const gauge = {
  kind: 'gauge',
  tag: 'G-1',
  serial: '41',
  display: 'dial',
  fullScale: { value: 10000, unit: 'psi' },
  graduation: { value: 100, unit: 'psi' },
} as const;
const stepOf = (answer: Parameters<typeof domainGauge>[0]) => {
  const read = domainGauge(answer);
  return read === null ? null : readableStep(read).value;
};

describe('the parts a draft is judged with', () => {
  it('keep what decides the step of the gauge: the part recorded, or the diameter of the dial', () => {
    expect(stepOf(gauge)).toBe(50);
    expect(stepOf({ ...gauge, readablePart: 5 })).toBe(20);
    expect(stepOf({ ...gauge, dialDiameter: { value: 6, unit: 'in' } })).toBe(10);
  });

  it('keep the step of the load cell, and leave it out where it is not recorded', () => {
    const cell = { kind: 'load-cell', tag: 'LC-1', serial: '7', capacity: { value: 60, unit: 'kip' } } as const;
    expect(domainCell({ ...cell, certificates: [] })).not.toHaveProperty('resolution');
    expect(domainCell({ ...cell, certificates: [], resolution: { value: 0.01, unit: 'kip' } })?.resolution).toEqual({
      value: 0.01,
      unit: 'kip',
    });
  });
});
