// A run sheet as CSV: header `run,direction,force (kip),reading (psi)`, one point a line, and before the header
// optional lines `# pair: ...` for what a plain table cannot hold. As JSON it is in run-sheet-json.ts.

import Papa from 'papaparse';
import type { RunSheet, RunSheetCycle, RunSheetPoint } from '../domain/calibration/run-sheet.ts';
import { fail, type Outcome, type Problem, succeed } from '../domain/problem.ts';
import { force } from '../domain/units/force.ts';
import { parseNumber } from '../domain/units/number.ts';
import { pressure } from '../domain/units/pressure.ts';
import { parseUnit } from '../domain/units/quantity.ts';
import { readRunSheetBody } from './run-sheet-json.ts';

const header = 'run,direction,force (kip),reading (psi)';

/** Words of the lines before the header, and the field each fills. */
const statements = {
  pair: 'pair',
  'calibrated on': 'calibratedOn',
  'load cell': 'loadCell',
  set: 'set',
  loading: 'loading',
  condition: 'condition',
  'first use on': 'firstUseOn',
  note: 'note',
} as const satisfies Record<string, keyof RunSheet>;

const directions: Readonly<Record<string, 'up' | 'down'>> = {
  up: 'up',
  down: 'down',
};

interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Answers the run sheet a CSV text holds. Problems name the line: `sheet-not-readable`, those of numbers and units. */
export function readRunSheetCsv(text: string): Outcome<RunSheet> {
  const split = splitStatements(text.replace(/^\uFEFF/, ''));
  if (!split.ok) return split;
  const { stated, lines } = split.value;
  const [first, ...rest] = lines;
  if (first === undefined) return notReadable('The file is empty.');
  const columns = readHeader(first);
  if (!columns.ok) return columns;
  const cycles = new Map<string, RunSheetPoint[]>();
  for (const line of rest) {
    const point = readPoint(line, columns.value);
    if (!point.ok) return point;
    const run = line.cells[columns.value.run]?.trim() ?? '';
    const points = cycles.get(run);
    if (points === undefined) cycles.set(run, [point.value]);
    else points.push(point.value);
  }
  if (cycles.size === 0) return notReadable('There is no point below the header.');
  return readRunSheetBody({
    ...stated,
    units: {
      force: columns.value.forceUnit,
      reading: columns.value.readingUnit,
    },
    cycles: [...cycles.values()].map((points) => ({ points })),
  });
}

function notReadable(message: string, facts: Omit<Problem, 'code' | 'message'> = {}): Outcome<never> {
  return fail('sheet-not-readable', message, {
    needed: `a header such as ${header}, then one point a line`,
    ...facts,
  });
}

/** What separates the cells: the first of comma, semicolon and tab that makes at least four of the header. */
function delimiterOf(text: string): string {
  const headerLine = text.split(/[\r\n]+/, 1000).find((line) => line.trim() !== '' && !/^[\s"]*#/.test(line)) ?? '';
  return [',', ';', '\t'].find((delimiter) => headerLine.split(delimiter).length >= 4) ?? ',';
}

function splitStatements(text: string): Outcome<{
  readonly stated: Readonly<Record<string, string>>;
  readonly lines: readonly CsvLine[];
}> {
  const stated: Record<string, string> = {};
  const lines: CsvLine[] = [];
  const delimiter = delimiterOf(text);
  const { data: rows, errors } = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false });
  const badQuote = errors.find(({ type }) => type === 'Quotes');
  if (badQuote !== undefined) {
    const line = (badQuote.row ?? 0) + 1;
    return notReadable(`Line ${line} has a cell whose quote is not closed.`, { where: `line ${line}` });
  }
  for (const [index, cells] of rows.entries()) {
    const joined = cells.join(delimiter).trim();
    if (joined.startsWith('#')) {
      if (lines.length > 0 && cells.length >= 4) {
        return notReadable(`Line ${index + 1} begins with "#" and has the cells of a point; it would be lost.`, {
          where: `line ${index + 1}`,
          needed: 'run numbers without "#"',
          given: joined.slice(0, 120),
        });
      }
      const statement = /^#\s*([^:]+?)\s*:\s*(.*)$/s.exec(joined.replace(/[\s,;]+$/, ''));
      const key = statement?.[1]?.toLowerCase() ?? '';
      if (Object.hasOwn(statements, key) && statement?.[2]) {
        const field = statements[key as keyof typeof statements];
        if (stated[field] !== undefined) {
          return notReadable(`Line ${index + 1} says "${key}" a second time.`, { where: `line ${index + 1}` });
        }
        stated[field] = statement[2];
      }
    } else if (cells.some((cell) => cell.trim() !== '')) {
      lines.push({ line: index + 1, cells });
    }
  }
  return succeed({ stated, lines });
}

interface Columns {
  readonly run: number;
  readonly direction: number;
  readonly force: number;
  readonly reading: number;
  readonly forceUnit: string;
  readonly readingUnit: string;
  /** How many cells the header has. */
  readonly count: number;
}

