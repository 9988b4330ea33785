// What stands in the way of submitting a draft, in words, in the order of the page.

import { words } from '../../words/desk-words.ts';
import type { CalibrationDraft } from './calibration-draft.ts';
import type { ChosenParts } from './chosen-parts.ts';
import type { JudgedDraft } from './judge-draft.ts';
import { isFirstUseBad, isReasonMissing, judgeDay, readTemperature } from './sheet-of-draft.ts';

export function whatToMend(draft: CalibrationDraft, judged: JudgedDraft, parts: ChosenParts): readonly string[] {
  const { calibrate } = words;
  const { points } = judged;
  const isDayWrong = judgeDay(draft.calibratedOn, parts.context.today) !== null;
  const mend: readonly (readonly [boolean, string])[] = [
    [draft.pair === '' || parts.line?.parted === true, calibrate.mendPair],
    [isDayWrong, calibrate.mendDay],
    [draft.loadCell === '', calibrate.mendCell],
    [readTemperature(draft.temperature) === 'bad', calibrate.temperatureBad(draft.temperature)],
    [isFirstUseBad(draft), calibrate.mendFirstUse],
    [points.badCells.length > 0 || points.badRamExtensions.length > 0, calibrate.mendCells],
    [!judged.fit.ok, calibrate.mendCurve],
    [isReasonMissing(draft), calibrate.degreeReasonNeeded],
  ];
  return mend.flatMap(([isWrong, text]) => (isWrong ? [text] : []));
}
