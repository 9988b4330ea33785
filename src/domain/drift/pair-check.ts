// An interim check of a pair as it was entered: what the gauge showed and what the load cell showed, level by level. It is judged in
// judge-interim-check.ts.

import type { PlantDay } from '../dates/plant-day.ts';
import type { ForceUnit } from '../units/force.ts';
import type { PressureUnit } from '../units/pressure.ts';
import type { Quantity } from '../units/quantity.ts';

export interface CheckPoint {
  /** On the load cell. */
  readonly force: Quantity<ForceUnit>;
  /** On the gauge of the pair. */
  readonly reading: Quantity<PressureUnit>;
}

export interface PairCheck {
  readonly on: PlantDay;
  /** Tag of the load cell it was held against. */
  readonly loadCell: string;
  /** The readings of one level are set alike. */
  readonly levels: readonly (readonly CheckPoint[])[];
  readonly note?: string | undefined;
}
