// The table of `jackledger lookup --table` for people and as CSV. One look-up is in write-lookup-text.ts.

import { headComment } from '../contract/head-comment.ts';
import type { ReadingsAnswer } from '../contract/readings-table.ts';
import { writeBasis, writeWarningLines } from './write-lookup-text.ts';
import { significant, writeTable } from './write-table.ts';

type Row = ReadingsAnswer['rows'][number];

/** Answers the table with its units in the heads, why it begins and ends where it does, and what it rests on. */
export function writeReadingsText(answer: ReadingsAnswer, subject: string): string {
  const { pair, rows, unit, outcome } = answer;
  const of = pair === null ? subject : `${pair.tag} (jack ${pair.jack}, gauge ${pair.gauge})`;
  const title = outcome === 'given' ? `Readings to set with ${of}` : `No table of readings with ${of}`;
  const lines = [
    title,
    '',
    ...(rows.length === 0 ? [] : [writeRows(answer).trimEnd(), ...writeMarks(answer), '']),
    ...writeEnds(answer),
    ...(rows.length === 0 ? [] : [`U is of the force at the reading to set, 95 %, in ${unit}, for one setting.`]),
    ...writeLimit(answer),
    ...writeBasis(answer),
    '',
    ...writeWarningLines(answer.warnings),
    ...(answer.ledgerHead === null ? [] : [`Ledger head ${answer.ledgerHead}.`]),
    ...(outcome === 'withheld' ? ['A table is never released; ask for the one force that is needed.'] : []),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function writeRows({ rows, unit, readingUnit, step }: ReadingsAnswer): string {
  const right = (title: string) => ({ title, align: 'right' as const });
  const forceDecimals = decimalsOf(rows.map(({ force }) => force));
  const exact = Math.max(1, decimalsOf(rows.flatMap(({ readingToSet }) => readingToSet ?? [])) + 1);
  const reached = Math.min(9, Math.max(forceDecimals, 3 - Math.floor(Math.log10(step ?? 1)) - 1) + 1);
  const setDecimals = decimalsOf(rows.flatMap(({ readingToSet }) => readingToSet ?? []));
  const shown = (value: number | null, decimals: number): string => (value === null ? '-' : value.toFixed(decimals));
  return writeTable(
    [
      right(`force, ${unit}`),
      right(`set to, ${readingUnit}`),
      right(`force at that, ${unit}`),
      right(`error, ${unit}`),
      right('error, %'),
      right(`U, ${unit}`),
      right(`unrounded, ${readingUnit}`),
      { title: '', align: 'left' },
    ],
    rows.map((row) => [
      row.force.toFixed(forceDecimals),
      shown(row.readingToSet, setDecimals),
      shown(row.forceAtReadingToSet, reached),
      signed(row.roundingError, reached),
      signed(row.roundingErrorPercent, 2),
      row.expandedUncertainty === null ? '-' : significant(row.expandedUncertainty, 2),
      row.reading.toFixed(exact),
      row.warnings.map((code) => marks[code] ?? '?').join(''),
    ]),
  );
}

/** One sign for each warning of a row; what it means stands below the table. */
const marks: Readonly<Record<string, string>> = {
  'near-end-of-range': 'e',
  'outside-dial-window': 'w',
  'graduation-too-coarse': 'c',
  'gauge-class-coarse': 'g',
  'interval-not-finite': 'i',
};

function writeMarks({ rowWarnings }: ReadingsAnswer): readonly string[] {
  return rowWarnings.map(({ code, message }) => `  ${marks[code] ?? '?'}  ${message}`);
}

const endWords = {
  asked: 'as asked',
  'calibrated-range': 'the calibrated range ends there; nothing is extrapolated',
  'jack-rating': 'the rating of the jack',
  'gauge-span': 'the full scale of the gauge',
} as const;

function writeEnds({ lowest, highest, unit, rows }: ReadingsAnswer): readonly string[] {
  if (lowest === null || highest === null || rows.length === 0) return [];
  const write = (force: number): string => `${Number(force.toPrecision(6))} ${unit}`;
  return [
    `Begins at ${write(lowest.force)}: ${lowest.because === 'calibrated-range' ? 'the calibrated range begins there' : endWords[lowest.because]}.`,
    `Ends at ${write(highest.force)}: ${endWords[highest.because]}.`,
  ];
}

function writeLimit({ doNotExceed }: ReadingsAnswer): readonly string[] {
  if (doNotExceed === null) return [];
  const { reading, because } = doNotExceed;
  return [`Do not exceed ${reading.value} ${reading.unit} (${because.replaceAll('-', ' ')}).`];
}

/** Decimals that show every value of a column in full, six at most. */
function decimalsOf(values: readonly number[]): number {
  return Math.min(6, Math.max(0, ...values.map((value) => String(value).split('.')[1]?.length ?? 0)));
}

function signed(value: number | null, decimals: number): string {
  if (value === null) return '-';
  const text = value.toFixed(decimals);
  if (Number(text) === 0) return text.replace('-', '');
  return value > 0 ? `+${text}` : text;
}

const columns = [
  'force',
  'readingToSet',
  'forceAtReadingToSet',
  'roundingError',
  'roundingErrorPercent',
  'expandedUncertainty',
  'reading',
] as const satisfies readonly (keyof Row)[];

/**
 * Answers the rows as CSV, numbers unrounded, with the units in the brackets of the header. With a pair the last line is a
 * comment with the head of the ledger.
 */
export function writeReadingsCsv({ rows, unit, readingUnit, ledgerHead }: ReadingsAnswer): string {
  const heads: Readonly<Record<(typeof columns)[number], string>> = {
    force: `force (${unit})`,
    readingToSet: `reading to set (${readingUnit})`,
    forceAtReadingToSet: `force at reading to set (${unit})`,
    roundingError: `rounding error (${unit})`,
    roundingErrorPercent: 'rounding error (%)',
    expandedUncertainty: `expanded uncertainty (${unit})`,
    reading: `unrounded reading (${readingUnit})`,
  };
  const lines = rows.map((row) => [...columns.map((column) => row[column] ?? ''), row.warnings.join(' ')].join(','));
  const comment = ledgerHead === null ? [] : [headComment(ledgerHead)];
  return `${[[...columns.map((column) => heads[column]), 'warnings'].join(','), ...lines, ...comment].join('\n')}\n`;
}
