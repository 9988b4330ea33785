import { describe, expect, it } from 'vitest';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { type FiledStrand, rowOfFiledStrand, rowsOfPlant } from '../../../../src/domain/strand/filed-strand.ts';
import { jackingForce } from '../../../../src/domain/strand/jacking-force.ts';
import type { Reel } from '../../../../src/domain/strand/reel.ts';
import { findStrand, strandTable } from '../../../../src/domain/strand/strand-table.ts';
import { stressCeiling } from '../../../../src/domain/strand/stress-ceiling.ts';
import { force } from '../../../../src/domain/units/force.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const compact: FiledStrand = {
  designation: '18 mm compact',
  grade: '1860',
  area: { value: 200, unit: 'mm2' },
  breakingLoad: { value: 372, unit: 'kN' },
  yieldLoad: { value: 327, unit: 'kN' },
  yieldBasis: 'proof-0.1-percent',
  modulus: { value: 195, unit: 'GPa' },
  certificate: 'mill certificate M-1',
};
const reel = (changes: Partial<Reel> = {}): Reel => ({
  id: 'R-12',
  strandId: '1/2 in 270',
  area: { value: 0.1545, unit: 'in2' },
  modulus: { value: 28_900, unit: 'ksi' },
  breakingLoad: { value: 42.3, unit: 'kip' },
  certificate: 'mill certificate M-2',
  ...changes,
});

describe("the rows of a plant's own strand", () => {
  it('have the figures of the certificate in its own units, whatever unit is asked for', () => {
    const row = rowOfFiledStrand(compact);
    for (const column of ['si', 'in-pound'] as const) {
      const pull = jackingForce(row, column, { strands: 1, fraction: 0.75 });
      expectDigits(convert(force, pull, 'kN'), { certified: 279, digits: 14, because: '0.75 x 372 kN, computed' });
    }
    // 0.80 x 372 = 297.6 is less than 0.94 x 327 = 307.4.
    expect(stressCeiling(row, 'si', { strands: 1, rules }).value).toBe(297.6);
  });

  it('name a reel by the size it holds, with its own area and modulus, found by that name', () => {
    const rows = rowsOfPlant([compact], [reel()]);
    expect(rows.map(({ designation }) => designation)).toEqual(['18 mm compact', '1/2 in 270, reel R-12']);
    const found = outcomeValue(findStrand('1/2 in 270, reel r-12', 'strand', [...strandTable, ...rows]));
    expect(found.inPound?.area).toEqual({ value: 0.1545, unit: 'in2', provenance: 'plant' });
    // A reel that broke higher raises no ceiling.
    expect(found.inPound?.breakingLoad).toEqual(outcomeValue(findStrand('1/2 in 270')).inPound?.breakingLoad);
  });

  it('take the lower breaking load of a weak reel', () => {
    const [row] = rowsOfPlant([], [reel({ breakingLoad: { value: 40, unit: 'kip' } })]);
    expect(row?.inPound?.breakingLoad).toEqual({ value: 40, unit: 'kip', provenance: 'plant' });
  });

  it("hold a reel of the plant's own size, and none of a size nobody knows", () => {
    const rows = rowsOfPlant([compact], [reel({ strandId: '18 mm compact' }), reel({ strandId: 'rope' })]);
    expect(rows.map(({ designation }) => designation)).toEqual(['18 mm compact', '18 mm compact, reel R-12']);
  });
});
