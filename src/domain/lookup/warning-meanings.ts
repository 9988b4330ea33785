// What each warning code means, in one line. Apart from the codes, so that the pages do not carry it.

import { type Warning, type WarningCode, warn } from './warning.ts';

/** DEVELOPERS.md and the tests read this table. */
export const warningMeanings: Readonly<Record<WarningCode, string>> = {
  'not-calibrated': 'The pair has no approved calibration.',
  'pair-parted': 'Jack and gauge were parted; the curve is void.',
  'on-hold': 'Somebody put the pair on hold.',
  'outside-calibrated-range': 'The target lies outside the calibrated range.',
  'above-jack-rating': 'The target is above the rating of the jack.',
  'above-gauge-span': 'The reading is above the full scale of the gauge.',
  'above-stress-ceiling': 'The target is above the stress ceiling of the strand.',
  'clock-behind-ledger': 'The clock of this machine stands before the newest entry of the ledger.',
  'clock-not-trusted': 'The clock of this device ran backwards, or parts from the clock of the server.',
  'curve-not-as-approved': 'The curve fitted from the run sheet is not the curve that was approved.',
  'void-by-event': 'Something happened to the pair that makes its curve void.',
  overdue: 'The calibration has expired.',
  'reference-in-doubt': 'The load cell of the calibration was not certified on its day, or is in doubt since.',
  'curve-in-doubt': 'The pair was found off its curve and has not been calibrated since.',
  'event-not-settled': 'Something happened to the pair that quality has not settled.',
  'not-a-stressing-curve': 'A machine pushed the jack in the calibration; friction then acts the other way.',
  'snapshot-too-old': 'This device has not heard from the server for too long.',
  'of-another-day': 'The answer is as of another day than today.',
  'snapshot-old': 'This device has not heard from the server for days.',
  'event-reported': 'Something happened to the pair since its calibration.',
  'part-corrected': 'A part was corrected in the register after the calibration was approved.',
  drifting: 'The last two calibrations differ by more than the limit, or the charts of the beds signal.',
  'beds-signal': 'One chart of the beds signals: gauge and elongation agree otherwise than after the calibration.',
  'outside-dial-window': 'The reading lies outside the part of the dial to work in.',
  'graduation-too-coarse': 'The smallest step that can be read is too large a part of the reading.',
  'first-use-late': 'The days the profile allows before first use are over, and no first use is recorded.',
  'sheet-in-doubt': 'An entry check found an error in the run sheet the look-up rests on.',
  'acceptance-failed': 'The calibration does not meet a rule of the profile.',
  'acceptance-in-doubt': 'A figure of the calibration lies beyond its limit by less than its uncertainty.',
  'acceptance-conditional': 'The calibration meets a rule of the profile only with a condition.',
  'due-soon': 'The calibration ends soon.',
  'near-end-of-range': 'The target lies close to the end of the calibrated range.',
  'ceiling-not-checked': 'No strand is named, so its stress ceiling is not checked.',
  'preload-not-given': 'The preload lies outside the calibrated range or not below the target, so it has no reading.',
  'gauge-class-coarse': "The error the gauge's class permits here is more than the accuracy limit.",
  'temperature-not-counted': 'The temperature asked for is not in the uncertainty.',
  'interval-not-finite': 'The data give no finite force interval here.',
  'released-by-name': 'A named person released the reading in spite of a stop.',
};

/** The warning of a code with its meaning for a sentence, where what was found stands elsewhere. */
export function explainWarning(code: WarningCode): Warning {
  return warn(code, warningMeanings[code]);
}
