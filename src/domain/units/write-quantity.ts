// A quantity inside a sentence. Numbers that matter leave the program unrounded or with a rounding of their own.

import type { Quantity } from './quantity.ts';

/** All digits that were given, so that 45.004 kip is never said to lie above "45 kip"; ten at most, against binary noise. */
export function writeQuantityInFull(quantity: Quantity): string {
  return `${Number(quantity.value.toPrecision(10))} ${quantity.unit}`;
}

/** Four significant digits and the unit: "31.02 kip". */
export function writeQuantity(quantity: Quantity): string {
  return `${Number(quantity.value.toPrecision(4))} ${quantity.unit}`;
}
