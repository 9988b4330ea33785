// From the texts of a registration form to the body of its request, and what stands in the way of sending it.

import { parseNumber } from '../../../domain/units/number.ts';
import { words } from '../../words/desk-words.ts';
import type { Registration, RegistrationField } from './registration-kinds.ts';

/** A field left blank is left out; a number is sent as a number. What cannot be read was refused by the form before. */
export function registrationBody(
  { fields, notInBody = [] }: Registration,
  values: Readonly<Record<string, string>>,
): Readonly<Record<string, unknown>> {
  const sent = fields
    .filter(({ name }) => !notInBody.includes(name) && (values[name] ?? '').trim() !== '')
    .map(({ name, type }): [string, unknown] => {
      const typed = values[name] ?? '';
      if (type === 'files') return [name, readNamedFiles(typed)];
      const number = type === 'number' ? parseNumber(typed) : null;
      return [name, number?.ok === true ? number.value : typed.trim()];
    });
  return together(Object.fromEntries(sent));
}

/** The two fields of a result as found are one field of the body. */
function together(body: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { asFoundError: errorPercent, asFoundLimit: limitPercent, ...rest } = body;
  return errorPercent === undefined && limitPercent === undefined
    ? rest
    : { ...rest, asFound: { errorPercent, limitPercent } };
}

export interface NamedFile {
  readonly sha256: string;
  readonly name: string;
}

/** The files a form holds as text; none where it holds none. */
export function readNamedFiles(text: string): readonly NamedFile[] {
  try {
    const files: unknown = JSON.parse(text === '' ? '[]' : text);
    return Array.isArray(files) ? files : [];
  } catch {
    return [];
  }
}

/** What is wrong with what was typed into a field, in words; null where nothing is. */
export function judgeField({ isOptional = false, check }: RegistrationField, typed: string): string | null {
  if (typed.trim() === '') return isOptional ? null : words.equipment.required;
  return check?.(typed) ?? null;
}
