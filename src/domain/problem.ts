// What can be wrong: the closed list of problem codes and the shape every refusal takes.
// How a problem becomes an HTTP status is in http/errors.ts, an exit code in cli/exit-code.ts.

/** Every code once, with the one line that says what it means. DEVELOPERS.md and the tests read this table. */
export const problemMeanings = {
  'not-a-number': 'A number was needed and something else was given.',
  'ambiguous-number': 'A number can be read in two ways (31,000 is 31 or 31000); it is refused, never guessed.',
  'number-out-of-range': 'A number is negative, zero, infinite or too large where that cannot be.',
  'unit-missing': 'A quantity was given without its unit.',
  'unit-unknown': 'The unit is not one the program converts.',
  'unit-ambiguous': 'The unit has several meanings: a bare "ton" is 8.90, 9.81 or 9.96 kN.',
  'field-missing': 'Something that is required was left out.',
  'field-invalid': 'A field holds something it cannot hold.',
  'date-invalid': 'A date does not exist or is not written YYYY-MM-DD.',
  'date-in-future': 'A date lies after today where it must not.',
  'sheet-not-readable': 'A file or body is not a run sheet in JSON or CSV.',
  'too-few-points': 'There are fewer points than the fit needs.',
  'equal-levels': 'All points are at one level, so no curve runs through them.',
  'curve-not-increasing': 'The curve does not rise strictly over its range, so a reading would mean two forces.',
  'fit-unstable': 'Two independent solutions of the same fit disagree.',
  'degree-not-supported': 'The degree of the curve is not 1, 2 or 3.',
  'tag-taken': 'A tag is already used by another part or pair.',
  'unknown-pair': 'No pair has this tag.',
  'unknown-equipment': 'No jack, gauge, pump or load cell has this tag.',
  'unknown-person': 'No such person works with this ledger.',
  'unknown-calibration': 'No calibration has this number.',
  'unknown-stressing': 'No stressing record has this number.',
  'unknown-certificate': 'No certificate of this load cell has this number.',
  'unknown-strand': 'The strand is not in the table.',
  'part-in-use': 'A jack or gauge already belongs to another pair.',
  'part-retired': 'The part was taken out of use.',
  'pair-parted': 'The pair was parted: its curve is void.',
  'not-calibrated': 'The pair has no approved calibration.',
  'void-by-event': 'Something happened to the pair that makes its curve void.',
  'on-hold': 'The pair is on hold.',
  'outside-calibrated-range': 'The force or reading lies outside the calibrated range; nothing is extrapolated.',
  'above-jack-rating': 'The force is above the rating of the jack.',
  'above-gauge-span': 'The reading is above the full scale of the gauge.',
  'above-stress-ceiling': 'The force is above the stress ceiling of the strand.',
  'clock-behind-ledger': 'The clock of this machine stands before the newest entry of the ledger.',
  'curve-not-as-approved': 'The curve fitted from the run sheet is not the curve that was approved.',
  'release-needed': 'A stop stands in the way; a named person must release the reading with a reason.',
  'nothing-to-release': 'There is no stop to release.',
  'interval-whole-line':
    'The calibration data bound the interval on no side: every value would explain what was observed.',
  'interval-two-rays':
    'The calibration data rule out a gap only: all values on both sides of it would explain what was observed.',
  'interval-outside-range': 'A bound of the interval lies further beyond the calibrated range than half its width.',
  'not-signed-in': 'The request needs a person who has signed in.',
  'sign-in-refused': 'The name, the password or the one-time code is wrong.',
  'second-factor-needed': 'The person has a second factor, and its one-time password was not given.',
  'second-factor-set': 'A second factor is in use already.',
  'too-many-tries': 'Passwords or codes were tried too often; a wait is needed.',
  'unknown-device': 'No device of this name was admitted.',
  'last-administrator': 'Nobody would be left who administers the ledger.',
  'own-account': 'Nobody bars or changes the role of oneself.',
  'already-barred': 'The person or device is barred already, or is not barred where that was needed.',
  'role-not-allowed': 'The person signed in may not do this.',
  'other-site': 'A page of another site tried to act with the sign-in of this one.',
  'approver-is-enterer': 'A calibration is never approved by the person who entered it.',
  'already-decided': 'The calibration was already approved or rejected.',
  'already-withdrawn': 'The certificate or calibration was withdrawn before.',
  'already-settled': 'The doubt was cleared, or the event settled, before.',
  'unknown-file': 'No file of this SHA-256 is kept, or no entry names it.',
  'file-type-not-allowed': 'A file is neither PDF nor PNG nor JPEG by its content.',
  'unknown-doubt': 'Nothing of this name puts the calibration in doubt.',
  'unknown-event': 'No event of this pair has this number.',
  'review-stale': 'What was reviewed is not what would be approved.',
  'key-reused': 'An idempotency key came back with a different body.',
  'ledger-locked': 'Another process writes to this ledger.',
  'ledger-conflict': 'Another entry was appended first; read again and retry.',
  'ledger-broken': 'An entry of the ledger does not verify.',
  'head-not-found': 'The ledger holds no entry of this number with this hash.',
  'ledger-not-readable': 'The file is not a Jackledger ledger.',
  'ledger-write-failed': 'The ledger could not be written: disk full, read-only or failing.',
  'file-not-found': 'The file or folder does not exist or cannot be read.',
  'file-exists': 'A file of this name is there already, and nothing is written over it.',
  'backup-altered': 'A backup is not the file its manifest describes.',
  'restore-loses-entries': 'The ledger in place holds entries that the backup does not.',
  'folder-not-empty': 'The folder to export into already holds files.',
  'body-not-json': 'The body of the request is not JSON.',
  'body-too-large': 'The body or file is larger than the limit.',
  'not-found': 'There is nothing at this address.',
  usage: 'The command was called with words or options it does not know.',
  'internal-error': 'The program failed; nothing was stored.',
} as const;

export type ProblemCode = keyof typeof problemMeanings;

export function isProblemCode(text: string): text is ProblemCode {
  return Object.hasOwn(problemMeanings, text);
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
