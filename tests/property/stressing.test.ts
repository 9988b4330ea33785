// Laws of the pulls of a bed.

import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readStressingBody } from '../../src/contract/stressing.ts';
import { writeStressingCsv } from '../../src/contract/stressing-csv.ts';
import { preTensionedWindow } from '../../src/domain/rules/elongation-window.ts';
import { theoreticalElongation } from '../../src/domain/strand/elongation.ts';
import { findAgreement, judgePulls } from '../../src/domain/stressing/judge-pull.ts';
import { summariseBed } from '../../src/domain/stressing/summarise-bed.ts';
import { length } from '../../src/domain/units/length.ts';
import { convert } from '../../src/domain/units/quantity.ts';
import { expectDigits } from '../expect-digits.ts';
import { outcomeValue } from '../outcome-value.ts';
import { body } from '../unit/contract/stressing-body.ts';
import { basis, pattern, pullOf } from '../unit/domain/stressing/bed-of-pulls.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Travels about the theoretical one of 28.5 in, in and out of the window. */
const travel = between(20, 38);

describe('a pull', () => {
  it('that reaches its force and its travel agrees exactly', () => {
    fc.assert(
      fc.property(between(10, 1000), between(0, 0.5), between(0, 2), (value, part, allowed) => {
        const force = { value, unit: 'kip' } as const;
        const preload = { value: part * value, unit: 'kip' } as const;
        const allowance = { value: allowed, unit: 'in' } as const;
        const stretch = outcomeValue(theoreticalElongation(basis.strand, { force, preload }, 'in')).value;
        const entry = pullOf('A1', stretch.value + allowed, { gaugeForce: force });
        const found = outcomeValue(findAgreement(entry, { ...basis, theoreticalForce: force, preload, allowance }));
        expect(found.outcome).toBe('within');
        expect(Math.abs(found.agreementPercent)).toBeLessThan(1e-10);
      }),
    );
  });

  it('agrees the same in whatever unit its travel was measured', () => {
    fc.assert(
      fc.property(travel, fc.constantFrom('mm' as const, 'ft' as const, 'm' as const), (inches, unit) => {
        const measured = { value: convert(length, { value: inches, unit: 'in' }, unit), unit };
        const one = outcomeValue(findAgreement(pullOf('A1', inches), basis));
        const other = outcomeValue(findAgreement(pullOf('A1', inches, { elongation: measured }), basis));
        expectDigits(other.elongationForce.value, {
          certified: one.elongationForce.value,
          digits: 13,
          because: 'a force without great differences in it; under thirty roundings',
        });
      }),
    );
  });
});

describe('the summary of a bed', () => {
  const bed = fc
    .uniqueArray(fc.constantFrom('A1', 'A2', 'B1', 'B2'), { minLength: 1 })
    .chain((positions) =>
      fc.tuple(...positions.map((position) => travel.map((inches) => pullOf(position, inches, { reason: 'slip' })))),
    );

  it('does not depend on the order of the pulls', () => {
    fc.assert(
      fc.property(bed, (entries) => {
        const [one, other] = [entries, entries.toReversed()].map((order) =>
          summariseBed(pattern, outcomeValue(judgePulls(pattern, order, basis))),
        );
        expectDigits(other?.meanRatio ?? Number.NaN, {
          certified: one?.meanRatio ?? Number.NaN,
          digits: 14,
          because: 'a sum of at most four ratios in another order',
        });
        expect([other?.outOfWindow, other?.notPulled, other?.stillOutOfWindow]).toEqual([
          one?.outOfWindow,
          one?.notPulled,
          one?.stillOutOfWindow,
        ]);
      }),
    );
  });

  it('never loses a pull to a re-pull', () => {
    fc.assert(
      fc.property(bed, travel, (entries, inches) => {
        const again = pullOf('A1', inches, { positions: entries[0]?.positions ?? [], reason: 'slip', repullOf: 1 });
        const before = outcomeValue(judgePulls(pattern, entries, basis));
        const after = outcomeValue(judgePulls(pattern, [...entries, again], basis));
        expect(after.slice(0, -1)).toEqual(before);
        expect(summariseBed(pattern, after)).toMatchObject({ pulls: entries.length + 1, repulls: 1 });
      }),
    );
  });
});

describe('the body of a stressing record', () => {
  it('is a record or a problem that says where, whatever stands in one of its fields', () => {
    const field = fc.constantFrom(...Object.keys(body));
    fc.assert(
      fc.property(field, fc.anything(), (name, value) => {
        const read = readStressingBody({ ...body, [name]: value }, () => preTensionedWindow);
        if (!read.ok) expect(read.problem.where).toMatch(/^(body|[a-z]\w*)/);
      }),
    );
  });

  it('never becomes a record with a pull out of the window and without a reason', () => {
    fc.assert(
      fc.property(between(1, 60), fc.boolean(), (inches, hasReason) => {
        const [pull] = body.pulls;
        const pulls = [{ ...pull, elongation: `${inches} in`, ...(hasReason ? { reason: 'slip' } : {}) }];
        const read = readStressingBody({ ...body, pulls }, () => preTensionedWindow);
        if (read.ok) {
          for (const { outcome, reason } of read.value.pulls)
            expect(outcome === 'within' || reason === 'slip').toBe(true);
        } else expect(read.problem.where).toMatch(/^pulls\[0\]\.(reason|elongation)$/);
      }),
    );
  });
});

describe('a stressing record as CSV', () => {
  it('has no cell a spreadsheet would run, and loses no text', () => {
    const record = outcomeValue(readStressingBody(body, () => preTensionedWindow));
    const [pull] = record.pulls;
    if (pull === undefined) throw new Error('The record has no pull.');
    const text = fc.string({ unit: fc.constantFrom(...'=+-@\t\r\n",;\'# aB1()'), minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(text, (note) => {
        const csv = writeStressingCsv({ ...record, pulls: [{ ...pull, note }] });
        const rows = Papa.parse<string[]>(csv, { newline: '\n' }).data;
        for (const cell of rows.flat()) {
          if (!/^-?\d/.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
        }
        const written = rows.at(-2)?.at(-1);
        expect([note, `'${note}`]).toContain(written);
      }),
    );
  });
});
