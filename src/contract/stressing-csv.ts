// A stressing record as CSV: what the bed was pulled with in lines "# ...: ...", then one pull a line.

import Papa from 'papaparse';
import type { Pull } from '../domain/stressing/pull.ts';
import type { StressingRecord } from '../domain/stressing/stressing-record.ts';
import { summariseBed } from '../domain/stressing/summarise-bed.ts';
import type { Quantity } from '../domain/units/quantity.ts';
import { writeQuantityInFull } from '../domain/units/write-quantity.ts';
import { formulaStart } from './run-sheet-csv.ts';

type Cell = string | number;

/** A quantity takes two cells, so that a spreadsheet can reckon with its number. */
const measured = (name: string): readonly string[] => [name, `${name} unit`];
const cells = ({ value, unit }: Quantity): readonly Cell[] => [value, unit];

const header: readonly string[] = [
  'pull',
  'positions',
  ...measured('preload reading'),
  ...measured('final reading'),
  ...measured('elongation'),
  ...measured('gauge force'),
  ...measured('elongation force'),
  'agreement (%)',
  'outcome',
  'reason',
  're-pull of',
  'note',
];

const rowOf = (pull: Pull): readonly Cell[] => [
  pull.number,
  pull.positions.join(' '),
  ...cells(pull.preloadReading),
  ...cells(pull.finalReading),
  ...cells(pull.elongation),
  ...cells(pull.gaugeForce),
  ...cells(pull.elongationForce),
  pull.agreementPercent,
  pull.outcome,
  pull.reason ?? '',
  pull.repullOf ?? '',
  pull.note ?? '',
];

function statementsOf(record: StressingRecord): readonly string[] {
  const { reel, pattern, window, corrections } = record;
  const summary = summariseBed(pattern, record.pulls);
  return [
    `bed: ${record.bed}`,
    `day: ${record.on}`,
    `pair: ${record.pair}`,
    `calibration entry: ${record.calibrationEntry}`,
    `strand: ${record.strand}`,
    ...(reel === null ? [] : [`reel: ${reel.id}, ${reel.certificate}${reel.heat ? `, heat ${reel.heat}` : ''}`]),
    `area: ${writeQuantityInFull(record.area)}`,
    `modulus: ${writeQuantityInFull(record.modulus)}`,
    `length: ${writeQuantityInFull(record.length)}`,
    `strands pulled together: ${record.strandsPulled}`,
    `force before corrections: ${writeQuantityInFull(record.force)}`,
    `theoretical force: ${writeQuantityInFull(record.theoreticalForce)}`,
    `preload: ${writeQuantityInFull(record.preload)}`,
    `window: ${window.percent} % (${window.source})`,
    `pattern: ${pattern.name}`,
    ...corrections.map(
      ({ kind, effect, engineer, decision, note }) =>
        `correction: ${kind} ${writeQuantityInFull(effect)}, ${decision}, ${engineer}${note ? `, ${note}` : ''}`,
    ),
    ...(summary === null
      ? []
      : [
          `mean of gauge over elongation force: ${summary.meanRatio}`,
          `its standard deviation: ${summary.ratioStandardDeviation ?? 'one pull'}`,
          `out of window: ${summary.outOfWindow}`,
          `re-pulls: ${summary.repulls}`,
          `still out of window: ${summary.stillOutOfWindow.join(' ') || 'none'}`,
          `not pulled: ${summary.notPulled.join(' ') || 'none'}`,
        ]),
  ];
}

/** Writes a record; numbers unrounded, quantities in the units they were entered in, texts a spreadsheet would run made inert. */
export function writeStressingCsv(record: StressingRecord): string {
  const rows: readonly (readonly Cell[])[] = [
    ...statementsOf(record).map((statement) => [`# ${statement}`]),
    header,
    ...record.pulls.map(rowOf),
  ];
  return `${Papa.unparse(rows as Cell[][], { newline: '\n', escapeFormulae: formulaStart })}\n`;
}
