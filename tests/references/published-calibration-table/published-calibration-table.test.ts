// A published calibration table and its equation, through the look-up both ways and the table of readings.

import { describe, expect, it } from 'vitest';
import { lookUpForce } from '../../../src/domain/lookup/look-up-force.ts';
import { lookUpReading } from '../../../src/domain/lookup/look-up-reading.ts';
import { readingsTable } from '../../../src/domain/lookup/readings-table.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { basisOfCurve, lineThrough } from '../basis-of-curve.ts';
import reference from './case.json' with { type: 'json' };

const points = reference.data.points.map(({ reading_MPa, force_kN }) => ({
  reading: Number(reading_MPa),
  force: Number(force_kN),
}));
const slope = reference.results.slope_MPa_per_kN;
const released = null;
const setTo = (force: number, curve = lineThrough(points, 'force')) =>
  lookUpReading(
    basisOfCurve(curve),
    { force: { value: force, unit: 'kN' }, ceiling: null, preload: null },
    { released },
  ).readingToSet?.value;

describe('published calibration table', () => {
  const basis = basisOfCurve(lineThrough(points, 'force'));

  it('sets the gauge to the pressure of each row for its force', () => {
    expect(points.slice(0, -1).map(({ force }) => setTo(force))).toEqual(
      points.slice(0, -1).map(({ reading }) => reading),
    );
  });

  it('stays a step below the last row, where the fitted line ends a rounding of the forces short of 45 MPa', () => {
    const last = points.at(-1);
    const end = basis.curve?.readingRange.high ?? Number.NaN;
    expectDigits(end, {
      certified: last?.reading ?? Number.NaN,
      digits: Math.log10((last?.force ?? Number.NaN) / 0.11),
      because: 'the table itself departs from its equation by up to 0.11 kN, in the row of 40 MPa',
    });
    expect(end).toBeLessThan(45);
    expect(setTo(last?.force ?? Number.NaN)).toBe(44.99);
  });

  it('gives the force of each row back at its pressure', () => {
    // At the two ends the fitted line may end a rounding of the printed forces inside the printed pressures.
    for (const { reading, force } of points.slice(1, -1)) {
      const behind = lookUpForce(basis, { value: reading, unit: 'MPa' }, { unit: 'kN', released });
      expectDigits(behind.force?.value ?? Number.NaN, {
        certified: force,
        digits: Math.log10(force / 0.11),
        because: 'the table itself departs from its equation by up to 0.11 kN, in the row of 40 MPa',
      });
    }
  });

  it('reads in a table as the published equation does', () => {
    const table = outcomeValue(readingsTable(basis, { unit: 'kN', from: 500, to: 2400, step: 100 }));
    expect(table.rows).toHaveLength(20);
    for (const { force, reading } of table.rows) {
      expectDigits(reading, {
        certified: Number(slope) * force,
        digits: Math.log10(force / 0.11),
        because: 'the table itself departs from its equation by up to 0.11 kN, in the row of 40 MPa',
      });
    }
  });

  it('would not accept the forces of the row above', () => {
    const shifted = points.slice(1).map(({ reading }, row) => ({ reading, force: points[row]?.force ?? 0 }));
    const curve = lineThrough(shifted, 'force');
    for (const { reading, force } of points.slice(0, -1)) expect(setTo(force, curve)).not.toBe(reading);
  });

  it('would not accept the equation with a wrong last digit', () => {
    const wrong = Number(slope) + 0.00001;
    const misfit = basisOfCurve(
      lineThrough(
        points.map(({ force }) => ({ force, reading: wrong * force })),
        'force',
      ),
    );
    const { rows } = outcomeValue(readingsTable(misfit, { unit: 'kN', from: 500, to: 2400, step: 100 }));
    const last = rows.at(-1);
    expect(() =>
      expectDigits(last?.reading ?? 0, {
        certified: Number(slope) * 2400,
        digits: Math.log10(2400 / 0.11),
        because: 'a wrong slope',
      }),
    ).toThrow('a wrong slope');
  });
});
