import { describe, expect, it } from 'vitest';
import { checkBedPattern } from '../../../../src/domain/stressing/bed-pattern.ts';
import { pattern } from './bed-of-pulls.ts';

const first = { id: 'A1', row: 1, column: 1 };

describe('the pattern of a bed', () => {
  it('stands where every name and every place is there once', () => {
    expect(checkBedPattern(pattern)).toEqual({ ok: true, value: pattern });
  });

  it.each([
    ['field-missing', 'pattern.positions', []],
    ['field-invalid', 'pattern.positions[1]', [first, { ...first, column: 2 }]],
    ['field-invalid', 'pattern.positions[1]', [first, { ...first, id: 'A2' }]],
    ['number-out-of-range', 'pattern.positions[0]', [{ ...first, row: 0 }]],
    ['number-out-of-range', 'pattern.positions[0]', [{ ...first, column: 1.5 }]],
    ['number-out-of-range', 'pattern.positions[0]', [{ ...first, row: Number.NaN }]],
  ])('is refused with %s at %s', (code, where, positions) => {
    expect(checkBedPattern({ ...pattern, positions })).toMatchObject({ ok: false, problem: { code, where } });
  });
});
