// How the figures of a calibration are rounded for the eye, the same in every table.

import { formatNumber } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';

/** A value to five digits, without zeros that nobody wrote. */
export function fiveDigits(value: number): string {
  return formatNumber(Number(value.toPrecision(5)), { rule: 'as-typed' });
}

export function threeDigits(value: number): string {
  return formatNumber(Number(value.toPrecision(3)), { rule: 'as-typed' });
}

/** An error or limit in %, to the hundredth. */
export function hundredths(percent: number | null): string {
  return percent === null ? words.charts.notMeasured : formatNumber(percent, { rule: 'decimals', decimals: 2 });
}

/** A probability of a test in words: "p = 0.012", "p below 0.001". */
export function writeProbability(p: number): string {
  return words.charts.p(p < 0.001 ? null : formatNumber(p, { rule: 'decimals', decimals: 3 }));
}

/** Degrees of freedom, cut to a tenth; null is infinite. */
export function writeFreedom(degrees: number | null): string {
  return degrees === null ? words.figures.infinite : formatNumber(Math.floor(degrees * 10) / 10, { rule: 'as-typed' });
}

/** Enough digits to compute with, also of a number far from one: 1.2e-9. */
export function digitsOf(value: number, digits: number): string {
  return value.toPrecision(digits).replaceAll('-', words.charts.minus);
}
