// What one entry check found: something in a run sheet that a person should look at again. No check changes a number.

export type EntryCheckCode =
  | 'too-few-points'
  | 'unit-slip'
  | 'digits-transposed'
  | 'outlier'
  | 'not-rising'
  | 'zero-not-returned'
  | 'above-gauge-span'
  | 'cell-above-capacity'
  | 'cell-low-range'
  | 'certificate-not-valid'
  | 'day-in-future'
  | 'passive-set-up'
  | 'load-efficiency';

export interface EntryCheck {
  readonly code: EntryCheckCode;
  /** What, where in plant words, and what would fit. */
  readonly message: string;
  /** The field, as problems name it: `cycles[1].points[3].reading`. */
  readonly where: string;
  /** `error`: the calibration cannot stand like this. `doubt`: it may be right, look again. */
  readonly weight: 'error' | 'doubt';
}
