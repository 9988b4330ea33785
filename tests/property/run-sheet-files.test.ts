// A run sheet written to a file and read back is the same run sheet.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRunSheet } from '../../src/contract/read-run-sheet.ts';
import { writeRunSheetCsv } from '../../src/contract/run-sheet-csv.ts';
import { runSheetFormat } from '../../src/contract/run-sheet-json.ts';
import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import { problemCodes } from '../../src/domain/problem.ts';
import { type ForceUnit, force } from '../../src/domain/units/force.ts';
import { type LengthUnit, length } from '../../src/domain/units/length.ts';
import { type PressureUnit, pressure } from '../../src/domain/units/pressure.ts';

const measured = fc.double({ min: 0, max: 1e12, noNaN: true }).map((value) => (value === 0 ? 0 : value));
const point = fc.record({ direction: fc.constantFrom('up', 'down'), force: measured, reading: measured });
const tag = fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._/-]{0,10}$/);
const optional = {
  pair: tag,
  loadCell: tag,
  calibratedOn: fc.constantFrom('2026-03-02', '2024-02-29', '2025-12-31'),
  set: fc.constantFrom('force', 'reading'),
  loading: fc.constantFrom('active', 'passive'),
  note: fc.string({ minLength: 1, maxLength: 60 }),
} as const;
const units = fc.record({
  force: fc.constantFrom(...(Object.keys(force.factors) as ForceUnit[])),
  reading: fc.constantFrom(...(Object.keys(pressure.factors) as PressureUnit[])),
});
const points = fc.array(point, { minLength: 1, maxLength: 12 });
const ramExtension = fc.record({
  value: measured,
  unit: fc.constantFrom(...(Object.keys(length.factors) as LengthUnit[])),
});

const requiredKeys = ['units', 'cycles'] as const;
const anySheet = fc.record(
  {
    ...optional,
    temperatureCelsius: fc.integer({ min: -60, max: 80 }),
    units,
    cycles: fc.array(fc.record({ points, ramExtension }, { requiredKeys: ['points'] }), { minLength: 1, maxLength: 4 }),
  },
  { requiredKeys: [...requiredKeys] },
);
/** What CSV keeps: no ram extension, no temperature. */
const plainSheet = fc.record(
  { ...optional, units, cycles: fc.array(fc.record({ points }), { minLength: 1, maxLength: 4 }) },
  { requiredKeys: [...requiredKeys] },
);
const separator = fc.constantFrom(',', ';', '\t');

/** A note as one line of CSV keeps it; an empty one is none. */
function withPlainNote(sheet: RunSheet): RunSheet {
  const { note, ...rest } = sheet;
  const kept =
    note
      ?.replaceAll(/\s+/g, ' ')
      .trim()
      .replace(/[\s,;]+$/, '') ?? '';
  return kept === '' ? rest : { ...rest, note: kept };
}

describe('a run sheet in a file', () => {
  it('reads back from JSON as it was', () => {
    fc.assert(
      fc.property(anySheet, (sheet) => {
        expect(readRunSheet(JSON.stringify({ format: runSheetFormat, ...sheet }, null, 2))).toEqual({
          ok: true,
          value: sheet,
        });
      }),
    );
  });

  it('reads back from CSV as it was, whatever the line ends', () => {
    fc.assert(
      fc.property(plainSheet, fc.constantFrom('\n', '\r\n'), (sheet, lineEnd) => {
        const text = writeRunSheetCsv(sheet as RunSheet).replaceAll('\n', lineEnd);
        expect(readRunSheet(text)).toEqual({ ok: true, value: withPlainNote(sheet as RunSheet) });
      }),
    );
  });

  it('reads back from a table with any separator and with its columns in any order', () => {
    const order = fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(plainSheet, separator, order, ({ units: used, cycles }, delimiter, places) => {
        const head = ['run', 'direction', `force (${used.force})`, `reading (${used.reading})`];
        const rows = cycles.flatMap((cycle, run) =>
          cycle.points.map((each) => [run + 1, each.direction, each.force, each.reading]),
        );
        const text = [head, ...rows].map((row) => places.map((place) => row[place]).join(delimiter)).join('\n');
        expect(readRunSheet(text)).toEqual({ ok: true, value: { units: used, cycles } });
      }),
    );
  });

  it('is a sheet or a problem of the closed list, whatever the file holds', () => {
    const header = fc.constantFrom(
      'run,direction,force (kip),reading (psi)\n',
      'run;direction;force (kN);reading (bar)\n',
      '',
    );
    const rows = fc.string({
      unit: fc.constantFrom(...'0123456789.,;"#\n\r updown{}[]:-=e\u2212\uFEFF'),
      maxLength: 80,
    });
    fc.assert(
      fc.property(header, fc.oneof(rows, fc.string()), (start, rest) => {
        const read = readRunSheet(start + rest);
        if (!read.ok) expect(problemCodes).toContain(read.problem.code);
        else
          for (const { points: found } of read.value.cycles) {
            expect(
              found.every((each) => each.force >= 0 && each.reading >= 0 && each.force + each.reading < 3e12),
            ).toBe(true);
          }
      }),
      { numRuns: 500 },
    );
  });
});
