import { describe, expect, it } from 'vitest';
import { forceBehindReading } from '../../../../src/domain/calibration/curve.ts';
import { lookUpReading } from '../../../../src/domain/lookup/look-up-reading.ts';
import type { LookupBasis } from '../../../../src/domain/lookup/lookup-basis.ts';
import {
  mostRows,
  type ReadingsTable,
  readingsTable,
  type TableRequest,
} from '../../../../src/domain/lookup/readings-table.ts';
import { warn } from '../../../../src/domain/lookup/warning.ts';
import { type ForceUnit, force } from '../../../../src/domain/units/force.ts';
import { convert } from '../../../../src/domain/units/quantity.ts';
import { expectDigits } from '../../../expect-digits.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { runSheet } from '../../../plant-at-work.ts';
import { basisOf, curveOf, gauge, jack, ready, targetOf } from './basis-of.ts';

const asked = (changes: Partial<TableRequest> = {}): TableRequest => ({
  unit: 'kip',
  from: null,
  to: null,
  step: null,
  ...changes,
});
const tableOf = (request: Partial<TableRequest> = {}, changes: Partial<LookupBasis> = {}): ReadingsTable =>
  outcomeValue(readingsTable(basisOf(changes), asked(request)));
const forcesOf = ({ rows }: ReadingsTable): readonly number[] => rows.map((row) => row.force);
const forceUnits = Object.keys(force.factors) as ForceUnit[];

/** A sheet of the small plant's line between two other forces. */
function basisBetween(low: number, high: number): LookupBasis {
  const levels = Array.from({ length: 6 }, (_, row) => low + ((high - low) * row) / 5);
  const cycles = [1, 2, 3].map((cycle) => ({
    points: levels.map((level, row) => ({
      direction: 'up' as const,
      force: level,
      reading: 10 + 145 * level + ((row + cycle) % 3),
    })),
  }));
  return basisOf({ curve: curveOf(runSheet({ cycles })), gauge: null, jack: null });
}

