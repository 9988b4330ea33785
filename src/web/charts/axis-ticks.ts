// Round numbers along an axis: 1, 2 or 5 times a power of ten, as on a gauge.

/** Answers round values that enclose `low` to `high`, about `wanted` of them, ascending. Equal ends give a span about them. */
export function axisTicks(low: number, high: number, wanted: number): readonly number[] {
  const span = high > low ? high - low : Math.abs(high) || 1;
  const step = roundStep(span / Math.max(1, wanted - 1));
  const first = Math.floor(roundOff(low / step));
  const last = Math.max(first + 1, Math.ceil(roundOff(high / step)));
  return Array.from({ length: last - first + 1 }, (_, index) => roundOff((first + index) * step));
}

/** Answers round values from as far below zero as above it, so that residuals of both signs are seen alike. */
export function symmetricTicks(largest: number, wanted: number): readonly number[] {
  const half = axisTicks(0, largest > 0 ? largest : 1, Math.ceil(wanted / 2));
  const below = half
    .slice(1)
    .toReversed()
    .map((value) => -value);
  return [...below, ...half];
}

function roundStep(atLeast: number): number {
  const power = 10 ** Math.floor(Math.log10(atLeast));
  const step = [1, 2, 5, 10].find((multiple) => multiple * power >= atLeast * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** Away with the last digits that only come from binary fractions: 0.30000000000000004 is 0.3. */
const roundOff = (value: number): number => Number(value.toPrecision(12));
