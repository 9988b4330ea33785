// Turns the answer of a look-up into the face to draw.

import type { LookupAnswer } from '../../../contract/lookup.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { convert, parseUnit, type Quantity } from '../../../domain/units/quantity.ts';
import type { DialFace, DialMark, MarkKind } from '../../dial/dial-face.ts';

/** Answers the quantity in another pressure unit; unchanged when either is not one. */
function inUnit(quantity: Quantity, unit: string): Quantity {
  const from = parseUnit(pressure, quantity.unit);
  const to = parseUnit(pressure, unit);
  if (!from.ok || !to.ok) return quantity;
  return { value: convert(pressure, { value: quantity.value, unit: from.value }, to.value), unit };
}

/** Answers the face of the pair's gauge with the marks the answer gives; null when it holds no gauge. */
export function faceOfAnswer(answer: LookupAnswer): DialFace | null {
  const { dial, pair } = answer;
  if (dial === null) return null;
  const unit = dial.fullScale.unit;
  const marks: readonly (readonly [MarkKind, Quantity | null | undefined])[] = [
    ['preload', answer.preload?.readingToSet],
    ['limit', answer.doNotExceed?.reading],
    ['set', answer.readingToSet],
  ];
  return {
    display: dial.display,
    gauge: pair?.gauge ?? null,
    fullScale: dial.fullScale,
    graduation: inUnit(dial.graduation, unit),
    calibrated: dial.calibrated,
    marks: marks.flatMap(([kind, reading]): DialMark[] =>
      reading === null || reading === undefined ? [] : [{ kind, reading: inUnit(reading, unit).value }],
    ),
  };
}
