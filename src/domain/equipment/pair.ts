// A pair: one jack with one gauge, calibrated as a unit, with the pump and hose it was calibrated on.

import type { PlantDay } from '../dates/plant-day.ts';

export interface Pair {
  readonly tag: string;
  readonly jack: string;
  readonly gauge: string;
  readonly pump?: string;
  readonly hose?: string;
  readonly formedOn: PlantDay;
  /** The day either part was taken away; from then on the curve is void. */
  readonly parted?: { readonly on: PlantDay; readonly reason: string };
}
