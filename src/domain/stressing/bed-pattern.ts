// Where the strands of a bed lie, as the drawing numbers them.

import { fail, type Outcome, succeed } from '../problem.ts';

export interface StrandPosition {
  readonly id: string;
  /** Counted from the bottom of the member, from 1. */
  readonly row: number;
  /** Counted from the left, looking from the live end, from 1. */
  readonly column: number;
}

export interface BedPattern {
  readonly name: string;
  readonly positions: readonly StrandPosition[];
}

/**
 * Answers the pattern where it can be: at least one position, every name once, every place once, rows and columns whole
 * from 1. Problems: `field-missing`, `field-invalid`, `number-out-of-range`.
 */
export function checkBedPattern(pattern: BedPattern): Outcome<BedPattern> {
  if (pattern.positions.length === 0) {
    return fail('field-missing', 'A pattern without strands is none.', {
      where: 'pattern.positions',
      needed: 'at least one position',
    });
  }
  const ids = new Set<string>();
  const places = new Set<string>();
  for (const [index, { id, row, column }] of pattern.positions.entries()) {
    const where = `pattern.positions[${index}]`;
    const place = `row ${row}, column ${column}`;
    if (![row, column].every((number) => Number.isInteger(number) && number >= 1)) {
      return fail('number-out-of-range', `${where} cannot lie in ${place}.`, {
        where,
        needed: 'whole numbers from 1',
        given: place,
      });
    }
    if (ids.has(id)) {
      return fail('field-invalid', `The position "${id}" is there twice.`, {
        where,
        needed: 'each name once',
        given: id,
      });
    }
    if (places.has(place)) {
      return fail('field-invalid', `Two strands cannot lie in ${place}.`, {
        where,
        needed: 'each place once',
        given: place,
      });
    }
    ids.add(id);
    places.add(place);
  }
  return succeed(pattern);
}
