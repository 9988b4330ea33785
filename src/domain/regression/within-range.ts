// Whether a value lies in a closed range, with the slack that a change of units needs. Nothing outside is extrapolated.

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** Part of the end's value. House rule: an end of the range converted to another unit and back must stay inside. */
const slack = 1e-12;

/** Answers the value where it lies in the range, the end where it misses it by rounding alone, else null. */
export function withinRange(value: number, range: Range): number | null {
  const tolerance = slack * Math.max(Math.abs(range.low), Math.abs(range.high));
  if (!(value >= range.low - tolerance && value <= range.high + tolerance)) return null;
  return Math.min(range.high, Math.max(range.low, value));
}
