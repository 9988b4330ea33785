// A body of a stressing record as a device sends it, for the tests of reading and writing one.

import type { StressingBody } from '../../../src/contract/stressing.ts';

const pull = (position: string, elongation: string): StressingBody['pulls'][number] => ({
  positions: [position],
  preloadReading: '600 psi',
  finalReading: '4300 psi',
  elongation,
  gaugeForce: '32 kip',
});

/** A kip stretches it by an inch; 0.5 in of a travel is seating. */
export const body: StressingBody = {
  bed: 'Bed 3',
  on: '2026-11-20',
  pair: 'P-1',
  calibrationEntry: 41,
  strand: '0.52 in 270',
  reel: {
    id: 'R-7',
    heat: 'H 4411',
    area: '0.16 in2',
    modulus: '30000 ksi',
    breakingLoad: '46 kip',
    certificate: 'Mill certificate 0815',
  },
  strandsPulled: 1,
  length: '400 ft',
  force: '31.5 kip',
  preload: '4 kip',
  pattern: {
    name: 'Double tee 24',
    positions: [
      { id: 'A1', row: 1, column: 1 },
      { id: 'A2', row: 1, column: 2 },
      { id: 'B1', row: 2, column: 1 },
    ],
  },
  corrections: [
    { kind: 'live-end-seating', effect: '0.5 kip', engineer: 'R. Ortiz', decision: 'applied' },
    { kind: 'temperature', effect: '-0.4 kip', engineer: 'R. Ortiz', decision: 'not-applied', note: 'under 25 F' },
    { kind: 'dead-end-seating', effect: '0.5 in', engineer: 'R. Ortiz', decision: 'applied' },
  ],
  pulls: [
    pull('A1', '28.5 in'),
    { ...pull('A2', '25 in'), reason: 'slip', note: 'chuck 7' },
    { ...pull('A2', '711.2 mm'), repullOf: 2 },
  ],
};
