// What can be wrong: the closed list of problem codes and the shape every refusal takes.
// How a problem becomes an HTTP status is in http/errors.ts, an exit code in cli/exit-code.ts.

/** Every code once; what each means is in problem-meanings.ts. */
export const problemCodes = [
  'not-a-number',
  'ambiguous-number',
  'number-out-of-range',
  'unit-missing',
  'unit-unknown',
  'unit-ambiguous',
  'field-missing',
  'field-invalid',
  'date-invalid',
  'date-in-future',
  'sheet-not-readable',
  'too-few-points',
  'equal-levels',
  'curve-not-increasing',
  'fit-unstable',
  'degree-not-supported',
  'tag-taken',
  'unknown-pair',
  'unknown-equipment',
  'unknown-person',
  'unknown-calibration',
  'unknown-stressing',
  'unknown-certificate',
  'unknown-strand',
  'part-in-use',
  'part-retired',
  'pair-parted',
  'not-calibrated',
  'void-by-event',
  'on-hold',
  'outside-calibrated-range',
  'above-jack-rating',
  'above-gauge-span',
  'above-stress-ceiling',
  'clock-behind-ledger',
  'curve-not-as-approved',
  'release-needed',
  'nothing-to-release',
  'interval-whole-line',
  'interval-two-rays',
  'interval-outside-range',
  'not-signed-in',
  'sign-in-refused',
  'second-factor-needed',
  'second-factor-set',
  'too-many-tries',
  'unknown-device',
  'last-administrator',
  'own-account',
  'already-barred',
  'role-not-allowed',
  'other-site',
  'approver-is-enterer',
  'already-decided',
  'already-withdrawn',
  'already-settled',
  'unknown-file',
  'file-type-not-allowed',
  'unknown-doubt',
  'unknown-event',
  'review-stale',
  'key-reused',
  'ledger-locked',
  'ledger-conflict',
  'ledger-broken',
  'head-not-found',
  'ledger-not-readable',
  'ledger-write-failed',
  'file-not-found',
  'file-exists',
  'backup-altered',
  'restore-loses-entries',
  'folder-not-empty',
  'body-not-json',
  'body-too-large',
  'not-found',
  'usage',
  'internal-error',
] as const;

export type ProblemCode = (typeof problemCodes)[number];

export function isProblemCode(text: string): text is ProblemCode {
  return problemCodes.some((code) => code === text);
}

/**
 * One thing that is wrong, in words a person can act on.
 * `where` names the field or row (`cycles[0].points[3].reading`, `--force`), `needed` what would have been right, `given`
 * what was typed, verbatim.
 */
export interface Problem {
  readonly code: ProblemCode;
  readonly message: string;
  readonly where?: string;
  readonly needed?: string;
  readonly given?: string;
  /** Seconds to wait before it is tried again. */
  readonly retryAfterSeconds?: number;
}

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

export function succeed<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function fail(
  code: ProblemCode,
  message: string,
  facts: Omit<Problem, 'code' | 'message'> = {},
): Outcome<never> {
  return { ok: false, problem: { code, message, ...facts } };
}
