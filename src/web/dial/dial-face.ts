// What a face shows, whichever way it is drawn: its range, its graduation, the calibrated range and the marks.

import type { Quantity } from '../../domain/units/quantity.ts';
import { decimalsOfStep, formatNumber, formatQuantity } from '../controls/format-number.ts';
import { words } from '../words/words.ts';

/** The three things a face can be marked with. Each has a shape of its own in mark-shape.tsx. */
export type MarkKind = 'preload' | 'set' | 'limit';

export interface DialMark {
  readonly kind: MarkKind;
  /** In the unit of the face. */
  readonly reading: number;
}

export interface DialFace {
  readonly display: 'dial' | 'digital';
  readonly gauge: string | null;
  readonly fullScale: Quantity;
  readonly graduation: Quantity;
  /** In the unit of the face; null when the pair has no curve. */
  readonly calibrated: { readonly low: number; readonly high: number } | null;
  readonly marks: readonly DialMark[];
}

/** How long a gauge's tag may be to stay within its face; a longer one is cut there and stands below in full. House rule. */
export const mostTagCharacters = { dial: 12, digital: 24 } as const;

/** The finest a person sets on this face: half a graduation of a dial, one increment of a digital display. */
export function shownStep(face: Pick<DialFace, 'display' | 'graduation'>): number {
  return face.display === 'dial' ? face.graduation.value / 2 : face.graduation.value;
}

/** Answers a reading of this face as text with its unit, to the step that can be set. */
export function writeReading(face: DialFace, reading: number): string {
  const unit = face.fullScale.unit;
  return formatQuantity({ value: reading, unit }, { rule: 'to-step', step: shownStep(face) });
}

/** Answers an end of the calibrated range as text: to the graduation's decimals, without the unit. */
export function writeRangeEnd(face: DialFace, reading: number): string {
  return formatNumber(reading, { rule: 'decimals', decimals: decimalsOfStep(shownStep(face)) });
}

/** Answers one sentence that says all the face shows, for those who cannot see it. */
export function describeFace(face: DialFace): string {
  const text = words.dial;
  const fullScale = formatQuantity(face.fullScale, { rule: 'as-typed' });
  const graduation = formatQuantity(face.graduation, { rule: 'as-typed' });
  const unit = face.fullScale.unit;
  const range =
    face.calibrated === null
      ? text.notCalibrated
      : text.calibrated(
          `${writeRangeEnd(face, face.calibrated.low)} ${unit}`,
          `${writeRangeEnd(face, face.calibrated.high)} ${unit}`,
        );
  const marks = face.marks.map((mark) => text.mark(text[mark.kind], writeReading(face, mark.reading)));
  return text.sentence([
    face.gauge === null ? text.faceUnnamed(fullScale, graduation) : text.face(face.gauge, fullScale, graduation),
    range,
    ...(marks.length === 0 ? [text.noMarks] : marks),
  ]);
}
