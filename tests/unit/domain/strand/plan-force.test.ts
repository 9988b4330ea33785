import { describe, expect, it } from 'vitest';
import { ceilingsOfAci, ceilingsOfEurocode } from '../../../../src/domain/rules/stress-ceilings.ts';
import { seatingOverpull, temperatureCorrection } from '../../../../src/domain/strand/force-correction.ts';
import { type ForceRequest, planForce } from '../../../../src/domain/strand/plan-force.ts';
import { findStrand } from '../../../../src/domain/strand/strand-table.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';

const stretched = {
  strands: 1,
  length: { value: 100, unit: 'ft' },
  area: { value: 0.153, unit: 'in2' },
  modulus: { value: 28_500, unit: 'ksi' },
} as const;
const request: ForceRequest = {
  strand: outcomeValue(findStrand('1/2 in 270')),
  column: 'in-pound',
  strands: 1,
  asked: { by: 'fraction', fraction: 0.75 },
  corrections: [],
  rules: ceilingsOfAci,
};
const byForce = (value: number): ForceRequest['asked'] => ({ by: 'force', perStrand: { value, unit: 'kip' } });
const overpull = outcomeValue(seatingOverpull(stretched, { value: 0.25, unit: 'in' }, 'kip'));
const warming = { coefficient: { value: 6.5e-6, unit: '1/F' }, difference: { value: 40, unit: 'F' } } as const;
const warmer = outcomeValue(temperatureCorrection(stretched, warming, 'kip'));
const roundings = { digits: 14, because: 'exact decimals; under ten roundings of a double' } as const;
const codes = (asked: ForceRequest) => outcomeValue(planForce(asked)).steps.map(({ code }) => code);

describe('the force to pull', () => {
  it('is the fraction of the breaking load, times the strands: 0.75 of two 1/2 in 270 is 61.95 kip', () => {
    const { force, uncorrected } = outcomeValue(planForce({ ...request, strands: 2 }));
    expectDigits(force.value, { certified: '61.95', ...roundings });
    expect(uncorrected).toEqual(force);
  });

  it("is the drawing's force of a strand, times the strands, in the unit of the drawing", () => {
    const { force } = outcomeValue(planForce({ ...request, asked: byForce(31), strands: 2 }));
    expect(force).toEqual({ value: 62, unit: 'kip' });
  });

  it('has the corrections somebody decided on added, and none by itself', () => {
    const corrected = outcomeValue(planForce({ ...request, corrections: [overpull, warmer] }));
    expectDigits(corrected.force.value, { certified: 30.975 + 1090.125 / 1200 + 4360.5 * 2.6e-4, ...roundings });
    expectDigits(corrected.uncorrected.value, { certified: '30.975', ...roundings });
  });

  it('takes away what a fall in temperature gives', () => {
    const colder = { ...warming, difference: { value: -40, unit: 'F' } } as const;
    const corrections = [outcomeValue(temperatureCorrection(stretched, colder, 'kN'))];
    const { force } = outcomeValue(planForce({ ...request, corrections }));
    expectDigits(force.value, { certified: 30.975 - 4360.5 * 2.6e-4, ...roundings });
  });
});

describe('its steps', () => {
  it('lead from the fraction to the force and its two ceilings, the governing one first', () => {
    expect(codes(request)).toEqual([
      'force-per-strand',
      'jacking-force',
      'ceiling-of-breaking-load',
      'ceiling-of-yield-load',
    ]);
    const [perStrand, force] = outcomeValue(planForce(request)).steps;
    expect(perStrand?.numbers[1]?.quantity).toEqual({ value: 41_300, unit: 'lbf' });
    expect(force?.formula).toBe('P = n P_strand');
  });

  it('show every correction with its formula and then the sum', () => {
    const asked = { ...request, asked: byForce(30), corrections: [overpull, warmer] };
    expect(codes(asked).slice(0, 4)).toEqual([
      'jacking-force',
      'live-end-seating',
      'temperature',
      'force-with-corrections',
    ]);
    expect(outcomeValue(planForce(asked)).steps.map(({ formula }) => formula)).toEqual([
      'P_n = n P_strand',
      'P_over = s n A E / L',
      'dP = n A E alpha dT',
      'P = P_n + P_over + dP',
      'P_max = c n F_u',
      'P_max = c n F_y',
    ]);
  });
});

describe('a force above its ceiling', () => {
  it('is refused with the ceiling named', () => {
    expect(planForce({ ...request, asked: byForce(33.05) })).toMatchObject({
      ok: false,
      problem: {
        code: 'above-stress-ceiling',
        given: '33.05 kip',
        needed: 'at most 33.04 kip, 0.8 of the breaking load of 41300 lbf a strand (ACI 318 Table 20.3.2.5.1)',
      },
    });
  });

  it('begins above the ceiling: at the ceiling it is still allowed, in any unit', () => {
    expect(planForce({ ...request, asked: byForce(33.04) }).ok).toBe(true);
    const inNewtons = { value: 33.04 * 4448.2216152605, unit: 'N' } as const;
    expect(planForce({ ...request, asked: { by: 'force', perStrand: inNewtons } }).ok).toBe(true);
  });

  it('is refused where only the correction takes it there', () => {
    const near = { ...request, asked: byForce(32.5) };
    expect(planForce(near).ok).toBe(true);
    expect(planForce({ ...near, corrections: [overpull] })).toMatchObject({
      ok: false,
      problem: { code: 'above-stress-ceiling' },
    });
  });

  it('is judged by the 0.1 % force under the European pair, which the edition decides', () => {
    const asked = { by: 'force', perStrand: { value: 203, unit: 'kN' } } as const;
    const european = { ...request, column: 'si', asked, rules: ceilingsOfEurocode } as const;
    const of2000 = outcomeValue(findStrand('15.2 mm Y1860S7 (prEN 10138-3:2000)'));
    const of2009 = outcomeValue(findStrand('15.2 mm Y1860S7 (FprEN 10138-3:2009)'));
    expect(planForce({ ...european, strand: of2009 }).ok).toBe(true);
    expect(planForce({ ...european, strand: of2000 })).toMatchObject({
      ok: false,
      problem: {
        code: 'above-stress-ceiling',
        needed: 'at most 201.6 kN, 0.9 of the yield load of 224 kN a strand (EN 1992-1-1 5.10.2.1)',
      },
    });
  });
});

describe('a force that cannot be', () => {
  it.each([
    ['strands', { ...request, strands: 0 }],
    ['fraction', { ...request, asked: { by: 'fraction', fraction: 0 } as const }],
    ['fraction', { ...request, asked: { by: 'fraction', fraction: 1.01 } as const }],
    ['fraction', { ...request, asked: { by: 'fraction', fraction: Number.NaN } as const }],
    ['force', { ...request, asked: byForce(-31) }],
  ])('is refused by its %s', (where, asked) => {
    expect(planForce(asked)).toMatchObject({ ok: false, problem: { code: 'number-out-of-range', where } });
  });

  it('is refused where a correction is given twice, or leaves nothing to pull', () => {
    expect(planForce({ ...request, corrections: [overpull, overpull] })).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where: 'corrections', given: 'live-end-seating' },
    });
    const frozen = { ...warming, difference: { value: -2000, unit: 'F' } } as const;
    const corrections = [outcomeValue(temperatureCorrection(stretched, frozen, 'kip'))];
    expect(planForce({ ...request, corrections })).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'force' },
    });
  });
});
