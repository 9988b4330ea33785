// Cycles whose values stand one row too high or too low: every value belongs to the level above or below.
// The words for it are in cycle-checks.ts.

import { predict } from '../regression/predict.ts';
import { asXy, deviationAt, fitLean, isWithinReach } from './misfit.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';

export interface ShiftedCycle {
  readonly cycle: number;
  /** The first row that is shifted, counted from zero. */
  readonly fromRow: number;
  /** `next`: the values belong to the level of the next row. `previous`: to that of the row before. */
  readonly belongsTo: 'next' | 'previous';
}

/** Fewest rows that must be shifted together. House rule: two outliers may do by chance what three do not. */
const fewestRows = 3;

/** A value fits its level within this many standard deviations, of the curve through the other cycles. House rule. */
const largestMiss = 4;

/** Levels nearer together than this many standard deviations cannot be told apart row by row. House rule. */
const leastSpacing = 2 * largestMiss;

/**
 * Answers the cycle that parts from all others by one row, whole or from some row on; null where none does.
 * Each cycle is held against the curve through the other cycles: from some row on every observed value must lie on that
 * curve at the level of the row after (or before) its own and none at its own, and before that row every value at its own.
 * A last row that has no level to belong to is passed over. With two cycles either could be the shifted one; named is the
 * one whose own line passes further from no reading at no force.
 * Range: two cycles or more, at least 3 shifted rows, levels at least 8 standard deviations apart.
 * Source: house rule of the design, "Calculations" 7.
 */
export function shiftedCycle(points: readonly PlacedPoint[], set: SetQuantity): ShiftedCycle | null {
  const cycles = [...new Set(points.map(({ cycle }) => cycle))];
  if (cycles.length < 2) return null;
  const found = cycles.flatMap((cycle) => {
    const own = points.filter((point) => point.cycle === cycle);
    const others = points.filter((point) => point.cycle !== cycle);
    const shift = shiftOf(own, others, set);
    return shift === null ? [] : [{ ...shift, offset: offsetOf(own, set) }];
  });
  const worst = found.reduce<(typeof found)[number] | null>(
    (most, next) => (most === null || next.offset > most.offset ? next : most),
    null,
  );
  return worst === null ? null : { cycle: worst.cycle, fromRow: worst.fromRow, belongsTo: worst.belongsTo };
}

function shiftOf(own: readonly PlacedPoint[], others: readonly PlacedPoint[], set: SetQuantity): ShiftedCycle | null {
  const curve = others.length < fewestRows ? null : fitLean(others, set);
  if (curve === null) return null;
  const [first] = own;
  const place = own.map((point) => asXy(point, set));
  /** Whether the observed value of one row lies on the curve at the level of another; null where there is no such level. */
  const fitsAt = (row: number, level: number): boolean | null => {
    const [observed, setting] = [place[row], place[level]];
    if (observed === undefined || setting === undefined || !isWithinReach(curve, setting.x)) return null;
    return Math.abs(observed.y - predict(curve, setting.x)) <= largestMiss * deviationAt(curve, setting.x);
  };
  const spacings = place.slice(1).map(({ x }, index) => {
    const before = place[index]?.x ?? Number.NaN;
    return Math.abs(predict(curve, x) - predict(curve, before)) / deviationAt(curve, x);
  });
  if (first === undefined || !spacings.every((spacing) => spacing > leastSpacing)) return null;
  for (const belongsTo of ['next', 'previous'] as const) {
    const step = belongsTo === 'next' ? 1 : -1;
    for (let from = 0; from <= own.length - fewestRows; from += 1) {
      const before = place.slice(0, from).every((_, row) => fitsAt(row, row) === true);
      if (!before) break;
      const after = place.slice(from).map((_, index) => from + index);
      const shifted = after.filter((row) => fitsAt(row, row) === false && fitsAt(row, row + step) === true);
      const unknown = after.filter((row) => fitsAt(row, row + step) === null);
      if (shifted.length >= fewestRows && shifted.length + unknown.length === after.length) {
        return { cycle: first.cycle, fromRow: own[from]?.row ?? first.row, belongsTo };
      }
    }
  }
  return null;
}

/** How far from no reading at no force the straight line through a cycle passes, as a part of its largest value. */
function offsetOf(own: readonly PlacedPoint[], set: SetQuantity): number {
  const line = fitLean(own.slice(0, 5), set);
  const largest = Math.max(...own.map((point) => asXy(point, set).y));
  return line === null ? 0 : Math.abs(predict(line, 0)) / largest;
}
