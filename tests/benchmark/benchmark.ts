// What one benchmark is: it measures, and says each figure beside the budget it is held against.
// Nothing is asserted anywhere; run-benchmarks.ts prints the table.

export interface Figure {
  readonly what: string;
  readonly measured: string;
  readonly budget: string;
  readonly met: boolean;
}

export interface Benchmark {
  readonly name: string;
  readonly measure: () => Promise<readonly Figure[]>;
}

/** The middle one of some measurements; the mean of the two in the middle of an even number. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(middle)] ?? Number.NaN) + (sorted[Math.ceil(middle)] ?? Number.NaN)) / 2;
}
