// Laws of the forces and elongations of strand.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingsOfAci, ceilingsOfEurocode } from '../../src/domain/rules/stress-ceilings.ts';
import { forceBehindElongation, theoreticalElongation } from '../../src/domain/strand/elongation.ts';
import { seatingOverpull, temperatureCorrection } from '../../src/domain/strand/force-correction.ts';
import { planForce } from '../../src/domain/strand/plan-force.ts';
import { pullSteps } from '../../src/domain/strand/pull-steps.ts';
import { findStrand, strandTable } from '../../src/domain/strand/strand-table.ts';
import { stressCeilings } from '../../src/domain/strand/stress-ceiling.ts';
import { type ForceUnit, force } from '../../src/domain/units/force.ts';
import type { LengthUnit } from '../../src/domain/units/length.ts';
import { convert } from '../../src/domain/units/quantity.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const unitOfForce = fc.constantFrom<ForceUnit>('kN', 'kip', 'lbf', 'tf');
const unitOfLength = fc.constantFrom<LengthUnit>('mm', 'in', 'ft', 'm');
const strand = fc.record({
  strands: fc.integer({ min: 1, max: 40 }),
  length: fc.record({ value: between(1, 1000), unit: unitOfLength }),
  area: fc.record({ value: between(50, 200), unit: fc.constant('mm2' as const) }),
  modulus: fc.record({ value: between(25_000, 30_000), unit: fc.constant('ksi' as const) }),
});
const because = {
  digits: 12,
  because: 'under twenty roundings, a preload of at most 0.9 of the force costs one digit',
};

describe('an elongation', () => {
  it('leads back to the force it came from, in any units', () => {
    fc.assert(
      fc.property(
        strand,
        between(1, 1000),
        unitOfForce,
        between(0, 0.9),
        unitOfLength,
        (of, value, unit, part, in_) => {
          const pulled = { force: { value, unit }, preload: { value: part * value, unit } };
          const elongation = outcomeValue(theoreticalElongation(of, pulled, in_)).value;
          const behind = outcomeValue(forceBehindElongation(of, { elongation, preload: pulled.preload }));
          expect(behind.unit).toBe(unit);
          expectDigits(behind.value, { certified: value, ...because });
        },
      ),
    );
  });

  it('is twice as long on twice the length, and half on twice the strands', () => {
    fc.assert(
      fc.property(strand, between(1, 1000), (of, value) => {
        const pulled = { force: { value, unit: 'kN' }, preload: { value: 0, unit: 'kN' } } as const;
        const stretch = (asked: typeof of) => outcomeValue(theoreticalElongation(asked, pulled, 'mm')).value.value;
        const twice = { ...of.length, value: 2 * of.length.value };
        expectDigits(stretch({ ...of, length: twice }), { certified: 2 * stretch(of), ...because });
        expectDigits(stretch({ ...of, strands: 2 * of.strands }), { certified: stretch(of) / 2, ...because });
      }),
    );
  });
});

describe('a correction', () => {
  it('for a seating is the force whose elongation is that seating', () => {
    fc.assert(
      fc.property(strand, between(0.1, 20), (of, seating) => {
        const over = outcomeValue(seatingOverpull(of, { value: seating, unit: 'mm' }, 'kN')).value;
        const none = { value: 0, unit: 'kN' } as const;
        const back = outcomeValue(theoreticalElongation(of, { force: over, preload: none }, 'mm')).value;
        expectDigits(back.value, { certified: seating, ...because });
      }),
    );
  });

  it('for a temperature is the overpull for the length the strand would grow, whatever its length', () => {
    fc.assert(
      fc.property(strand, between(10e-6, 15e-6), between(1, 50), (of, alpha, difference) => {
        const coefficient = { value: alpha, unit: '1/C' } as const;
        const warming = { coefficient, difference: { value: difference, unit: 'C' } } as const;
        const growth = { ...of.length, value: of.length.value * alpha * difference };
        expectDigits(outcomeValue(temperatureCorrection(of, warming, 'kN')).value.value, {
          certified: outcomeValue(seatingOverpull(of, growth, 'kN')).value.value,
          ...because,
        });
      }),
    );
  });
});

describe('a planned force', () => {
  it('is never above either ceiling of its strand, whatever is asked', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...strandTable),
        fc.constantFrom('in-pound' as const, 'si' as const),
        fc.constantFrom(ceilingsOfAci, ceilingsOfEurocode),
        fc.integer({ min: 1, max: 30 }),
        // Half of them where the two ceilings lie, so that taking the greater one is seen.
        fc.oneof(between(0.01, 1), between(0.75, 0.87)),
        (row, column, rules, strands, fraction) => {
          const asked = { by: 'fraction', fraction } as const;
          const planned = planForce({ strand: row, column, strands, asked, corrections: [], rules });
          const ceilings = stressCeilings(row, column, { strands, rules });
          if (planned.ok) {
            for (const { force: most } of ceilings) {
              const ratio = convert(force, planned.value.force, 'N') / convert(force, most, 'N');
              expect(ratio).toBeLessThanOrEqual(1 + 2e-12);
            }
          } else {
            expect(planned.problem.code).toBe('above-stress-ceiling');
            expect(fraction).toBeGreaterThan(0.7);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('the steps of a pull', () => {
  it('rise strictly and equally from the preload to the final force', () => {
    fc.assert(
      fc.property(between(1, 1000), between(0.01, 0.9), fc.integer({ min: 1, max: 20 }), (value, part, count) => {
        const preload = { value: part * value, unit: 'kN' } as const;
        const forces = outcomeValue(pullSteps(preload, { value, unit: 'kN' }, count)).map((step) => step.force.value);
        expect(forces).toHaveLength(count + 1);
        for (const [index, reached] of forces.slice(1).entries()) {
          const step = reached - (forces[index] ?? Number.NaN);
          expect(step).toBeGreaterThan(0);
          const needed = { digits: 10, because: 'a difference of a two-hundredth of the force keeps 13 digits' };
          expectDigits(step, { certified: (value - preload.value) / count, ...needed });
        }
      }),
    );
  });
});

describe('every strand of the table', () => {
  it('is found by its designation in any capitals and spacing', () => {
    fc.assert(
      fc.property(fc.constantFrom(...strandTable), fc.constantFrom(' ', '  ', '\t'), (row, space) => {
        const text = row.designation.toUpperCase().replaceAll(' ', space);
        expect(outcomeValue(findStrand(text))).toBe(row);
      }),
    );
  });
});
