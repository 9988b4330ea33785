import { describe, expect, it } from 'vitest';
import {
  type EntryCheck,
  type EntryCheckContext,
  entryChecks,
} from '../../../../src/domain/calibration/entry-checks.ts';
import { fitCalibration } from '../../../../src/domain/calibration/fit-calibration.ts';
import type { RunSheet, RunSheetPoint } from '../../../../src/domain/calibration/run-sheet.ts';
import type { Certificate, Gauge, Jack, LoadCell } from '../../../../src/domain/equipment/equipment.ts';
import { outcomeValue } from '../../../outcome-value.ts';
import { seededUniform } from './seeded-scatter.ts';
import { ordinaryScatter, plainSheet, tenLevels, withPoint } from './sheet-of.ts';

const certificate: Certificate = {
  number: 'C-7',
  loadCell: 'LC-1',
  laboratory: 'a laboratory',
  traceableTo: 'a national standard',
  calibratedOn: '2025-06-01',
  validUntil: '2026-06-01',
  expandedUncertaintyPercent: 0.5,
  coverageFactor: 2,
};
const gauge: Gauge = {
  kind: 'gauge',
  tag: 'G-1',
  serial: '1',
  display: 'digital',
  fullScale: { value: 10000, unit: 'psi' },
  graduation: { value: 1, unit: 'psi' },
};
const dial: Gauge = { ...gauge, display: 'dial', graduation: { value: 100, unit: 'psi' } };
const cell: LoadCell = { kind: 'load-cell', tag: 'LC-1', serial: '1', capacity: { value: 100, unit: 'kip' } };
const found = (sheet: RunSheet, context: EntryCheckContext = {}): readonly EntryCheck[] => entryChecks(sheet, context);
const only = (sheet: RunSheet, context: EntryCheckContext = {}): EntryCheck => {
  const checks = found(sheet, context);
  expect(checks).toHaveLength(1);
  return checks[0] as EntryCheck;
};
const eachReading = (sheet: RunSheet, change: (point: RunSheetPoint, cycle: number) => RunSheetPoint): RunSheet => ({
  ...sheet,
  cycles: sheet.cycles.map(({ points }, cycle) => ({ points: points.map((point) => change(point, cycle)) })),
});

