// Whether the figures of a strand calculation can be what they are said to be.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { Quantity } from '../units/quantity.ts';

/** What a figure has to be. */
export type FigureBound = 'above-zero' | 'zero-or-more' | 'any' | 'count';

const bounds: Readonly<Record<FigureBound, { readonly needed: string; readonly holds: (value: number) => boolean }>> = {
  'above-zero': { needed: 'a finite number above zero', holds: (value) => value > 0 },
  'zero-or-more': { needed: 'a finite number of zero or more', holds: (value) => value >= 0 },
  any: { needed: 'a finite number', holds: () => true },
  count: { needed: 'a whole number of one or more', holds: (value) => Number.isInteger(value) && value >= 1 },
};

/** Answers nothing where every figure can be; else the first that cannot, by name. Problem: `number-out-of-range`. */
export function checkFigures(
  figures: readonly (readonly [name: string, figure: Quantity | number, bound: FigureBound])[],
): Outcome<null> {
  for (const [where, figure, bound] of figures) {
    const value = typeof figure === 'number' ? figure : figure.value;
    const { needed, holds } = bounds[bound];
    if (Number.isFinite(value) && holds(value)) continue;
    const given = typeof figure === 'number' ? String(figure) : `${figure.value} ${figure.unit}`;
    return fail('number-out-of-range', `${where} cannot be ${given}; it is ${needed}.`, { where, needed, given });
  }
  return succeed(null);
}