describe('the rows of a table of readings', () => {
  it('cover the calibrated range at whole steps from zero, where nothing is asked', () => {
    const table = tableOf();
    expect(table).toMatchObject({ outcome: 'given', unit: 'kip', readingUnit: 'psi', step: 2 });
    expect(forcesOf(table)).toEqual(Array.from({ length: 20 }, (_, row) => 6 + 2 * row));
    expect(table.lowest).toEqual({ force: 5, because: 'calibrated-range' });
    expect(table.highest).toEqual({ force: 45, because: 'calibrated-range' });
  });

  it.each([
    // 25 intervals of the step are at least the range: 25 takes 1, 25.1 takes 2, 50.1 takes 5, 125.1 takes 10.
    [10, 35, 1],
    [10, 35.1, 2],
    [10, 60, 2],
    [10, 60.1, 5],
    [10, 135, 5],
    [10, 135.1, 10],
    [1, 3.5, 0.1],
    [1000, 9000, 500],
  ])('from %d to %d kip stand %d kip apart, at most 25 intervals', (low, high, step) => {
    const table = outcomeValue(readingsTable(basisBetween(low, high), asked()));
    expect(table.step).toBe(step);
    expect(table.rows.length).toBeGreaterThan(10);
    expect(table.rows.length).toBeLessThanOrEqual(26);
  });

  it('begin at the force asked for and go on by the step, as decimal as it was typed', () => {
    expect(forcesOf(tableOf({ from: 10, to: 40, step: 7.5 }))).toEqual([10, 17.5, 25, 32.5, 40]);
    expect(forcesOf(tableOf({ from: 10.1, to: 10.9, step: 0.1 }))).toEqual([
      10.1, 10.2, 10.3, 10.4, 10.5, 10.6, 10.7, 10.8, 10.9,
    ]);
    expect(forcesOf(tableOf({ to: 12, step: 2.5 }))).toEqual([5, 7.5, 10]);
    expect(forcesOf(tableOf({ from: 31, to: 31 }))).toEqual([31]);
  });

  it('lie on whole steps from the force asked for, even where that lies below the calibrated range', () => {
    expect(forcesOf(tableOf({ from: 1, to: 60, step: 10 }))).toEqual([11, 21, 31, 41]);
  });

  it('hold both ends of the calibrated range when asked for them in any unit', () => {
    for (const unit of forceUnits) {
      const [from, to] = [5, 45].map((value) => convert(force, { value, unit: 'kip' }, unit)) as [number, number];
      const table = tableOf({ unit, from, to, step: (to - from) / 8 });
      expect(table.rows, unit).toHaveLength(9);
      expectDigits(table.rows[0]?.force ?? Number.NaN, { certified: from, digits: 11, because: 'forces of 12 digits' });
      expectDigits(table.rows[8]?.force ?? Number.NaN, { certified: to, digits: 11, because: 'forces of 12 digits' });
    }
  });

  it('hold both ends of a calibrated range of any decimals', () => {
    for (const [low, high] of [
      [1.0000000000049, 10.0000000000049],
      [100.4 / 3, 1000.1 / 3],
    ] as const) {
      const table = outcomeValue(readingsTable(basisBetween(low, high), asked({ from: low, step: (high - low) / 3 })));
      expect(table.rows).toHaveLength(4);
    }
  });

  it('are those of the single look-up, to the last digit, in any unit', () => {
    for (const unit of forceUnits) {
      const basis = basisOf();
      const table = outcomeValue(readingsTable(basis, asked({ unit })));
      expect(table.rows.length, unit).toBeGreaterThan(10);
      for (const row of table.rows) {
        const single = lookUpReading(basis, targetOf(row.force, unit), { released: null });
        expect(row).toMatchObject({
          reading: single.reading?.value,
          readingToSet: single.readingToSet?.value,
          forceAtReadingToSet: single.forceAtReadingToSet?.value,
          roundingError: single.roundingError?.value,
          roundingErrorPercent: single.roundingError?.percent,
          expandedUncertainty: single.uncertainty?.expanded,
        });
        expect(table.doNotExceed).toEqual(single.doNotExceed);
      }
    }
  });

  it('count the temperature asked for', () => {
    const basis = basisOf({ budget: { ...basisOf().budget, calibratedAtCelsius: 20 } });
    const warm = outcomeValue(readingsTable(basis, asked({ from: 31, to: 31 }), { temperatureCelsius: 40 }));
    const single = lookUpReading(basis, targetOf(31), { released: null, temperatureCelsius: 40 });
    expect(warm.rows[0]?.expandedUncertainty).toBe(single.uncertainty?.expanded);
    expect(warm.rows[0]?.expandedUncertainty).toBeGreaterThan(
      outcomeValue(readingsTable(basis, asked({ from: 31, to: 31 }))).rows[0]?.expandedUncertainty ?? Number.NaN,
    );
  });

  it('carry what is to be heeded at them alone; what holds for all is said once', () => {
    const besides = [warn('of-another-day', 'As of another day.')];
    const table = tableOf({ step: 1 }, { besides });
    const at = (kip: number) => table.rows.find((row) => row.force === kip)?.warnings;
    // A quarter of 10,000 psi is reached at 17.17 kip; 2 % of the range below its upper end is 44.2 kip.
    expect(at(17)).toContain('outside-dial-window');
    expect(at(18)).toEqual([]);
    expect(at(44)).toEqual([]);
    expect(at(45)).toEqual(['near-end-of-range']);
    expect(table.warnings.map(({ code }) => code)).toEqual(['of-another-day', 'ceiling-not-checked']);
  });

  it('never speak of a preload', () => {
    for (const { warnings } of tableOf({ step: 1 }).rows) expect(warnings).not.toContain('preload-not-given');
    expect(tableOf().warnings.map(({ code }) => code)).not.toContain('preload-not-given');
  });
});

describe('the ends of a table of readings', () => {
  it('are those asked for where they lie inside', () => {
    expect(tableOf({ from: 5, to: 45 })).toMatchObject({
      lowest: { force: 5, because: 'asked' },
      highest: { force: 45, because: 'asked' },
    });
  });

  it('are those of the calibrated range where more is asked', () => {
    expect(tableOf({ from: 4.999, to: 45.001 })).toMatchObject({
      lowest: { force: 5, because: 'calibrated-range' },
      highest: { force: 45, because: 'calibrated-range' },
    });
  });

  it('stop at the rating of the jack, which itself may be set', () => {
    const weak = { jack: { ...jack, ratedForce: { value: 30, unit: 'kip' as const } } };
    const table = tableOf({}, weak);
    expect(table.highest).toEqual({ force: 30, because: 'jack-rating' });
    expect(forcesOf(table).at(-1)).toBe(30);
    expect(tableOf({ to: 25 }, weak).highest).toEqual({ force: 25, because: 'asked' });
    const hardlyWeaker = { jack: { ...jack, ratedForce: { value: 44.9, unit: 'kip' as const } } };
    expect(tableOf({}, hardlyWeaker).highest).toEqual({ force: 44.9, because: 'jack-rating' });
    const asStrong = { jack: { ...jack, ratedForce: { value: 45, unit: 'kip' as const } } };
    expect(tableOf({}, asStrong).highest).toEqual({ force: 45, because: 'calibrated-range' });
  });

  it('stop where the curve meets the full scale of the gauge', () => {
    const small = { gauge: { ...gauge, fullScale: { value: 6020, unit: 'psi' as const } } };
    const table = tableOf({}, small);
    const span = outcomeValue(forceBehindReading(curveOf(), 6020));
    expect(table.highest).toEqual({ force: span, because: 'gauge-span' });
    expect(forcesOf(table).at(-1)).toBe(40);
    for (const { readingToSet } of table.rows) expect(readingToSet).toBeLessThanOrEqual(6020);
  });

  it('name the least where jack and gauge both stop short', () => {
    const changes = {
      jack: { ...jack, ratedForce: { value: 30, unit: 'kip' as const } },
      gauge: { ...gauge, fullScale: { value: 6020, unit: 'psi' as const } },
    };
    expect(tableOf({}, changes).highest?.because).toBe('jack-rating');
    const strong = { ...changes, jack };
    expect(tableOf({}, strong).highest?.because).toBe('gauge-span');
  });
});

