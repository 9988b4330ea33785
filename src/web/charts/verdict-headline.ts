// Which sentence stands above a calibration: its verdict, or that something must be looked at before any verdict counts.

import type { Verdict } from '../../domain/calibration/acceptance-result.ts';
import type { EntryCheck } from './check-mark.tsx';

export interface VerdictHeadline {
  readonly kind: Verdict | 'look-first';
  /** The entry checks to read together with the verdict. */
  readonly errors: readonly EntryCheck[];
}

/** A sheet with an error in it may meet every rule by numbers that mean nothing; one that fails a rule fails all the same. */
export function verdictHeadline(verdict: Verdict, checks: readonly EntryCheck[]): VerdictHeadline {
  const errors = checks.filter(({ weight }) => weight === 'error');
  return { kind: errors.length > 0 && verdict !== 'fail' ? 'look-first' : verdict, errors };
}
