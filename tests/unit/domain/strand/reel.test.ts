import { describe, expect, it } from 'vitest';
import { ceilingsOfAci as rules } from '../../../../src/domain/rules/stress-ceilings.ts';
import { jackingForce } from '../../../../src/domain/strand/jacking-force.ts';
import { type Reel, strandOnReel } from '../../../../src/domain/strand/reel.ts';
import { findStrand } from '../../../../src/domain/strand/strand-table.ts';
import { stressCeiling } from '../../../../src/domain/strand/stress-ceiling.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const half = outcomeValue(findStrand('1/2 in 270'));
const reel: Reel = {
  id: 'R-7',
  strandId: '1/2 in 270',
  heat: 'H 4411',
  area: { value: 0.1532, unit: 'in2' },
  modulus: { value: 28_900, unit: 'ksi' },
  breakingLoad: { value: 43_200, unit: 'lbf' },
  certificate: 'Mill certificate 0815',
};

describe('the strand on a reel', () => {
  it('has the area and modulus of its mill certificate, in the units of the certificate', () => {
    const { inPound, si } = strandOnReel(half, reel);
    for (const figures of [inPound, si]) {
      expect(figures?.area).toEqual({ value: 0.1532, unit: 'in2', provenance: 'plant' });
      expect(figures?.modulus).toEqual({ value: 28_900, unit: 'ksi', provenance: 'plant' });
    }
  });

  it('that broke above the specified load raises neither the jacking force nor the ceiling', () => {
    const strand = strandOnReel(half, reel);
    for (const column of ['in-pound', 'si'] as const) {
      const asked = { fraction: 0.75, strands: 2 };
      expect(jackingForce(strand, column, asked)).toEqual(jackingForce(half, column, asked));
      expect(stressCeiling(strand, column, { strands: 2, rules })).toEqual(
        stressCeiling(half, column, { strands: 2, rules }),
      );
    }
  });

  it('that broke below the specified load lowers both', () => {
    const weak = strandOnReel(half, { ...reel, breakingLoad: { value: 40_000, unit: 'lbf' } });
    expect(jackingForce(weak, 'in-pound', { fraction: 0.75, strands: 1 })).toEqual({ value: 30, unit: 'kip' });
    expect(stressCeiling(weak, 'in-pound', { strands: 1, rules })).toEqual({ value: 32, unit: 'kip' });
    expect(stressCeiling(weak, 'si', { strands: 1, rules }).value).toBeLessThan(
      stressCeiling(half, 'si', { strands: 1, rules }).value,
    );
  });

  it('stays the strand it is: name, standard and grade', () => {
    const { designation, standard, grade } = strandOnReel(half, reel);
    expect({ designation, standard, grade }).toEqual({
      designation: '1/2 in 270',
      standard: 'ASTM A416',
      grade: '270',
    });
  });
});
