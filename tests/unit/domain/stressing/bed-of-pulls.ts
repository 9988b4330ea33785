// A bed of four strands and pulls on it, for the tests of the stressing record.

import { preTensionedWindow } from '../../../../src/domain/rules/elongation-window.ts';
import type { BedPattern } from '../../../../src/domain/stressing/bed-pattern.ts';
import type { PullBasis, PullEntry } from '../../../../src/domain/stressing/pull.ts';

export const pattern: BedPattern = {
  name: 'Double tee 24',
  positions: [
    { id: 'A1', row: 1, column: 1 },
    { id: 'A2', row: 1, column: 2 },
    { id: 'B1', row: 2, column: 1 },
    { id: 'B2', row: 2, column: 2 },
  ],
};

/** One kip stretches it by 1 in: A E / L = 0.16 x 30000 / 4800 kip/in. */
export const basis: PullBasis = {
  strand: {
    strands: 1,
    length: { value: 400, unit: 'ft' },
    area: { value: 0.16, unit: 'in2' },
    modulus: { value: 30_000, unit: 'ksi' },
  },
  theoreticalForce: { value: 32, unit: 'kip' },
  preload: { value: 4, unit: 'kip' },
  allowance: { value: 0.5, unit: 'in' },
  window: preTensionedWindow,
};

/** A pull whose elongation force is `elongation` + 4 - 0.5 kip. */
export const pullOf = (position: string, elongation: number, more: Partial<PullEntry> = {}): PullEntry => ({
  positions: [position],
  preloadReading: { value: 600, unit: 'psi' },
  finalReading: { value: 4300, unit: 'psi' },
  elongation: { value: elongation, unit: 'in' },
  gaugeForce: { value: 32, unit: 'kip' },
  ...more,
});
