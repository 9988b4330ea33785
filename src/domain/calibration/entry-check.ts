// What one entry check found: something in a run sheet that a person should look at again. No check changes a number.

import type { SetQuantity } from './run-sheet.ts';

export type EntryCheckCode =
  | 'too-few-points'
  | 'unit-slip'
  | 'digits-transposed'
  | 'digit-doubled'
  | 'digit-dropped'
  | 'decimal-point'
  | 'outlier'
  | 'cycle-shifted'
  | 'cycles-copied'
  | 'finer-than-graduation'
  | 'not-rising'
  | 'zero-not-returned'
  | 'above-gauge-span'
  | 'above-jack-rating'
  | 'unknown-name'
  | 'cell-above-capacity'
  | 'cell-low-range'
  | 'certificate-not-valid'
  | 'day-in-future'
  | 'passive-set-up'
  | 'load-efficiency'
  | 'area-against-slope'
  | 'zero-offset';

/** A value that would fit in place of the one typed, in the sheet's unit. */
export interface FittingValue {
  readonly field: SetQuantity;
  readonly value: number;
  /** Other values that would fit nearly as well, the likelier first; left out where there is none. */
  readonly alternatives?: readonly number[];
}

export interface EntryCheck {
  readonly code: EntryCheckCode;
  /** What, where in plant words, and what would fit. */
  readonly message: string;
  /** The field, as problems name it: `cycles[1].points[3].reading`. */
  readonly where: string;
  /** `error`: the calibration cannot stand like this. `doubt`: it may be right, look again. */
  readonly weight: 'error' | 'doubt';
  /** The repair that `message` names, where it is one value. */
  readonly fits?: FittingValue;
}
