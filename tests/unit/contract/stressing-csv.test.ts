import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readStressingBody } from '../../../src/contract/stressing.ts';
import { writeStressingCsv } from '../../../src/contract/stressing-csv.ts';
import { preTensionedWindow } from '../../../src/domain/rules/elongation-window.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { body } from './stressing-body.ts';

const record = outcomeValue(readStressingBody(body, () => preTensionedWindow));
const rowsOf = (csv: string) => Papa.parse<string[]>(csv, { skipEmptyLines: true }).data;
const statementsOf = (csv: string) => rowsOf(csv).filter(([first]) => first?.startsWith('# '));
const pullsOf = (csv: string) => rowsOf(csv).slice(statementsOf(csv).length + 1);

describe('a stressing record as CSV', () => {
  it('has one pull a line below its header, the re-pull beside the first', () => {
    const rows = pullsOf(writeStressingCsv(record));
    const [header] = rowsOf(writeStressingCsv(record)).slice(statementsOf(writeStressingCsv(record)).length);
    expect(header?.slice(0, 4)).toEqual(['pull', 'positions', 'preload reading', 'preload reading unit']);
    expect(rows.map((row) => row.length)).toEqual(rows.map(() => header?.length));
    expect(rows.map((row) => [row[0], row[1], ...row.slice(13)])).toEqual([
      ['1', 'A1', 'within', '', '', ''],
      ['2', 'A2', 'out-of-window', 'slip', '', 'chuck 7'],
      ['3', 'A2', 'within', '', '2', ''],
    ]);
  });

  it('gives every number unrounded, in the unit it was entered in', () => {
    const [first, , third] = pullsOf(writeStressingCsv(record));
    expect(third?.slice(6, 8)).toEqual(['711.2', 'mm']);
    expect(Number(first?.[12])).toBe(record.pulls[0]?.agreementPercent);
    expect(Number(third?.[10])).toBe(record.pulls[2]?.elongationForce.value);
  });

  it('says above the pulls what the bed was pulled with and what it comes to', () => {
    const said = statementsOf(writeStressingCsv(record)).map(([line]) => line);
    expect(said).toContain('# calibration entry: 41');
    expect(said).toContain('# reel: R-7, Mill certificate 0815, heat H 4411');
    expect(said).toContain('# theoretical force: 32 kip');
    expect(said).toContain('# correction: temperature -0.4 kip, not-applied, R. Ortiz, under 25 F');
    expect(said).toContain('# out of window: 1');
    expect(said).toContain('# re-pulls: 1');
    expect(said).toContain('# still out of window: none');
    expect(said).toContain('# not pulled: B1');
  });

  it('keeps a negative number a number', () => {
    const low = {
      ...body,
      pulls: [{ ...body.pulls[0], elongation: '29 in' }],
    };
    const [row] = pullsOf(writeStressingCsv(outcomeValue(readStressingBody(low, () => preTensionedWindow))));
    expect(row?.[12]).toMatch(/^-1\.5/);
  });

  it.each(['=1+1', '=HYPERLINK("x")', '+1', '-1', '@sum', '\t=1', '\r=1'])(
    'makes a text inert that a spreadsheet would run: %j',
    (note) => {
      const [pull] = record.pulls;
      if (pull === undefined) throw new Error('The record has no pull.');
      const [row] = pullsOf(writeStressingCsv({ ...record, pulls: [{ ...pull, note }] }));
      expect(row?.at(-1)).toBe(`'${note}`);
    },
  );

  it('holds commas, quotes and line breaks of a text in one cell', () => {
    const [pull] = record.pulls;
    if (pull === undefined) throw new Error('The record has no pull.');
    const note = 'said "slip",\nthen pulled again';
    const [row] = pullsOf(writeStressingCsv({ ...record, pulls: [{ ...pull, note }] }));
    expect(row?.at(-1)).toBe(note);
  });
});
