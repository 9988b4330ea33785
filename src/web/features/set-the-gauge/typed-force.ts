// A force as it is typed: a number, or a number with its unit in any spelling. The unit shown beside it is the unit meant.

import { type ForceUnit, force } from '../../../domain/units/force.ts';
import { parseQuantity, parseUnit } from '../../../domain/units/quantity.ts';

export interface TypedForce {
  readonly typed: string;
  readonly unit: ForceUnit;
}

/** "60", "4,300.5", "-3", "1e3": the number at the start; what follows it is the unit. */
const numberThenUnit = /^(\s*[+\-\u2212]?[\d.,]*(?:e[+-]?\d+)?)\s*(.*)$/iu;

function splitTyped(typed: string): readonly [number: string, unit: string] {
  const match = numberThenUnit.exec(typed);
  return [(match?.[1] ?? typed).trim(), (match?.[2] ?? '').trim()];
}

/** Answers how a form starts on a force chosen before: its number and its unit; text that is no force stays as it is. */
export function startTyping(chosen: string | null, unit: ForceUnit): TypedForce {
  if (chosen === null) return { typed: '', unit };
  const read = parseQuantity(force, chosen);
  return read.ok ? { typed: String(read.value.value), unit: read.value.unit } : { typed: chosen, unit };
}

/** Answers what stands in the form after typing: a unit that was typed becomes the unit shown. */
export function typeText(typed: string, { unit }: TypedForce): TypedForce {
  const typedUnit = parseUnit(force, splitTyped(typed)[1]);
  return { typed, unit: typedUnit.ok ? typedUnit.value : unit };
}

/** Answers what stands in the form after choosing a unit: one that was typed gives way. */
export function chooseUnit(unit: ForceUnit, { typed }: TypedForce): TypedForce {
  return { typed: splitTyped(typed)[0], unit };
}

/** Answers the text to read the force from; a number without a unit takes the unit shown. */
export function fullText({ typed, unit }: TypedForce): string {
  return splitTyped(typed)[1] === '' ? `${typed.trim()} ${unit}` : typed.trim();
}
