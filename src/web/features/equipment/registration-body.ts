// From the texts of a registration form to the body of its request, and what stands in the way of sending it.

import { parseNumber } from '../../../domain/units/number.ts';
import { words } from '../../words/desk-words.ts';
import type { Registration, RegistrationField } from './registration-kinds.ts';

/** A field left blank is left out; a number is sent as a number. What cannot be read was refused by the form before. */
export function registrationBody(
  { fields, notInBody = [] }: Registration,
  values: Readonly<Record<string, string>>,
): Readonly<Record<string, string | number>> {
  const sent = fields
    .filter(({ name }) => !notInBody.includes(name) && (values[name] ?? '').trim() !== '')
    .map(({ name, type }): [string, string | number] => {
      const typed = values[name] ?? '';
      const number = type === 'number' ? parseNumber(typed) : null;
      return [name, number?.ok === true ? number.value : typed.trim()];
    });
  return Object.fromEntries(sent);
}

/** What is wrong with what was typed into a field, in words; null where nothing is. */
export function judgeField({ isOptional = false, check }: RegistrationField, typed: string): string | null {
  if (typed.trim() === '') return isOptional ? null : words.equipment.required;
  return check?.(typed) ?? null;
}