describe('entry checks', () => {
  it('find nothing in an ordinary sheet, whatever is known of the parts', () => {
    const context = {
      certificate,
      cell,
      lowestOfCell: { value: 0.1, provenance: 'plant', source: 'a test' },
      gauge,
      pistonArea: { value: 12.9, unit: 'in2' },
      today: '2026-03-02',
    } as const;
    expect(found(plainSheet(), context)).toEqual([]);
    expect(found(plainSheet({ set: 'reading' }), context)).toEqual([]);
  });

  it('speak on a half-typed sheet and pass over what is not a number', () => {
    const empty = plainSheet({ cycles: [] });
    expect(only(empty)).toMatchObject({ code: 'too-few-points', where: 'cycles', weight: 'error' });
    const typing = plainSheet({ cycles: [{ points: [{ direction: 'up', force: 10, reading: Number.NaN }] }] });
    expect(only(typing).code).toBe('too-few-points');
  });

  it('name swapped digits of a reading and what would fit', () => {
    // 5620 psi would stand near 70 kip; the sheet has 5620 + scatter there.
    const typed = plainSheet().cycles[1]?.points[6];
    expect(typed?.reading).toBe(5621);
    expect(only(withPoint(plainSheet(), 1, 6, { reading: 6521 }))).toEqual({
      code: 'digits-transposed',
      message: 'Cycle 2, row 7: the reading 6521 psi does not fit the other points; 5621 would fit.',
      where: 'cycles[1].points[6].reading',
      weight: 'doubt',
      fits: { field: 'reading', value: 5621 },
    });
  });

  it('name a doubled digit, a dropped one and a decimal point in another place', () => {
    const doubled = only(withPoint(plainSheet(), 1, 6, { reading: 55621 }));
    expect(doubled).toMatchObject({ code: 'digit-doubled', where: 'cycles[1].points[6].reading', weight: 'doubt' });
    expect(doubled.fits).toEqual({ field: 'reading', value: 5621 });
    expect(doubled.message).toContain('; 5621 would fit (a digit typed twice).');
    const dropped = only(withPoint(plainSheet(), 1, 6, { reading: 562 }));
    expect(dropped).toMatchObject({ code: 'digit-dropped', fits: { field: 'reading' } });
    // The last digit is lost: 5620 is nearest the curve through the others, and its neighbours fit as well.
    expect([dropped.fits?.value, ...(dropped.fits?.alternatives ?? [])]).toContain(5621);
    expect(only(withPoint(plainSheet(), 1, 6, { force: 7 }))).toMatchObject({
      code: 'digit-dropped',
      fits: { field: 'force', value: 70 },
    });
    const inMegapascal = eachReading(plainSheet({ units: { force: 'kip', reading: 'MPa' } }), (point) => ({
      ...point,
      reading: Math.round(point.reading) / 100,
    }));
    expect(only(withPoint(inMegapascal, 1, 6, { reading: 562.1 }))).toMatchObject({
      code: 'decimal-point',
      where: 'cycles[1].points[6].reading',
      fits: { field: 'reading', value: 56.21 },
    });
  });

  it('say which quantity is wrong by what the other cycles set in the row', () => {
    const check = only(withPoint(plainSheet(), 1, 4, { force: 55 }));
    expect(check).toMatchObject({ code: 'outlier', where: 'cycles[1].points[4].force' });
    expect(check.fits).toEqual({ field: 'force', value: 50 });
  });

  it('find swapped digits that stand out less than an outlier must', () => {
    // Either lies 18 psi off the curve, 4 s; 5602 is 5620 with two digits swapped, of 5638 no swap fits.
    const check = only(withPoint(plainSheet(), 1, 6, { reading: 5602 }));
    expect(check).toMatchObject({ code: 'digits-transposed', fits: { field: 'reading', value: 5620 } });
    expect(found(withPoint(plainSheet(), 1, 6, { reading: 5638 }))).toEqual([]);
  });

  it('name a cycle that is shifted by a row once, whole or from some row on, with its direction', () => {
    const rowsOf = (shift: (reading: readonly number[]) => readonly number[]): RunSheet => {
      const readings = shift((plainSheet().cycles[1]?.points ?? []).map(({ reading }) => reading));
      return eachReading(plainSheet(), (point, cycle) => {
        const row = tenLevels.indexOf(point.force as (typeof tenLevels)[number]);
        return cycle === 1 ? { ...point, reading: readings[row] ?? Number.NaN } : point;
      });
    };
    const high = only(rowsOf((readings) => [...readings.slice(1), 8810]));
    expect(high).toMatchObject({ code: 'cycle-shifted', where: 'cycles[1]', weight: 'error' });
    expect(high.message).toContain('one row too high');
    const low = only(rowsOf((readings) => [15, ...readings.slice(0, -1)]));
    expect(low).toMatchObject({ code: 'cycle-shifted', where: 'cycles[1]' });
    expect(low.message).toContain('one row too low');
    const part = only(rowsOf((readings) => [...readings.slice(0, 4), ...readings.slice(5), 8810]));
    expect(part).toMatchObject({ code: 'cycle-shifted', where: 'cycles[1].points[4].reading' });
    expect(part.message).toContain('Cycle 2: from row 5 on');
    const halfTyped = only(rowsOf((readings) => readings.slice(1)));
    expect(halfTyped).toMatchObject({ code: 'cycle-shifted', where: 'cycles[1]' });
    const first = plainSheet().cycles.slice(0, 1);
    const two = [...rowsOf((readings) => [...readings.slice(1), 8810]).cycles.slice(1, 2), ...first];
    expect(only(plainSheet({ cycles: two }))).toMatchObject({ code: 'cycle-shifted', where: 'cycles[0]' });
  });

  it('name cycles that were copied, where the display is fine enough to tell', () => {
    const [first, second] = plainSheet().cycles;
    const cyclesOf = (sheet: RunSheet): RunSheet =>
      plainSheet({ cycles: [sheet.cycles[0], sheet.cycles[1], sheet.cycles[0]].flatMap((cycle) => cycle ?? []) });
    const two = only(cyclesOf(plainSheet()));
    expect(two).toMatchObject({ code: 'cycles-copied', where: 'cycles[2]', weight: 'doubt' });
    expect(two.message).toContain('Cycles 1 and 3 agree');
    const three = only(plainSheet({ cycles: [first, first, first].flatMap((cycle) => cycle ?? []) }));
    expect(three.message).toContain('Cycles 1, 2 and 3 agree');
    expect(first).not.toEqual(second);
    const coarse = eachReading(plainSheet(), (point) => ({ ...point, reading: 50 * Math.floor(point.reading / 50) }));
    expect(coarse.cycles[0]).toEqual(coarse.cycles[2]);
    expect(found(coarse)).toEqual([]);
  });

  it('name readings finer than the gauge shows, once with their number', () => {
    const rounded = eachReading(plainSheet(), (point) => ({ ...point, reading: 50 * Math.round(point.reading / 50) }));
    expect(found(rounded, { gauge: dial })).toEqual([]);
    const reading = (rounded.cycles[1]?.points[6]?.reading ?? Number.NaN) - 10;
    const check = only(withPoint(rounded, 1, 6, { reading }), { gauge: dial });
    expect(check).toMatchObject({
      code: 'finer-than-graduation',
      where: 'cycles[1].points[6].reading',
      weight: 'doubt',
    });
    expect(check.message).toContain('5590 psi is finer than the gauge shows, steps of 50 psi; 5550 or 5600 would fit');
    expect(only(plainSheet(), { gauge: dial }).message).toContain('(30 such readings)');
    expect(found(plainSheet(), { gauge: { ...dial, graduation: { value: 10, unit: 'bar' } } })).toEqual([]);
  });

  it('tell a wrong area from a zero offset by the slope', () => {
    const area = only(plainSheet(), { pistonArea: { value: 16, unit: 'in2' } });
    expect(area).toMatchObject({ code: 'area-against-slope', where: 'units', weight: 'doubt' });
    expect(area.message).toMatch(/An area of about 12\.9\d* in2 would fit/);
    const raised = eachReading(plainSheet(), (point) => ({ ...point, reading: point.reading + 400 }));
    const offset = only(raised, { pistonArea: { value: 12.9, unit: 'in2' } });
    expect(offset).toMatchObject({ code: 'zero-offset', where: 'cycles', weight: 'doubt' });
    expect(offset.message).toMatch(/shows 4[12]\d(\.\d)? psi at no force/);
    expect(only(plainSheet({ set: 'reading' }), { pistonArea: { value: 16, unit: 'in2' } }).code).toBe(
      'area-against-slope',
    );
  });

  it('name the one of many cycles that parts from its row where the curve does not follow the rows', () => {
    // Six cycles that all swing 40 psi about the curve from row to row, each scattering by 3 psi.
    const cycles = [0, 1, 2, 3, 4, 5].map((cycle) => ({
      points: tenLevels.map(
        (force, row): RunSheetPoint => ({
          direction: 'up',
          force,
          reading: Math.round(
            80 * force + 20 + (row % 2 === 0 ? 40 : -40) + 3 * (ordinaryScatter[(7 * cycle + row) % 30] ?? 0),
          ),
        }),
      ),
    }));
    const wavy = plainSheet({ cycles });
    expect(found(wavy)).toEqual([]);
    const parted = withPoint(wavy, 3, 5, { reading: (cycles[3]?.points[5]?.reading ?? Number.NaN) + 103 });
    expect(only(parted).where).toBe('cycles[3].points[5].reading');
  });

  it('do not offer swapped digits that would still miss the curve by more than 2 s', () => {
    // 5646 would be 25 psi off, at a scatter of about 5 psi.
    expect(only(withPoint(plainSheet(), 1, 6, { reading: 6546 })).code).toBe('outlier');
  });

  it('name swapped digits of a force', () => {
    const sheet = eachReading(plainSheet(), (point) => ({
      ...point,
      force: point.force + 2.5,
      reading: point.reading + 200,
    }));
    const check = only(withPoint(sheet, 0, 2, { force: 23.5 }));
    expect(check).toMatchObject({ code: 'digits-transposed', where: 'cycles[0].points[2].force' });
    expect(check.message).toContain('32.5 would fit');
  });

  it('name a reading in another unit and what it would be', () => {
    const psi = plainSheet().cycles[2]?.points[4]?.reading ?? Number.NaN;
    const bar = Math.round((psi / 14.5037738) * 10) / 10;
    const check = only(withPoint(plainSheet(), 2, 4, { reading: bar }));
    expect(check).toMatchObject({ code: 'unit-slip', where: 'cycles[2].points[4].reading', weight: 'error' });
    expect(check.message).toContain(`${bar} bar would fit`);
    const megapascal = Math.round((psi / 145.037738) * 100) / 100;
    expect(only(withPoint(plainSheet(), 2, 4, { reading: megapascal })).message).toContain('MPa would fit');
  });

  it('name a force in another unit', () => {
    const check = only(withPoint(plainSheet(), 2, 4, { force: 222.4 }));
    expect(check).toMatchObject({ code: 'unit-slip', where: 'cycles[2].points[4].force' });
    expect(check.message).toContain('222.4 kN would fit');
  });

  it('name a whole cycle in another unit once', () => {
    const sheet = eachReading(plainSheet(), (point, cycle) =>
      cycle === 1 ? { ...point, reading: Math.round(point.reading * 6.894757) } : point,
    );
    expect(only(sheet)).toMatchObject({ code: 'unit-slip', where: 'cycles[1]', weight: 'error' });
    expect(only(sheet).message).toContain('kPa');
  });

  it('name a whole sheet in another unit from the area or from the gauge', () => {
    const sheet = plainSheet({ units: { force: 'kip', reading: 'bar' } });
    const byArea = only(sheet, { pistonArea: { value: 12.9, unit: 'in2' } });
    expect(byArea).toMatchObject({ code: 'unit-slip', where: 'units.reading' });
    expect(byArea.message).toContain('Readings in psi');
    expect(only(sheet, { gauge })).toMatchObject({ code: 'unit-slip', where: 'units.reading' });
    const forces = plainSheet({ units: { force: 'kN', reading: 'psi' } });
    expect(only(forces, { pistonArea: { value: 12.9, unit: 'in2' } })).toMatchObject({ where: 'units.force' });
    const nothingFits = only(plainSheet(), { pistonArea: { value: 7, unit: 'in2' } });
    expect(nothingFits).toMatchObject({ code: 'load-efficiency', weight: 'doubt' });
  });

  it('name an outlier that no slip explains, with about what would fit', () => {
    const check = only(withPoint(plainSheet(), 0, 4, { reading: 4190 }));
    expect(check).toMatchObject({ code: 'outlier', where: 'cycles[0].points[4].reading', weight: 'doubt' });
    expect(check.message).toMatch(/about 402\d psi would fit/);
  });

  it('find two outliers that would hide each other', () => {
    const sheet = withPoint(withPoint(plainSheet(), 0, 4, { reading: 4190 }), 1, 4, { reading: 4188 });
    expect(found(sheet).map(({ code, where }) => [code, where])).toEqual([
      ['outlier', 'cycles[0].points[4].reading'],
      ['outlier', 'cycles[1].points[4].reading'],
    ]);
  });

  it('never call a deviation below 0.1 % an outlier', () => {
    // One psi more in each further cycle, so that none is the copy of another.
    const exact = eachReading(plainSheet(), (point, cycle) => ({ ...point, reading: 80 * point.force + 20 + cycle }));
    expect(found(withPoint(exact, 1, 5, { reading: 4825 }))).toEqual([]);
    expect(only(withPoint(exact, 1, 5, { reading: 4827 })).code).toBe('outlier');
  });

  it('do not take the low levels of a gauge that is off zero for outliers', () => {
    const sheet = eachReading(plainSheet(), (point) => ({ ...point, reading: point.reading + 900 }));
    expect(found(sheet)).toEqual([]);
  });

  it('do not take ordinary scatter for outliers, however wide it is', () => {
    const sheet = eachReading(plainSheet(), (point) => {
      const line = 80 * point.force + 20;
      return { ...point, reading: line + 8 * (point.reading - line) };
    });
    expect(found(sheet)).toEqual([]);
  });

  it('do not call slips what a single cycle of few levels shows with a gauge far off zero', () => {
    const points = [20, 40, 60, 80, 100].map(
      (force): RunSheetPoint => ({ direction: 'up', force, reading: 80 * force + 900 }),
    );
    expect(found(plainSheet({ cycles: [{ points }] }))).toEqual([]);
  });

  it('do not guess at a unit that differs by 2 %', () => {
    const sheet = plainSheet({ units: { force: 'kip', reading: 'bar' } });
    const reading = Math.round((sheet.cycles[1]?.points[6]?.reading ?? Number.NaN) / 0.980665);
    expect(only(withPoint(sheet, 1, 6, { reading })).code).toBe('outlier');
  });

  it('name two readings in another unit one by one where the rest of their cycle fits', () => {
    const inBar = (row: number) =>
      Math.round((plainSheet().cycles[1]?.points[row]?.reading ?? Number.NaN) / 1.45037738) / 10;
    const sheet = withPoint(withPoint(plainSheet(), 1, 4, { reading: inBar(4) }), 1, 7, { reading: inBar(7) });
    expect(found(sheet).map(({ code, where }) => [code, where])).toEqual([
      ['unit-slip', 'cycles[1].points[4].reading'],
      ['unit-slip', 'cycles[1].points[7].reading'],
    ]);
  });

  it('name a series that is out of order', () => {
    const points = plainSheet().cycles[0]?.points ?? [];
    const swapped = [
      ...points.slice(0, 3),
      ...[points[4], points[3]].flatMap((point) => point ?? []),
      ...points.slice(5),
    ];
    const sheet = plainSheet({ cycles: [{ points: swapped }, ...plainSheet().cycles.slice(1)] });
    expect(only(sheet)).toMatchObject({ code: 'not-rising', where: 'cycles[0].points[4].force', weight: 'doubt' });
    const falling: RunSheetPoint[] = [60, 70].map((force) => ({ direction: 'down', force, reading: 80 * force + 90 }));
    const down = plainSheet({ cycles: [{ points: [...points, ...falling] }, ...plainSheet().cycles.slice(1)] });
    expect(only(down)).toMatchObject({ code: 'not-rising', where: 'cycles[0].points[11].force' });
  });

  it('name a zero that did not return, by more than one graduation where the gauge is known', () => {
    const points = plainSheet().cycles[0]?.points ?? [];
    const withZero = (reading: number) =>
      plainSheet({
        cycles: [{ points: [...points, { direction: 'down', force: 0, reading }] }, ...plainSheet().cycles.slice(1)],
      });
    expect(only(withZero(60))).toMatchObject({ code: 'zero-not-returned', where: 'cycles[0].points[10].reading' });
    expect(found(withZero(20))).toEqual([]);
    const coarse = (reading: number) =>
      eachReading(withZero(reading), (point) =>
        point.force === 0 ? point : { ...point, reading: 100 * Math.round(point.reading / 100) },
      );
    expect(found(coarse(100), { gauge: dial })).toEqual([]);
    expect(only(coarse(150), { gauge: dial }).code).toBe('zero-not-returned');
  });

  it('name a certificate that is not valid on the day, and one that is missing', () => {
    const late = plainSheet({ calibratedOn: '2026-06-02' });
    expect(only(late, { certificate })).toMatchObject({
      code: 'certificate-not-valid',
      where: 'loadCell',
      weight: 'error',
    });
    expect(found(plainSheet({ calibratedOn: '2026-06-01' }), { certificate })).toEqual([]);
    expect(only(plainSheet({ loadCell: 'LC-1' }), { certificate: null }).message).toContain('LC-1 has no certificate');
  });

  it('name a day after today and a passive set-up', () => {
    expect(only(plainSheet(), { today: '2026-03-01' })).toMatchObject({ code: 'day-in-future', where: 'calibratedOn' });
    expect(only(plainSheet({ loading: 'passive' }))).toMatchObject({ code: 'passive-set-up', weight: 'error' });
    expect(found(plainSheet({ loading: 'active' }))).toEqual([]);
  });

  it('name forces outside the window of the load cell, once each', () => {
    const lowestOfCell = { value: 0.1, provenance: 'plant', source: 'a test' } as const;
    const small = only(plainSheet(), { cell: { ...cell, capacity: { value: 290, unit: 'kip' } }, lowestOfCell });
    expect(small).toMatchObject({ code: 'cell-low-range', where: 'cycles[0].points[0].force', weight: 'doubt' });
    expect(small.message).toContain('below 10 % of the capacity of load cell LC-1, 290 kip');
    expect(small.message).toContain('6 such points');
    const wider = { ...lowestOfCell, value: 0.03 };
    expect(
      found(plainSheet(), { cell: { ...cell, capacity: { value: 290, unit: 'kip' } }, lowestOfCell: wider }),
    ).toEqual([]);
    const large = only(plainSheet(), { cell: { ...cell, capacity: { value: 444, unit: 'kN' } } });
    expect(large).toMatchObject({ code: 'cell-above-capacity', where: 'cycles[0].points[9].force', weight: 'error' });
  });

  it('name a force above the rating of the jack, once', () => {
    const jack: Jack = {
      kind: 'jack',
      tag: 'J-1',
      serial: '1',
      ratedForce: { value: 85, unit: 'kip' },
      pistonArea: { value: 12.9, unit: 'in2' },
      strandsPulled: 1,
    };
    const above = only(plainSheet(), { jack });
    expect(above).toMatchObject({ code: 'above-jack-rating', where: 'cycles[0].points[8].force', weight: 'error' });
    expect(above.message).toContain('90 kip is above the rating of jack J-1, 85 kip (6 such points)');
    expect(found(plainSheet(), { jack: { ...jack, ratedForce: { value: 100, unit: 'kip' } } })).toEqual([]);
  });

  it('name a pair and a load cell that the plant does not know', () => {
    const unknown = [
      { where: 'pair', name: 'P-99' },
      { where: 'loadCell', name: 'LC-77' },
    ] as const;
    expect(found(plainSheet(), { unknown }).map(({ code, where, weight }) => [code, where, weight])).toEqual([
      ['unknown-name', 'pair', 'doubt'],
      ['unknown-name', 'loadCell', 'doubt'],
    ]);
  });

  it('name a load cell that shows a force at zero reading, which is then not fitted', () => {
    const set = plainSheet({ set: 'reading' });
    const first = set.cycles[0]?.points ?? [];
    const zero: RunSheetPoint = { direction: 'up', force: 0.05, reading: 0 };
    const sheet = { ...set, cycles: [{ points: [zero, ...first] }, ...set.cycles.slice(1)] };
    expect(only(sheet)).toMatchObject({
      code: 'zero-not-returned',
      where: 'cycles[0].points[0].force',
      weight: 'doubt',
    });
    const residuals = outcomeValue(fitCalibration(sheet, { degree: 1 })).residuals;
    expect(residuals).toHaveLength(30);
    expect(outcomeValue(fitCalibration({ ...sheet, set: 'force' }, { degree: 1 })).residuals).toHaveLength(31);
  });

  it('name a reading above the full scale of the gauge', () => {
    const short = { ...gauge, fullScale: { value: 8000, unit: 'psi' } } as const;
    expect(only(plainSheet(), { gauge: short })).toMatchObject({ code: 'above-gauge-span', weight: 'error' });
  });

  it('answer for any numbers whatever, without failing', () => {
    const uniform = seededUniform(9);
    const odd = [0, 1e-7, 1.5e-9, 0.1, 5, 5, 1e21, 1e300, Number.MIN_VALUE, Number.NaN, -3];
    const any = (): number => (uniform() < 0.3 ? (odd[Math.floor(uniform() * odd.length)] ?? 0) : 100 * uniform());
    for (let count = 0; count < 400; count += 1) {
      const cycles = Array.from({ length: Math.floor(uniform() * 4) }, () => ({
        points: Array.from({ length: Math.floor(uniform() * 12) }, (): RunSheetPoint => {
          const direction = uniform() < 0.9 ? 'up' : 'down';
          return { direction, force: any(), reading: any() };
        }),
      }));
      const set = uniform() < 0.5 ? 'force' : 'reading';
      const checks = found(plainSheet({ cycles, set }), { cell, gauge, pistonArea: { value: 12.9, unit: 'in2' } });
      for (const { message } of checks) if (/NaN|undefined|Infinity/.test(message)) throw new Error(message);
    }
  });

  it('change nothing in the sheet', () => {
    const sheet = withPoint(plainSheet(), 1, 6, { reading: 6521 });
    const before = structuredClone(sheet);
    found(sheet, { certificate, cell, gauge });
    expect(sheet).toEqual(before);
  });
});

describe('the scatter of the test sheets', () => {
  it('has one value for each point', () => {
    expect(ordinaryScatter).toHaveLength(3 * tenLevels.length);
  });
});
