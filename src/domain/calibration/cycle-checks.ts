// Entry checks of cycles, in words: shifted by a row, copied, out of order.
// A cycle in another unit is in point-checks.ts.

import { copiedCycles } from './copied-cycles.ts';
import type { EntryCheck } from './entry-check.ts';
import { whereOf } from './fit-calibration.ts';
import { placeWords } from './point-checks.ts';
import type { PlacedPoint, RunSheet, SetQuantity } from './run-sheet.ts';
import type { ShiftedCycle } from './shifted-cycles.ts';

/** Answers the check of a cycle whose values stand one row too high or too low, once for the cycle. */
export function checkShift({ cycle, fromRow, belongsTo }: ShiftedCycle, set: SetQuantity): EntryCheck {
  const observed = set === 'force' ? 'reading' : 'force';
  const [fits, stands] = belongsTo === 'next' ? ['below', 'high'] : ['above', 'low'];
  const message = `Cycle ${cycle + 1}: from row ${fromRow + 1} on each ${observed} fits the ${set} of the row ${fits} it; the ${observed}s stand one row too ${stands}.`;
  const where = fromRow === 0 ? `cycles[${cycle}]` : whereOf({ cycle, row: fromRow }, observed);
  return { code: 'cycle-shifted', message, where, weight: 'error' };
}

/** Answers a check for each group of cycles that are equal where chance would have made them differ. */
export function checkCopies(
  rising: readonly PlacedPoint[],
  set: SetQuantity,
  suspects: readonly PlacedPoint[],
): readonly EntryCheck[] {
  const observed = set === 'force' ? 'reading' : 'force';
  return copiedCycles(rising, set, suspects).map((cycles) => {
    const names = cycles.map((cycle) => cycle + 1);
    const message = `Cycles ${names.slice(0, -1).join(', ')} and ${names.at(-1)} agree in every ${observed}, though steps this fine would have told them apart; was one copied? Readings of its own would fit.`;
    return { code: 'cycles-copied', message, where: `cycles[${cycles[1]}]`, weight: 'doubt' };
  });
}

/**
 * Answers a check where a series is out of order: force or reading falls from one rising point to the next, or rises
 * from one falling point to the next. Points that do not fit the curve are named by their own check and skipped here.
 */
export function checkOrder(sheet: RunSheet, suspects: readonly PlacedPoint[]): readonly EntryCheck[] {
  const isSuspect = (cycle: number, row: number): boolean =>
    suspects.some((suspect) => suspect.cycle === cycle && suspect.row === row);
  return sheet.cycles.flatMap(({ points }, cycle) =>
    points.flatMap((point, row): readonly EntryCheck[] => {
      const before = points[row - 1];
      if (before === undefined || before.direction !== point.direction) return [];
      if (isSuspect(cycle, row) || isSuspect(cycle, row - 1)) return [];
      const sign = point.direction === 'up' ? 1 : -1;
      const field = (['force', 'reading'] as const).find((name) => sign * (point[name] - before[name]) < 0);
      if (field === undefined) return [];
      const unit = sheet.units[field];
      const [series, moves] = sign === 1 ? ['rising', 'falls'] : ['falling', 'rises'];
      const message = `${placeWords({ cycle, row })}: in a ${series} series the ${field} ${moves} from ${before[field]} to ${point[field]} ${unit}.`;
      return [{ code: 'not-rising', message, where: whereOf({ cycle, row }, field), weight: 'doubt' }];
    }),
  );
}
