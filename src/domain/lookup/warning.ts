// The warnings of a look-up: each with a code, a weight and one sentence.

/** `refuse`: no number. `stop`: a number only after a named release. `caution`: heed it. `note`: know it. */
export type WarningWeight = 'refuse' | 'stop' | 'caution' | 'note';

/** Every warning code with its weight and the one line that says what it means. */
export const warningMeanings = {
  'not-calibrated': ['refuse', 'The pair has no approved calibration.'],
  'pair-parted': ['refuse', 'Jack and gauge were parted; the curve is void.'],
  'on-hold': ['refuse', 'Somebody put the pair on hold.'],
  'outside-calibrated-range': ['refuse', 'The target lies outside the calibrated range.'],
  'above-jack-rating': ['refuse', 'The target is above the rating of the jack.'],
  'above-gauge-span': ['refuse', 'The reading is above the full scale of the gauge.'],
  'above-stress-ceiling': ['refuse', 'The target is above the stress ceiling of the strand.'],
  'clock-behind-ledger': ['refuse', 'The clock of this machine stands before the newest entry of the ledger.'],
  'clock-not-trusted': ['refuse', 'The clock of this device ran backwards, or parts from the clock of the server.'],
  'curve-not-as-approved': ['refuse', 'The curve fitted from the run sheet is not the curve that was approved.'],
  'void-by-event': ['refuse', 'Something happened to the pair that makes its curve void.'],
  overdue: ['stop', 'The calibration has expired.'],
  'reference-in-doubt': [
    'stop',
    'The load cell of the calibration was not certified on its day, or is in doubt since.',
  ],
  'curve-in-doubt': ['stop', 'The pair was found off its curve and has not been calibrated since.'],
  'event-not-settled': ['stop', 'Something happened to the pair that quality has not settled.'],
  'not-a-stressing-curve': ['stop', 'A machine pushed the jack in the calibration; friction then acts the other way.'],
  'snapshot-too-old': ['stop', 'This device has not heard from the server for too long.'],
  'of-another-day': ['caution', 'The answer is as of another day than today.'],
  'snapshot-old': ['caution', 'This device has not heard from the server for days.'],
  'event-reported': ['caution', 'Something happened to the pair since its calibration.'],
  'part-corrected': ['caution', 'A part was corrected in the register after the calibration was approved.'],
  drifting: ['caution', 'The last two calibrations differ by more than the limit.'],
  'outside-dial-window': ['caution', 'The reading lies outside the part of the dial to work in.'],
  'graduation-too-coarse': ['caution', 'The smallest step that can be read is too large a part of the reading.'],
  'first-use-late': ['caution', 'The days the profile allows before first use are over, and no first use is recorded.'],
  'sheet-in-doubt': ['caution', 'An entry check found an error in the run sheet the look-up rests on.'],
  'acceptance-failed': ['caution', 'The calibration does not meet a rule of the profile.'],
  'acceptance-in-doubt': ['caution', 'A figure of the calibration lies beyond its limit by less than its uncertainty.'],
  'acceptance-conditional': ['note', 'The calibration meets a rule of the profile only with a condition.'],
  'due-soon': ['note', 'The calibration ends soon.'],
  'near-end-of-range': ['note', 'The target lies close to the end of the calibrated range.'],
  'ceiling-not-checked': ['note', 'No strand is named, so its stress ceiling is not checked.'],
  'preload-not-given': [
    'note',
    'The preload lies outside the calibrated range or not below the target, so it has no reading.',
  ],
  'gauge-class-coarse': ['note', "The error the gauge's class permits here is more than the accuracy limit."],
  'temperature-not-counted': ['note', 'The temperature asked for is not in the uncertainty.'],
  'interval-not-finite': ['note', 'The data give no finite force interval here.'],
  'released-by-name': ['note', 'A named person released the reading in spite of a stop.'],
} as const satisfies Readonly<Record<string, readonly [WarningWeight, string]>>;

export type WarningCode = keyof typeof warningMeanings;

export interface Warning {
  readonly code: WarningCode;
  readonly weight: WarningWeight;
  readonly message: string;
}

export function warn(code: WarningCode, message: string): Warning {
  return { code, weight: warningMeanings[code][0], message };
}

/** The warning of a code with its meaning for a sentence, where what was found stands elsewhere. */
export function explainWarning(code: WarningCode): Warning {
  return warn(code, warningMeanings[code][1]);
}

export function warnOfRelease({ name }: { readonly name: string }): Warning {
  return warn('released-by-name', `Released by ${name}.`);
}

const order: readonly WarningWeight[] = ['refuse', 'stop', 'caution', 'note'];

/** The same warnings, gravest first. */
export function byWeight(warnings: readonly Warning[]): readonly Warning[] {
  return [...warnings].sort((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight));
}
