// What is wrong with the text of one field, in the words of the page; each answers null where nothing is.

import { readPositiveQuantity } from '../../../contract/quantity.ts';
import { tag } from '../../../contract/typed-text.ts';
import { parsePlantDay } from '../../../domain/dates/plant-day.ts';
import { parseNumber } from '../../../domain/units/number.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import { parseQuantity, type UnitTable } from '../../../domain/units/quantity.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';

/** Never asked about a blank field. */
export type FieldCheck = (typed: string) => string | null;

const { equipment } = words;

/** A quantity with its unit, read as the server reads it; `label` names the field where the sentence names it. */
export function quantityCheck<U extends string>(table: UnitTable<U>, label: string): FieldCheck {
  return (typed) => {
    const read = readPositiveQuantity(table, typed, label);
    return read.ok ? null : inLanguage(read.problem.message, read.problem.code);
  };
}

export function wholeCheck(low: number, high: number): FieldCheck {
  return (typed) => {
    const read = parseNumber(typed);
    if (!read.ok || !Number.isInteger(read.value)) return equipment.wholeBad(typed);
    return read.value < low || read.value > high ? equipment.numberOutside(typed, low, high) : null;
  };
}

/** `low` itself is refused where the number must lie above it. */
export function numberCheck({ low, high, isAbove = false }: { low: number; high: number; isAbove?: boolean }) {
  return (typed: string): string | null => {
    const read = parseNumber(typed);
    if (!read.ok) return equipment.numberBad(typed);
    const isInside = (isAbove ? read.value > low : read.value >= low) && read.value <= high;
    if (isInside) return null;
    return isAbove ? equipment.numberNotAbove(typed, low, high) : equipment.numberOutside(typed, low, high);
  };
}

export const dayCheck: FieldCheck = (typed) => (parsePlantDay(typed.trim()).ok ? null : equipment.dayBad(typed));

/** The shortest the contract takes has five characters. */
export const reasonCheck: FieldCheck = (typed) => (typed.trim().length >= 5 ? null : equipment.reasonNeeded);

export const tagCheck: FieldCheck = (typed) => (tag.safeParse(typed).success ? null : equipment.tagBad(typed));

export function lengthCheck(most: number): FieldCheck {
  return (typed) => (typed.trim().length > most ? equipment.tooLong(typed.trim().length, most) : null);
}

/**
 * A caution, not a refusal, at a division that is not 1, 2 or 5 times a power of ten: hardly any gauge has another.
 * Blank or unreadable text is left to the check.
 */
export const graduationCaution: FieldCheck = (typed) => {
  const read = parseQuantity(pressure, typed);
  if (!read.ok || !(read.value.value > 0)) return null;
  const leading = Number(read.value.value.toExponential(9).split('e')[0]);
  return [1, 2, 5].includes(leading) ? null : equipment.graduationUnusual(typed.trim());
};