describe('a table of readings that is not given', () => {
  const withoutNumbers = { rows: [], step: null, lowest: null, highest: null, doNotExceed: null };

  it.each([
    ['without a curve', { curve: null }, 'not-calibrated'],
    ['after a parting', { parted: true }, 'pair-parted'],
    ['on hold', { onHold: true }, 'on-hold'],
    [
      'by a clock behind the ledger',
      { besides: [warn('clock-behind-ledger', 'Set the clock.')] },
      'clock-behind-ledger',
    ],
  ] as const)('is refused %s', (_, changes, code) => {
    const table = tableOf({}, changes);
    expect(table).toMatchObject({ outcome: 'refused', ...withoutNumbers });
    expect(table.warnings.map((warning) => warning.code)).toContain(code);
  });

  it('is withheld where a stop stands, and a refusal goes before it', () => {
    const standing = { ...ready, standing: 'overdue', isOverdue: true } as const;
    expect(tableOf({}, { standing })).toMatchObject({ outcome: 'withheld', ...withoutNumbers });
    expect(tableOf({}, { standing, onHold: true }).outcome).toBe('refused');
  });

  it('is refused where all of it lies outside what may be set', () => {
    const small = { gauge: { ...gauge, fullScale: { value: 700, unit: 'psi' as const } } };
    const weak = { jack: { ...jack, ratedForce: { value: 4, unit: 'kip' as const } } };
    const refused = [
      [tableOf({ from: 46 }), 'outside-calibrated-range', 'No force of 46 kip can be set'],
      [tableOf({ to: 4 }), 'outside-calibrated-range', 'calibrated are 5 kip to 45 kip'],
      [tableOf({}, weak), 'above-jack-rating', 'rating of 4 kip'],
      [tableOf({}, small), 'above-gauge-span', 'full scale of 700 psi'],
      [tableOf({ from: 41 }, { gauge: { ...gauge, fullScale: { value: 5800, unit: 'psi' } } }), 'above-gauge-span', ''],
    ] as const;
    for (const [table, code, part] of refused) {
      expect(table).toMatchObject({ outcome: 'refused', ...withoutNumbers });
      expect(table.warnings[0]?.code).toBe(code);
      expect(table.warnings[0]?.message).toContain(part);
    }
  });

  it('is a problem where it runs backwards', () => {
    expect(readingsTable(basisOf(), asked({ from: 30, to: 20 }))).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where: 'from', needed: 'a force of at most 20 kip', given: '30 kip' },
    });
  });

  it.each([0, -2, Number.NaN, Number.POSITIVE_INFINITY])('is a problem with a step of %s', (step) => {
    expect(readingsTable(basisOf(), asked({ step }))).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'step', needed: 'a number above zero' },
    });
  });

  it(`is a problem from row ${mostRows + 1} on, with a step that would do`, () => {
    expect(tableOf({ from: 5, to: 44.92, step: 0.08 }).rows).toHaveLength(mostRows);
    const problem = readingsTable(basisOf(), asked({ from: 5, to: 45, step: 0.08 }));
    expect(problem).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'step', given: '0.08 kip' },
    });
    const needed = problem.ok ? '' : (problem.problem.needed ?? '');
    const offered = Number(/about (\S+) or more/.exec(needed)?.[1]);
    expect(tableOf({ from: 5, to: 45, step: offered }).rows.length).toBeLessThanOrEqual(mostRows);
  });

  it('is a problem where no whole step falls inside', () => {
    expect(readingsTable(basisOf(), asked({ step: 100 }))).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'step', needed: 'a step below 40', given: '100 kip' },
    });
  });
});
