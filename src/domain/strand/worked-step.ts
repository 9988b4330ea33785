// One step of a calculation as it is printed beside its result: the formula, the numbers in it, what comes out.
// The words for a step are found by its code, elsewhere; the calculation as a whole is in work-pull.ts.

import type { Quantity } from '../units/quantity.ts';

/** Every step that can be shown, in the order of the calculation. */
export const stepCodes = [
  'force-per-strand',
  'jacking-force',
  'live-end-seating',
  'temperature',
  'force-with-corrections',
  'ceiling-of-breaking-load',
  'ceiling-of-yield-load',
  'elongation',
  'splice-seating',
  'form-shortening',
  'jack-travel',
] as const;
export type StepCode = (typeof stepCodes)[number];

/** A number of the formula under its symbol; a pure number has the unit ''. */
export interface StepNumber {
  readonly symbol: string;
  readonly quantity: Quantity;
}

export interface WorkedStep {
  readonly code: StepCode;
  /** In the symbols of `numbers` and `result`: "dL = (P - P0) L / (n A E)". */
  readonly formula: string;
  /** As they were entered, in the order of the formula. */
  readonly numbers: readonly StepNumber[];
  readonly result: StepNumber;
}

/** A result with the step it came by. */
export interface Worked<U extends string> {
  readonly value: Quantity<U>;
  readonly step: WorkedStep;
}
