// From the texts of a registration form to the body of its request.

import { parseNumber } from '../../../domain/units/number.ts';
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

export type FieldProblem = 'missing' | 'not-a-number';

export function judgeField({ isOptional = false, type }: RegistrationField, typed: string): FieldProblem | null {
  if (typed.trim() === '') return isOptional ? null : 'missing';
  return type === 'number' && !parseNumber(typed).ok ? 'not-a-number' : null;
}
