// Run sheets for the tests of calibration/, built from a rule for the reading.

import type { RunSheet, RunSheetPoint } from '../../../../src/domain/calibration/run-sheet.ts';

export const tenLevels = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100] as const;

/** Scatter of 30 points, in standard deviations, that no test calls unusual. Drawn once from a normal distribution. */
export const ordinaryScatter = [
  0.43, -1.12, 0.27, 0.91, -0.38, -0.65, 1.37, 0.08, -0.84, 0.52, -0.21, 1.05, -1.43, 0.33, 0.74, -0.59, 0.12, -0.97,
  1.58, -0.06, 0.66, -0.31, -1.21, 0.87, 0.19, -0.48, 1.11, -0.77, 0.02, -0.13,
] as const;

/** Three cycles at ten levels, force set in kip, reading in psi: 80 psi per kip and 20 psi of offset, scatter 5 psi. */
export function plainSheet(changes: Partial<RunSheet> = {}): RunSheet {
  const cycles = [0, 1, 2].map((cycle) => ({
    points: tenLevels.map(
      (force, row): RunSheetPoint => ({
        direction: 'up',
        force,
        reading: Math.round(80 * force + 20 + 5 * (ordinaryScatter[10 * cycle + row] ?? 0)),
      }),
    ),
  }));
  return { units: { force: 'kip', reading: 'psi' }, cycles, set: 'force', calibratedOn: '2026-03-02', ...changes };
}

/** The same sheet with some values of one point written differently. */
export function withPoint(sheet: RunSheet, cycle: number, row: number, changes: Partial<RunSheetPoint>): RunSheet {
  return {
    ...sheet,
    cycles: sheet.cycles.map((each, index) =>
      index === cycle
        ? { ...each, points: each.points.map((point, at) => (at === row ? { ...point, ...changes } : point)) }
        : each,
    ),
  };
}
