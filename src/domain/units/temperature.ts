// Reading a temperature: degrees Celsius inside, Celsius, Fahrenheit or kelvin as typed. A scale with another zero is not a
// factor, so temperature is no table like those of force.ts and pressure.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import { parseNumber } from './number.ts';

const toCelsius: Readonly<Record<string, (degrees: number) => number>> = {
  '': (degrees) => degrees,
  c: (degrees) => degrees,
  f: (degrees) => ((degrees - 32) * 5) / 9,
  k: (degrees) => degrees - 273.15,
};

/** Where people work and instruments are made for. House rule: what lies outside is a slip of the unit. */
const coldest = -60;
const hottest = 80;

/**
 * Answers a temperature in degrees Celsius: "35 C", "95 F", "308 K", with or without a degree sign; a plain number is
 * Celsius. C = (F - 32) 5/9 = K - 273.15, exact.
 * Range: -60 to 80 degrees Celsius. Problems: `not-a-number`, `ambiguous-number`, `unit-unknown`, `number-out-of-range`.
 * Source: SI Brochure (BIPM, 9th edition) 2.3.1 for Celsius and kelvin; NIST SP 811 B.8 for Fahrenheit (both from memory).
 * Example: 95 F is 35 C.
 */
export function parseTemperature(text: string, where?: string): Outcome<number> {
  const at = where === undefined ? {} : { where };
  const needed = 'a temperature such as "35 C" or "95 F"';
  const match = /^\s*([+\-\u2212]?[\d.,]+)\s*(?:\u00b0|deg\.?\s)?\s*([a-z]*)\s*$/iu.exec(text);
  if (match === null) return fail('not-a-number', `"${text}" is not a temperature.`, { ...at, needed, given: text });
  const number = parseNumber(match[1] ?? '', where);
  if (!number.ok) return { ok: false, problem: { ...number.problem, given: text } };
  const unit = (match[2] ?? '').toLowerCase();
  const convert = Object.hasOwn(toCelsius, unit) ? toCelsius[unit] : undefined;
  if (convert === undefined) {
    return fail('unit-unknown', `"${match[2]}" is not a unit of temperature this program knows.`, {
      ...at,
      needed: 'C, F or K; without a unit degrees Celsius',
      given: text,
    });
  }
  const celsius = convert(number.value);
  if (celsius >= coldest && celsius <= hottest) return succeed(celsius);
  return fail('number-out-of-range', `${text} is no temperature to work at.`, {
    ...at,
    needed: `${coldest} to ${hottest} C`,
    given: text,
  });
}
