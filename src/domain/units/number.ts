// Reading a number a person typed, pasted or piped. Units are in force.ts, pressure.ts, length.ts and area.ts.

import { fail, type Outcome, succeed } from '../problem.ts';

const plainNumber = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/;
/** The first group never starts with a zero: nobody writes 0,234.5 for 234.5. */
const groupedThousands = /^[+-]?[1-9]\d{0,2}(,\d{3})+\.\d+$|^[+-]?[1-9]\d{0,2}(,\d{3}){2,}$/;
/** Longer than any number a person writes. House rule; it also keeps the search for commas short. */
const longest = 64;

/**
 * Answers which number a piece of typed text means.
 * A decimal point is required. Commas are accepted only where they cannot be anything but thousands separators
 * ("1,234.5", "1,234,567"); "1,234" and "12,5" are refused with `ambiguous-number`, since a dropped or added factor of
 * a thousand would reach a gauge.
 * Problems: `not-a-number`, `ambiguous-number`, `number-out-of-range` (1e400 and the like).
 */
export function parseNumber(text: string, where?: string): Outcome<number> {
  const trimmed = text.trim().replaceAll('\u2212', '-');
  if (trimmed.length > longest) {
    return fail('not-a-number', `A number has at most ${longest} characters; this has ${trimmed.length}.`, {
      needed: `a number of at most ${longest} characters`,
      given: `${trimmed.slice(0, longest)}...`,
      ...(where === undefined ? {} : { where }),
    });
  }
  const facts = { given: text, ...(where === undefined ? {} : { where }) };
  if (groupedThousands.test(trimmed)) return succeed(Number(trimmed.replaceAll(',', '')));
  if (!plainNumber.test(trimmed)) {
    if (/^[+-]?[\d.,]*\d,\d[\d.,]*$/.test(trimmed)) {
      return fail(
        'ambiguous-number',
        `"${text}" can be read in two ways; write it with a decimal point and without commas.`,
        {
          ...facts,
          needed: 'a number with a decimal point and no comma, for example 1234.5',
        },
      );
    }
    return fail('not-a-number', `"${text}" is not a number.`, {
      ...facts,
      needed: 'a number, for example 1234.5',
    });
  }
  const value = Number(trimmed);
  if (!Number.isFinite(value)) {
    return fail('number-out-of-range', `"${text}" is too large to compute with.`, {
      ...facts,
      needed: 'a finite number',
    });
  }
  return succeed(value);
}
