// The raw record of one calibration as it was entered: cycles of points. How it is read from CSV or JSON is in
// contract/, what looks wrong in it in entry-checks.ts, the curve through it in fit-calibration.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import type { ForceUnit } from '../units/force.ts';
import type { LengthUnit } from '../units/length.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';

export type Direction = 'up' | 'down';

/** Which quantity the technician set; the other one was observed. */
export type SetQuantity = 'force' | 'reading';

/**
 * When a run was made: before anything was adjusted or repaired, afterwards, or both at once since nothing was.
 * Source: ISO/IEC 17025:2017 7.8.4.1 d, results before and after any adjustment (from memory).
 */
export const sheetConditions = ['as-found', 'as-left', 'unchanged'] as const;
export type SheetCondition = (typeof sheetConditions)[number];

export interface RunSheetPoint {
  readonly direction: Direction;
  readonly force: number;
  readonly reading: number;
}

export interface RunSheetCycle {
  readonly points: readonly RunSheetPoint[];
  readonly ramExtension?: Quantity<LengthUnit>;
}

export interface RunSheet {
  readonly units: { readonly force: ForceUnit; readonly reading: PressureUnit };
  readonly cycles: readonly RunSheetCycle[];
  readonly set?: SetQuantity;
  readonly pair?: string;
  readonly calibratedOn?: PlantDay;
  readonly loadCell?: string;
  /** `active`: the jack pushed the cell. `passive`: a machine pushed the jack. */
  readonly loading?: 'active' | 'passive';
  readonly temperatureCelsius?: number;
  readonly condition?: SheetCondition;
  /** The day the pair is first worked with on the project the calibration is for, where the rules ask for it. */
  readonly firstUseOn?: PlantDay;
  readonly note?: string;
}

/** A point with the place it stands in the sheet, both counted from zero. */
export interface PlacedPoint extends RunSheetPoint {
  readonly cycle: number;
  readonly row: number;
}

export function placedPoints(sheet: RunSheet): readonly PlacedPoint[] {
  return sheet.cycles.flatMap((cycle, cycleIndex) =>
    cycle.points.map((point, row) => ({ ...point, cycle: cycleIndex, row })),
  );
}

/**
 * The points a curve is fitted through: rising, above zero force, of all cycles; where the reading was set, above zero
 * reading too, since what the load cell shows there is its own zero. Source: house rule of the design; falling pressure
 * reads differently by seal friction.
 */
export function fittedPoints(sheet: RunSheet, set: SetQuantity = sheet.set ?? 'force'): readonly PlacedPoint[] {
  return placedPoints(sheet).filter((point) => isFitted(point, set));
}

/** Whether a curve is fitted through a point, as `fittedPoints` says. */
export function isFitted({ direction, force, reading }: RunSheetPoint, set: SetQuantity): boolean {
  return direction === 'up' && force > 0 && (set === 'force' || reading > 0);
}
