// Run sheets as CSV with cells spoilt here and there: read to exactly the numbers in the cells, or refused by name.

import fc from 'fast-check';
import { readRunSheet } from '../../src/contract/read-run-sheet.ts';
import { writeRunSheetCsv } from '../../src/contract/run-sheet-csv.ts';
import { hostileValues } from './hostile-values.ts';

export interface CsvFigures {
  sheets: number;
  accepted: number;
  refused: number;
  readonly faults: string[];
}

const hostileCells = [
  ...hostileValues.filter((value) => typeof value === 'string'),
  '3l.0',
  '31.0 kip',
  '1,5',
  '31,000',
  '31,000.5',
  '1.234,5',
  '+31',
  '.5',
  '5.',
  '1e3',
  '"',
  'a"b',
  '31\n32',
  '\t31\t',
  '−31',
  'up',
] as const;

const number = fc.oneof(
  fc.integer({ min: 0, max: 12_000 }).map(String),
  fc.integer({ min: 0, max: 99_999 }).map((tenths) => (tenths / 10).toFixed(1)),
);

const row = fc.tuple(fc.constantFrom('1', '2', '3'), fc.constantFrom('up', 'up', 'up', 'down'), number, number);

const spoilt = fc.record({
  header: fc.constantFrom(
    'run,direction,force (kip),reading (psi)',
    'run,direction,force (kip),reading (psi)',
    'run,direction,reading (bar),force (kN)',
    'run,direction,force,reading',
    'run,direction,force (ton),reading (psi)',
  ),
  rows: fc.array(row, { maxLength: 12 }),
  spoils: fc.array(
    fc.record({
      row: fc.nat(11),
      column: fc.nat(3),
      cell: fc.constantFrom(...hostileCells),
      how: fc.constantFrom('replace', 'replace', 'drop', 'double'),
    }),
    { maxLength: 2 },
  ),
  ending: fc.constantFrom('\n', '\r\n'),
});

const quoted = (cell: string): string => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** The number a cell says, read by nothing of the program's; null where it says none, or more than one. */
function numberOf(cell: string): number | null {
  const text = cell.trim();
  const grouped = /^\d{1,3}(,\d{3})+\.\d+$/.test(text) ? text.replaceAll(',', '') : text;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(grouped) ? Number(grouped) : null;
}

/** Reads so many sheets. */
export function fuzzRunSheetCsv(sheets: number, seed: number): CsvFigures {
  const figures: CsvFigures = { sheets: 0, accepted: 0, refused: 0, faults: [] };
  for (const { header, rows, spoils, ending } of fc.sample(spoilt, { numRuns: sheets, seed })) {
    const table: string[][] = rows.map((cells) => [...cells]);
    for (const { row: at, column, cell, how } of spoils) {
      const cells = table[at % Math.max(1, table.length)];
      if (cells === undefined) continue;
      if (how === 'replace') cells[column % cells.length] = cell;
      else if (how === 'drop') cells.splice(column, 1);
      else cells.splice(column, 0, cells[column] ?? '');
      if (cells.length === 0) cells.push('');
    }
    const text = [header, ...table.map((cells) => cells.map(quoted).join(','))].join(ending);
    figures.sheets += 1;
    const note = (what: string) => figures.faults.push(`${what}: ${JSON.stringify(text)}`);
    try {
      const read = readRunSheet(text);
      if (!read.ok) {
        figures.refused += 1;
        if (!/^[a-z-]+$/.test(read.problem.code)) note('no code');
        continue;
      }
      figures.accepted += 1;
      const forceFirst = header.indexOf('force') < header.indexOf('reading');
      const runs = new Map<string, string[][]>();
      for (const cells of table.filter((each) => each.some((cell) => cell.trim() !== ''))) {
        const run = cells[0]?.trim() ?? '';
        runs.set(run, [...(runs.get(run) ?? []), cells]);
      }
      const expected = [...runs.values()].map((cells) =>
        cells.map(([, direction = '', third = '', fourth = '']) => ({
          direction: direction.trim().toLowerCase(),
          force: numberOf(forceFirst ? third : fourth),
          reading: numberOf(forceFirst ? fourth : third),
        })),
      );
      const found = read.value.cycles.map(({ points }) =>
        points.map(({ direction, force, reading }) => ({ direction, force, reading })),
      );
      if (JSON.stringify(found) !== JSON.stringify(expected)) note(`read as ${JSON.stringify(found)}`);
      const again = readRunSheet(writeRunSheetCsv(read.value));
      if (!again.ok || JSON.stringify(again.value) !== JSON.stringify(read.value)) note('not the same when written');
    } catch (error) {
      note(`thrown ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  return figures;
}
