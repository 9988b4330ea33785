// How the values of one quantity are written in a sheet: their decimals, the step they are all multiples of, and which
// value the same row has in the other cycles.

import { decimalsOf } from './digit-slips.ts';
import type { PlacedPoint, SetQuantity } from './run-sheet.ts';

export interface WrittenColumn {
  readonly decimals: number;
  /** The largest number all values are multiples of; 0 where there are none. */
  readonly step: number;
}

/** Share of the points that repeat the value of their row in every other cycle for it to be a nominal value. House rule. */
const nominalShare = 0.6;

/** Answers how the values of a quantity are written. */
export function writtenColumn(points: readonly PlacedPoint[], field: SetQuantity): WrittenColumn {
  const decimals = Math.max(0, ...points.map((point) => decimalsOf(point[field])));
  const scale = 10 ** decimals;
  const steps = points.reduce((divisor, point) => greatestCommonDivisor(divisor, Math.round(point[field] * scale)), 0);
  return { decimals, step: steps / scale };
}

/**
 * Answers the step that all values of a quantity but one are multiples of, so that one slip does not hide how the others
 * are written; 0 for fewer than three.
 */
export function stepOfMost(points: readonly PlacedPoint[], field: SetQuantity): number {
  if (points.length < 3) return 0;
  const { decimals } = writtenColumn(points, field);
  const scale = 10 ** decimals;
  const values = points.map((point) => Math.round(point[field] * scale));
  // Divisors of all values before each and of all values after it, so that leaving out any one costs one division more.
  const before = [0];
  for (const value of values) before.push(greatestCommonDivisor(before.at(-1) ?? 0, value));
  let [after, largest] = [0, 0];
  for (let index = values.length - 1; index >= 0; index -= 1) {
    largest = Math.max(largest, greatestCommonDivisor(before[index] ?? 0, after));
    after = greatestCommonDivisor(after, values[index] ?? 0);
  }
  return largest / scale;
}

/** Answers whether a value could stand in a column: it is a multiple of its step. */
export function isWrittenLike(value: number, { decimals, step }: WrittenColumn): boolean {
  if (step === 0) return true;
  const scale = 10 ** decimals;
  const scaled = value * scale;
  const whole = Math.round(scaled);
  return Math.abs(scaled - whole) < 1e-6 && whole % Math.round(step * scale) === 0;
}

/**
 * Answers the value the set quantity has in the same row of all other cycles, where the sheet sets the same nominal
 * values in every cycle; null where it does not, or where the other cycles do not agree.
 */
export function nominalValues(points: readonly PlacedPoint[], set: SetQuantity): (point: PlacedPoint) => number | null {
  const rows = new Map<number, PlacedPoint[]>();
  for (const point of points) rows.set(point.row, [...(rows.get(point.row) ?? []), point]);
  const ofOthers = (point: PlacedPoint): number | null => {
    const others = (rows.get(point.row) ?? []).filter((other) => other.cycle !== point.cycle);
    const value = others[0]?.[set];
    return value !== undefined && others.every((other) => other[set] === value) ? value : null;
  };
  const repeated = points.filter((point) => ofOthers(point) === point[set]).length;
  return repeated >= nominalShare * points.length ? ofOthers : () => null;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b > 0 ? greatestCommonDivisor(b, a % b) : a;
}
