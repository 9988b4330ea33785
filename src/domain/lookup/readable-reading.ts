// Readings as a person can set them: rounded to the smallest step. The step of a gauge is in equipment/readable-step.ts,
// that of a sheet without one in calibration/step-of-readings.ts.

import type { Range } from '../regression/within-range.ts';

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 12; decimals += 1) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6 && Math.round(scaled) > 0) return decimals;
  }
  return 12;
}

/**
 * Rounds a reading to the nearest step that can be set within a range: never above what must not be exceeded, never
 * below where the curve begins. Null where no step lies in the range.
 */
export function roundToStep(reading: number, step: number, range: Range): number | null {
  const lowest = Math.ceil(range.low / step - 1e-9);
  const highest = Math.floor(range.high / step + 1e-9);
  if (lowest > highest) return null;
  const steps = Math.min(highest, Math.max(lowest, Math.round(reading / step)));
  return Number((steps * step).toFixed(decimalsOf(step)));
}

/** Rounds a limit down to the last step that does not pass it. */
export function roundDownToStep(reading: number, step: number): number {
  return Number((Math.floor(reading / step + 1e-9) * step).toFixed(decimalsOf(step)));
}