function readHeader({ line, cells }: CsvLine): Outcome<Columns> {
  const names = cells.map((cell) => cell.trim().toLowerCase());
  const run = names.indexOf('run');
  const direction = names.indexOf('direction');
  const forceColumn = names.findIndex((name) => /^force\b/.test(name));
  const readingColumn = names.findIndex((name) => /^reading\b/.test(name));
  for (const wanted of [/^run$/, /^direction$/, /^force\b/, /^reading\b/]) {
    const [column, another] = names.filter((name) => wanted.test(name));
    if (column !== undefined && another !== undefined) {
      return notReadable(`Line ${line} has several columns "${column}", "${another}"; one of them would be lost.`, {
        where: `line ${line}`,
        needed: 'one column each of run, direction, force and reading; one point a line',
        given: cells.join(',').slice(0, 120),
      });
    }
  }
  if (run < 0 || direction < 0 || forceColumn < 0 || readingColumn < 0) {
    return notReadable(`Line ${line} is not the header of a run sheet.`, {
      where: `line ${line}`,
      given: cells.join(',').slice(0, 120),
    });
  }
  const unitIn = (column: number) => /^[^()]*\(([^()]*)\)\s*$/.exec(cells[column] ?? '')?.[1] ?? '';
  const forceUnit = parseUnit(force, unitIn(forceColumn), `line ${line}, column force`);
  if (!forceUnit.ok) return forceUnit;
  const readingUnit = parseUnit(pressure, unitIn(readingColumn), `line ${line}, column reading`);
  if (!readingUnit.ok) return readingUnit;
  return succeed({
    run,
    direction,
    force: forceColumn,
    reading: readingColumn,
    forceUnit: forceUnit.value,
    readingUnit: readingUnit.value,
    count: cells.length,
  });
}

function readPoint({ line, cells }: CsvLine, columns: Columns): Outcome<RunSheetPoint> {
  if (cells.slice(columns.count).some((cell) => cell.trim() !== '')) {
    return fail(
      'ambiguous-number',
      `Line ${line} has more cells than the header; a comma within a number makes two cells of it.`,
      {
        where: `line ${line}`,
        needed: `${columns.count} cells, each number with a decimal point and no comma`,
        given: cells.join(',').slice(0, 120),
      },
    );
  }
  const word = cells[columns.direction]?.trim().toLowerCase() ?? '';
  const direction = Object.hasOwn(directions, word) ? directions[word] : undefined;
  if (direction === undefined) {
    return fail('field-invalid', `Line ${line}: the direction is "${word}"; it must be up or down.`, {
      where: `line ${line}, column direction`,
      needed: 'up or down',
      given: word,
    });
  }
  if ((cells[columns.run]?.trim() ?? '') === '') {
    return fail('field-missing', `Line ${line}: the number of the run is missing.`, {
      where: `line ${line}, column run`,
      needed: 'the number of the run, 1, 2, 3 ...',
      given: '',
    });
  }
  const forceValue = readMeasured(cells[columns.force] ?? '', `line ${line}, column force`);
  if (!forceValue.ok) return forceValue;
  const readingValue = readMeasured(cells[columns.reading] ?? '', `line ${line}, column reading`);
  if (!readingValue.ok) return readingValue;
  return succeed({
    direction,
    force: forceValue.value,
    reading: readingValue.value,
  });
}

/** Answers a measured value of a sheet: a finite number of zero or more, as typed. */
export function readMeasured(text: string, where: string): Outcome<number> {
  const number = parseNumber(text, where);
  if (!number.ok) return number;
  if (number.value < 0) {
    return fail('number-out-of-range', `${where}: "${text}" is below zero.`, {
      where,
      needed: 'zero or more',
      given: text,
    });
  }
  return number;
}

/** How a text begins that a spreadsheet would run as a formula. */
export const formulaStart = /^[=+\-@\t\r]/;

/** One CSV cell; a text that a spreadsheet would run as a formula is made inert with a leading apostrophe. */
export function csvCell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const inert = formulaStart.test(value) ? `'${value}` : value;
  return /[",\n\r]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}

/**
 * Writes a run sheet so that reading it back gives the same sheet, but for ram extension, temperature, cycles without
 * points, and the line breaks, repeated spaces and commas at the end of a note. As JSON everything is kept.
 */
export function writeRunSheetCsv(sheet: RunSheet): string {
  const stated = Object.entries(statements).flatMap(([words, field]) => {
    const value = sheet[field];
    return value === undefined ? [] : [csvCell(`# ${words}: ${String(value).replaceAll(/\s+/g, ' ')}`)];
  });
  const columns = `run,direction,force (${sheet.units.force}),reading (${sheet.units.reading})`;
  const rows = sheet.cycles.flatMap((cycle: RunSheetCycle, index) =>
    cycle.points.map((point) => [index + 1, point.direction, point.force, point.reading].join(',')),
  );
  return `${[...stated, columns, ...rows].join('\n')}\n`;
}
