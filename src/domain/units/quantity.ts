// A value with its unit, kept as it was entered, and the reading of one from text such as "31 kip".
// The units themselves and their factors are in force.ts, pressure.ts, length.ts and area.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { parseNumber } from './number.ts';

export interface Quantity<U extends string = string> {
  readonly value: number;
  readonly unit: U;
}

/** One kind of quantity: its units, each with the exact factor to the base unit, and the spellings people use. */
export interface UnitTable<U extends string> {
  readonly kind: string;
  readonly factors: Readonly<Record<U, number>>;
  readonly spellings: Readonly<Record<string, U>>;
  /** Spellings that mean several units, with what to write in their place. */
  readonly ambiguous: Readonly<Record<string, string>>;
}

/** Answers which unit a spelling means, as written, in any of the common spellings, or in other capitals. */
export function parseUnit<U extends string>(table: UnitTable<U>, text: string, where?: string): Outcome<U> {
  const spelling = text.trim().replaceAll('²', '2').replaceAll('^2', '2');
  const facts = { given: text, ...(where === undefined ? {} : { where }) };
  if (Object.hasOwn(table.factors, spelling)) return succeed(spelling as U);
  const lower = spelling.toLowerCase().replaceAll(/\s+/g, ' ').replace(/\.$/, '');
  const advice = Object.hasOwn(table.ambiguous, lower) ? table.ambiguous[lower] : undefined;
  if (advice !== undefined) {
    return fail('unit-ambiguous', `"${text}" has several meanings; write ${advice}.`, { ...facts, needed: advice });
  }
  const mega = (Object.keys(table.factors) as U[]).find((unit) => unit === `M${spelling.slice(1)}`);
  if (mega !== undefined && spelling.startsWith('m')) {
    const needed = `${mega}; "${spelling}" is a thousandth and not a million`;
    return fail('unit-ambiguous', `"${text}" is a thousandth of a unit; was ${mega} meant?`, { ...facts, needed });
  }
  const common = Object.hasOwn(table.spellings, lower) ? table.spellings[lower] : undefined;
  if (common !== undefined) return succeed(common);
  const inOtherCapitals = (Object.keys(table.factors) as U[]).find((unit) => unit.toLowerCase() === lower);
  if (inOtherCapitals !== undefined) return succeed(inOtherCapitals);
  const needed = Object.keys(table.factors).join(', ');
  if (spelling === '')
    return fail('unit-missing', `The ${table.kind} needs a unit: ${needed}.`, {
      ...facts,
      needed,
    });
  return fail('unit-unknown', `"${text}" is not a unit of ${table.kind} this program knows.`, { ...facts, needed });
}

/** Answers which quantity a text such as "31 kip" or "4,300.5 psi" means. Nothing is converted. */
export function parseQuantity<U extends string>(
  table: UnitTable<U>,
  text: string,
  where?: string,
): Outcome<Quantity<U>> {
  const match = /^\s*([+\-\u2212]?(?:\d[\d.,]*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*?)\s*$/u.exec(text);
  if (match === null) {
    const facts = {
      given: text,
      needed: `a ${table.kind} with its unit`,
      ...(where === undefined ? {} : { where }),
    };
    return fail('not-a-number', `"${text}" is not a ${table.kind}.`, facts);
  }
  const value = parseNumber(match[1] ?? '', where);
  if (!value.ok) return { ok: false, problem: { ...value.problem, given: text } };
  const unit = parseUnit(table, match[2] ?? '', where);
  if (!unit.ok) return { ok: false, problem: { ...unit.problem, given: text } };
  return succeed({ value: value.value, unit: unit.value });
}

/** Answers a quantity's value in another unit of the same kind, by the exact factors of the table. */
export function convert<U extends string>(table: UnitTable<U>, quantity: Quantity<U>, unit: U): number {
  if (quantity.unit === unit) return quantity.value;
  return (quantity.value * table.factors[quantity.unit]) / table.factors[unit];
}
