// A run sheet and a look-up basis of ordinary size, for the benchmarks of the calculations.

import { judgeAcceptance } from '../../src/domain/calibration/acceptance.ts';
import { fitCalibration } from '../../src/domain/calibration/fit-calibration.ts';
import { calibrationLevels } from '../../src/domain/calibration/levels.ts';
import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import type { LookupBasis } from '../../src/domain/lookup/lookup-basis.ts';
import { judgeStanding } from '../../src/domain/lookup/standing.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import { outcomeValue } from '../outcome-value.ts';

/** 3 cycles of 10 rising points, 5 to 50 kip, with a fixed scatter of a few psi. */
export const thirtyPoints: RunSheet = {
  units: { force: 'kip', reading: 'psi' },
  set: 'force',
  cycles: [0, 1, 2].map((cycle) => ({
    points: Array.from({ length: 10 }, (_, level) => {
      const force = 5 * (level + 1);
      return { direction: 'up', force, reading: 12 + 146 * force + 7 * Math.sin(3 * cycle + 2 * level) };
    }),
  })),
};

export function lookupBasis(): LookupBasis {
  const rules = twelveMonthsTwoPercent;
  const { curve } = outcomeValue(fitCalibration(thirtyPoints, { degree: 'auto' }));
  const levels = calibrationLevels(thirtyPoints, curve, {});
  return {
    curve,
    jack: {
      kind: 'jack',
      tag: 'J-1',
      serial: '1',
      ratedForce: { value: 60, unit: 'kip' },
      pistonArea: { value: 7, unit: 'in2' },
      strandsPulled: 1,
    },
    gauge: {
      kind: 'gauge',
      tag: 'G-1',
      serial: '1',
      display: 'dial',
      fullScale: { value: 10000, unit: 'psi' },
      graduation: { value: 100, unit: 'psi' },
      accuracyClass: 'ASME B40.100 grade 1A',
    },
    certificate: {
      number: 'K-1',
      laboratory: 'Laboratory',
      expandedUncertaintyPercent: 0.24,
      coverageFactor: 2,
    },
    budget: {
      cellResolution: { value: 0.01, unit: 'kip' },
      reversibilityPercent: null,
      driftPercent: 0.4,
      calibratedAtCelsius: 20,
    },
    standing: judgeStanding(
      {
        pair: { tag: 'P-1', jack: 'J-1', gauge: 'G-1', formedOn: '2026-01-01' },
        hold: null,
        calibratedOn: '2026-02-01',
        changePercent: null,
        inUseBecause: null,
        voidBecause: null,
        doubts: [],
      },
      '2026-06-01',
      rules,
    ),
    parted: false,
    onHold: false,
    besides: [],
    acceptance: judgeAcceptance(thirtyPoints, curve, levels, rules, {}),
    step: { value: 50, unit: 'psi' },
    rules,
    ownStrands: [],
  };
}
