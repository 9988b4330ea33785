// A quantity in a body or a file: the text as typed ("31 kip") or { value, unit }. Reading it keeps value and unit.

import { z } from 'zod';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { parseQuantity, parseUnit, type Quantity, type UnitTable } from '../domain/units/quantity.ts';

export const quantityInput = z
  .union(
    [z.string().max(80), z.strictObject({ value: z.number(), unit: z.string().max(30) })],
    'A quantity such as "31 kip", or { value, unit }',
  )
  .describe('A quantity as typed, "31 kip", or as { value, unit }.');
export type QuantityInput = z.infer<typeof quantityInput>;

export const quantityAnswer = z.object({ value: z.number(), unit: z.string() });

/** Values outside are slips whatever the unit; inside, no conversion leaves the range of a double. House rule. */
const smallest = 1e-9;
const largest = 1e12;

/** Answers the quantity meant, above zero. Problems: those of the parsers, and `number-out-of-range` at zero or below. */
export function readPositiveQuantity<U extends string>(
  table: UnitTable<U>,
  input: QuantityInput,
  where: string,
): Outcome<Quantity<U>> {
  const read = readAnyQuantity(table, input, where);
  if (!read.ok || (read.value.value >= smallest && read.value.value <= largest)) return read;
  const given = writeInput(input);
  return fail(
    'number-out-of-range',
    `${where}: a ${table.kind} above zero, of a size that can be, is needed; "${given}" is not.`,
    {
      where,
      needed: `a ${table.kind} above zero, from ${smallest} to ${largest}`,
      given,
    },
  );
}

/** Answers the quantity meant, of either sign or zero. Problems: those of the parsers, and `number-out-of-range` for its size. */
export function readSignedQuantity<U extends string>(
  table: UnitTable<U>,
  input: QuantityInput,
  where: string,
): Outcome<Quantity<U>> {
  const read = readAnyQuantity(table, input, where);
  if (!read.ok || Math.abs(read.value.value) <= largest) return read;
  const given = writeInput(input);
  return fail('number-out-of-range', `${where}: a ${table.kind} of a size that can be is needed; "${given}" is not.`, {
    where,
    needed: `a ${table.kind} from -${largest} to ${largest}`,
    given,
  });
}

const writeInput = (input: QuantityInput): string =>
  typeof input === 'string' ? input : `${input.value} ${input.unit}`;

function readAnyQuantity<U extends string>(
  table: UnitTable<U>,
  input: QuantityInput,
  where: string,
): Outcome<Quantity<U>> {
  return typeof input === 'string' ? parseQuantity(table, input, where) : readParts(table, input, where);
}

function readParts<U extends string>(
  table: UnitTable<U>,
  input: { readonly value: number; readonly unit: string },
  where: string,
): Outcome<Quantity<U>> {
  const unit = parseUnit(table, input.unit, where);
  return unit.ok ? succeed({ value: input.value, unit: unit.value }) : unit;
}
