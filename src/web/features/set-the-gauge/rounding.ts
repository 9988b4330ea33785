// How this page rounds for display: readings to what the gauge shows, forces to four significant digits.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import type { Quantity } from '../../../domain/units/quantity.ts';
import { type DisplayRounding, formatNumber, formatQuantity } from '../../controls/format-number.ts';
import { shownStep } from '../../dial/dial-face.ts';
import { faceOfAnswer } from './face-of-answer.ts';

/** The step of the pair's own gauge; six significant digits where no gauge is known. */
export function shownReadingRounding(answer: LookupAnswer): DisplayRounding {
  const face = faceOfAnswer(answer);
  const unit = answer.readingToSet?.unit;
  if (face === null || (unit !== undefined && unit !== face.fullScale.unit)) {
    return { rule: 'significant-digits', digits: 6 };
  }
  return { rule: 'to-step', step: shownStep(face) };
}

/** Four significant digits: a hundredth of a kip at 31 kip, well under any uncertainty. House rule. */
export function writeForce(force: Quantity): string {
  return formatQuantity(force, { rule: 'significant-digits', digits: 4 });
}

/** The level of an interval in per cent, without decimals: 0.95 and 95 are "95". */
export function writeLevel(level: number): string {
  return formatNumber(level <= 1 ? level * 100 : level, { rule: 'significant-digits', digits: 2 });
}
