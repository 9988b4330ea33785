// Numbers as a person reads them. Rounding happens here alone, by a rule that is named; computing uses unrounded values.

import type { Quantity } from '../../domain/units/quantity.ts';

/**
 * `to-step`: the digits of a step the gauge can show (10 -> 4250, 0.5 -> 28.5), for readings.
 * `significant-digits`: at least that many, whole numbers kept whole (4 -> 31.02, 12345), for forces and statistics.
 * `decimals`: a fixed number of places, for a column that must line up.
 * `as-typed`: every digit a person entered, up to the fifteen a double always gives back; more is binary noise.
 */
export type DisplayRounding =
  | { readonly rule: 'to-step'; readonly step: number }
  | { readonly rule: 'significant-digits'; readonly digits: number }
  | { readonly rule: 'decimals'; readonly decimals: number }
  | { readonly rule: 'as-typed' };

const thinSpace = '\u202f';
const hardSpace = '\u00a0';
const minus = '\u2212';

/** Answers how many decimals a step has: 10 -> 0, 0.5 -> 1, 0.02 -> 2. */
export function decimalsOfStep(step: number): number {
  for (let decimals = 0; decimals < 10; decimals += 1) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6 && Math.round(scaled) > 0) return decimals;
  }
  return 10;
}

function digitsOf(value: number, rounding: DisplayRounding): string {
  switch (rounding.rule) {
    case 'to-step':
      return value.toFixed(decimalsOfStep(rounding.step));
    case 'decimals':
      return value.toFixed(rounding.decimals);
    case 'significant-digits': {
      if (value === 0) return '0';
      const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
      return value.toFixed(Math.min(Math.max(rounding.digits - whole, 0), 12));
    }
    case 'as-typed':
      return String(Number(value.toPrecision(15)));
  }
}

/** Answers the number in words for the eye: a thin space between thousands from five digits on, a true minus. */
export function formatNumber(value: number, rounding: DisplayRounding): string {
  const digits = digitsOf(value, rounding);
  const isNegative = digits.startsWith('-') && Number(digits) !== 0;
  const [whole = '', decimals] = digits.replace(/^-/, '').split('.');
  const grouped = whole.length > 4 ? whole.replaceAll(/\B(?=(\d{3})+$)/g, thinSpace) : whole;
  return `${isNegative ? minus : ''}${grouped}${decimals === undefined ? '' : `.${decimals}`}`;
}

/** Answers number and unit, kept on one line. */
export function formatQuantity(quantity: Quantity, rounding: DisplayRounding): string {
  return `${formatNumber(quantity.value, rounding)}${hardSpace}${formatUnit(quantity.unit)}`;
}

/** Answers the unit for the eye: "kgf/cm2" with a raised two. */
export function formatUnit(unit: string): string {
  return unit.replace(/(?<=[a-z])2$/, '\u00b2');
}
