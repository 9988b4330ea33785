// A part or a certificate as the texts of its form: what stands, to be corrected or to be read.

import { z } from 'zod';
import { formatQuantity } from '../../../controls/format-number.ts';
import { readNamedFiles } from '../registration-body.ts';
import type { RegistrationField } from '../registration-kinds.ts';

const quantity = z.object({ value: z.number(), unit: z.string() });
const asFound = z.object({ errorPercent: z.number(), limitPercent: z.number() });

/** Answers the text each field of the form would hold had it been typed; nothing for fields the thing does not have. */
export function textsOf(thing: Readonly<Record<string, unknown>>): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  for (const [name, value] of Object.entries(thing)) {
    const measured = quantity.safeParse(value);
    const found = asFound.safeParse(value);
    if (measured.success) texts[name] = `${measured.data.value} ${measured.data.unit}`;
    else if (found.success) {
      texts.asFoundError = String(found.data.errorPercent);
      texts.asFoundLimit = String(found.data.limitPercent);
    } else if (Array.isArray(value)) {
      texts[name] = JSON.stringify(value.map(({ sha256, name: file }) => ({ sha256, name: file })));
    } else if (typeof value === 'string' || typeof value === 'number') texts[name] = String(value);
  }
  return texts;
}

/** Answers the value of one field for the eye; blank where it has none. */
export function shownText(
  { name, type, options }: RegistrationField,
  thing: Readonly<Record<string, unknown>>,
): string {
  const measured = quantity.safeParse(thing[name]);
  if (measured.success) return formatQuantity(measured.data, { rule: 'as-typed' });
  const text = textsOf(thing)[name] ?? '';
  if (type === 'files')
    return readNamedFiles(text)
      .map((file) => file.name)
      .join(', ');
  return text === '' ? '' : (options?.find(({ value }) => value === text)?.text ?? text);
}
