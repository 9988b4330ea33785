import { describe, expect, it } from 'vitest';
import { type BedFacts, recordStressing } from '../../../../src/domain/stressing/stressing-record.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { basis, pattern, pullOf } from './bed-of-pulls.ts';

const { strand, preload, window } = basis;
const decided = { engineer: 'R. Ortiz', decision: 'applied' } as const;
const facts: BedFacts = {
  bed: 'Bed 3',
  on: '2026-11-20',
  pair: 'P-1',
  calibrationEntry: 41,
  strand: '1/2 in special 270',
  reel: null,
  area: strand.area,
  modulus: strand.modulus,
  strandsPulled: 1,
  length: strand.length,
  force: { value: 31.5, unit: 'kip' },
  preload,
  pattern,
  corrections: [
    { kind: 'live-end-seating', effect: { value: 0.5, unit: 'kip' }, ...decided },
    { kind: 'dead-end-seating', effect: { value: 0.5, unit: 'in' }, ...decided },
  ],
  window,
};
const because = { digits: 12, because: 'under thirty roundings of a double' } as const;

describe('the record of a bed', () => {
  it('judges its pulls by the force and travel with the corrections that were applied', () => {
    const record = outcomeValue(recordStressing(facts, [pullOf('A1', 28.5), pullOf('A2', 28)]));
    expect(record.theoreticalForce).toEqual({ value: 32, unit: 'kip' });
    // A kip stretches it by an inch, and the length is in feet.
    expectDigits(record.theoreticalElongation.value, { certified: 28 / 12, ...because });
    expect(record.theoreticalElongation.unit).toBe('ft');
    expectDigits(record.pulls[1]?.agreementPercent ?? 0, { certified: 50 / 32, ...because });
  });

  it('leaves out what the engineer decided against', () => {
    const corrections = facts.corrections.map((one) => ({ ...one, decision: 'not-applied' }) as const);
    const record = outcomeValue(recordStressing({ ...facts, corrections }, [pullOf('A1', 28)]));
    expect(record.theoreticalForce).toEqual({ value: 31.5, unit: 'kip' });
    expectDigits(record.pulls[0]?.elongationForce.value ?? 0, { certified: 32, ...because });
  });

  it.each([
    ['window', { window: { ...window, percent: 0 } }],
    ['window', { window: { ...window, percent: Number.NaN } }],
    ['force above the preload', { preload: { value: 40, unit: 'kip' } as const }],
    ['length', { length: { value: 0, unit: 'ft' } as const }],
  ])('is refused where its %s cannot be', (where, wrong) => {
    expect(recordStressing({ ...facts, ...wrong }, [pullOf('A1', 28)])).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where },
    });
  });
});
