import { describe, expect, it } from 'vitest';
import { readRunSheet } from '../../../src/contract/read-run-sheet.ts';
import { csvCell, readMeasured, writeRunSheetCsv } from '../../../src/contract/run-sheet-csv.ts';
import type { RunSheet } from '../../../src/domain/calibration/run-sheet.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { runSheet } from '../../plant-at-work.ts';

const header = 'run,direction,force (kip),reading (psi)\n';
const two = `${header}1,up,5,800\n1,up,10,1600\n`;
const twoPoints: RunSheet = {
  units: { force: 'kip', reading: 'psi' },
  cycles: [
    {
      points: [
        { direction: 'up', force: 5, reading: 800 },
        { direction: 'up', force: 10, reading: 1600 },
      ],
    },
  ],
};

describe('a run sheet as CSV', () => {
  it.each([
    ['as it is described', two],
    ['with a byte order mark', `\uFEFF${two}`],
    ['with the line ends of Windows', two.replaceAll('\n', '\r\n')],
    ['with the line ends of an old Macintosh', two.replaceAll('\n', '\r')],
    ['without a line end at its end', two.trimEnd()],
    ['with blank lines and rows of empty cells', `\n\n${header}\n1,up,5,800\n,,,\n \n1,up,10,1600\n\n`],
    ['with every cell in quotes', two.replaceAll(/[^,\n]+/g, '"$&"')],
    ['with semicolons', two.replaceAll(',', ';')],
    ['with tabs, as a spreadsheet pastes', two.replaceAll(',', '\t')],
    ['with spaces around the cells', two.replaceAll(',', ' , ')],
    ['with capitals', 'RUN,Direction,FORCE (Kip),Reading (PSI)\n1,UP,5,800\n1,Up,10,1600\n'],
    ['with units in other spellings', 'run,direction,force (kips),reading (lbf/in²)\n1,up,5,800\n1,up,10,1600\n'],
    ['with the columns in another order', 'reading (psi),force (kip),direction,run\n800,5,up,1\n1600,10,up,1\n'],
    ['with a column of remarks', 'run,direction,force (kip),reading (psi),remark\n1,up,5,800,\n1,up,10,1600,steady\n'],
    ['with numbers in groups of thousands', `${header}1,up,5.,800\n1,up,1e1,"1,600.0"\n`],
    ['with a comment between the lines', `${header}1,up,5,800\n# pump stopped here\n1,up,10,1600\n`],
  ])('is read %s', (_how, text) => {
    expect(readRunSheet(text)).toEqual({ ok: true, value: twoPoints });
  });

  it('takes what stands before the header, in any order and capitals, as a spreadsheet saves it too', () => {
    const stated = { ...twoPoints, pair: 'P-1', calibratedOn: '2026-03-02', loadCell: 'LC-1', set: 'force' };
    const plain = '# set: force\n#Load Cell:LC-1\n# Calibrated on :  2026-03-02  \n# pair: P-1\n';
    expect(readRunSheet(plain + two)).toEqual({ ok: true, value: stated });
    expect(readRunSheet(plain.replaceAll('\n', ',,,\n') + two)).toEqual({ ok: true, value: stated });
    expect(readRunSheet(plain.replaceAll('\n', ';;;\n') + two.replaceAll(',', ';'))).toEqual({
      ok: true,
      value: stated,
    });
  });

  it('finds semicolons however many lines stand before the header', () => {
    const comments = Array.from({ length: 20 }, (_, index) => `# remark ${index}: nothing, really\n`).join('');
    expect(readRunSheet(comments + two.replaceAll(',', ';'))).toEqual({ ok: true, value: twoPoints });
  });

  it('keeps the cycles apart by the name of the run, in the order they come', () => {
    const sheet = outcomeValue(readRunSheet(`${header}B,up,5,1\nA,up,6,2\nB,down,7,3\n`));
    expect(sheet.cycles.map(({ points }) => points.map(({ force }) => force))).toEqual([[5, 7], [6]]);
  });

  it('keeps zero, and readings that are no whole number, as typed', () => {
    const sheet = outcomeValue(readRunSheet(`${header}1,up,0,0\n1,up,0.1,1e-3\n`));
    expect(sheet.cycles[0]?.points.map(({ force, reading }) => [force, reading])).toEqual([
      [0, 0],
      [0.1, 0.001],
    ]);
  });

  it.each([
    ['', 'sheet-not-readable', undefined],
    [' \n\n', 'sheet-not-readable', undefined],
    [header, 'sheet-not-readable', undefined],
    ['<html></html>', 'sheet-not-readable', 'line 1'],
    ['\u0089PNG\r\n\u001a\n', 'sheet-not-readable', 'line 1'],
    ['[1, 2]', 'sheet-not-readable', 'line 1'],
    ['run,force (kip),reading (psi)\n1,5,800\n', 'sheet-not-readable', 'line 1'],
    ['run,direction,force,reading\n1,up,5,800\n', 'unit-missing', 'line 1, column force'],
    ['run,direction,force (ton),reading (psi)\n1,up,5,800\n', 'unit-ambiguous', 'line 1, column force'],
    ['run,direction,force (kip),reading (kip)\n1,up,5,800\n', 'unit-unknown', 'line 1, column reading'],
    ['run,direction,force (__proto__),reading (psi)\n1,up,5,8\n', 'unit-unknown', 'line 1, column force'],
    [`${header}1,sideways,5,800\n`, 'field-invalid', 'line 2, column direction'],
    [`${header}1,constructor,5,800\n`, 'field-invalid', 'line 2, column direction'],
    [`${header}1,,5,800\n`, 'field-invalid', 'line 2, column direction'],
    [`${header},up,5,800\n`, 'field-missing', 'line 2, column run'],
    [`${header}1,up,5,800\n1,up,five,1600\n`, 'not-a-number', 'line 3, column force'],
    [`${header}1,up,5\n`, 'not-a-number', 'line 2, column reading'],
    [`${header}1,up,5,NaN\n`, 'not-a-number', 'line 2, column reading'],
    [`${header}1,up,5 kip,800\n`, 'not-a-number', 'line 2, column force'],
    [`${header}1,up,-5,800\n`, 'number-out-of-range', 'line 2, column force'],
    [`${header}1,up,\u22125,800\n`, 'number-out-of-range', 'line 2, column force'],
    [`${header}1,up,1e400,800\n`, 'number-out-of-range', 'line 2, column force'],
    [`${header}1,up,"5,5",800\n`, 'ambiguous-number', 'line 2, column force'],
    [`${header}1,up,"31,000",800\n`, 'ambiguous-number', 'line 2, column force'],
    [`${two.replaceAll(',', ';')}1;up;5,5;800\n`, 'ambiguous-number', 'line 4, column force'],
    [`# calibrated on: 2026-02-30\n${two}`, 'field-invalid', 'calibratedOn'],
    [`# set: torque\n${two}`, 'field-invalid', 'set'],
    [`# pair: =cmd\n${two}`, 'field-invalid', 'pair'],
  ])('is refused with what and where: %j is %s at %s', (text, code, where) => {
    const read = readRunSheet(text);
    expect(read).toMatchObject({ ok: false, problem: { code, ...(where === undefined ? {} : { where }) } });
  });

  it('is refused where a comma within a number splits it into two cells, which would read another force', () => {
    for (const row of ['1,up,5,5,800', '1,up,31,000,4500', '1,up,5,800,5']) {
      expect(readRunSheet(`${header}${row}\n`)).toMatchObject({
        ok: false,
        problem: { code: 'ambiguous-number', where: 'line 2', given: row },
      });
    }
  });

  it('is refused where two columns could be the force or the reading, since one of them would be lost', () => {
    for (const names of ['force (kip),force (kN),reading (psi)', 'force (kip),reading 1 (psi),reading 2 (psi)']) {
      const read = readRunSheet(`run,direction,${names}\n1,up,5,22,800\n`);
      expect(read).toMatchObject({ ok: false, problem: { code: 'sheet-not-readable', where: 'line 1' } });
      if (!read.ok) expect(read.problem.message).toMatch(/two|several/);
    }
  });

  it('is refused where a quote is never closed, in words about the quote', () => {
    const read = readRunSheet(`# note: first, "second\n${two}`.replace(', "', ',"'));
    expect(read).toMatchObject({ ok: false, problem: { code: 'sheet-not-readable' } });
    if (!read.ok) expect(read.problem.message).toContain('quote');
  });

  it('is refused by its size before it is read, and by its count of points', () => {
    expect(readRunSheet('x'.repeat(1_000_001))).toMatchObject({ ok: false, problem: { code: 'body-too-large' } });
    expect(readRunSheet(header + '1,up,5,800\n'.repeat(501))).toMatchObject({
      ok: false,
      problem: { code: 'field-invalid', where: 'cycles[0].points' },
    });
  });

  it('is refused without long work where it is just under the largest size', () => {
    const oneRun = header + '1,up,5,800\n'.repeat(85_000);
    expect(readRunSheet(oneRun)).toMatchObject({ ok: false, problem: { where: 'cycles[0].points' } });
    const manyRuns = header + Array.from({ length: 60_000 }, (_, run) => `${run},up,5,800\n`).join('');
    expect(readRunSheet(manyRuns)).toMatchObject({ ok: false, problem: { where: 'cycles' } });
    const commas = `${header}1,up,"${'1,'.repeat(450_000)}x",800\n`;
    expect(readRunSheet(commas)).toMatchObject({ ok: false, problem: { code: 'not-a-number' } });
  }, 20_000);
});

describe('a measured value', () => {
  it('is a finite number of zero or more', () => {
    expect(readMeasured('0', 'here')).toEqual({ ok: true, value: 0 });
    expect(readMeasured(' 12.50 ', 'here')).toEqual({ ok: true, value: 12.5 });
    expect(readMeasured('-0.1', 'here')).toMatchObject({
      ok: false,
      problem: { code: 'number-out-of-range', where: 'here', given: '-0.1' },
    });
    expect(readMeasured('', 'here')).toMatchObject({ ok: false, problem: { code: 'not-a-number', where: 'here' } });
  });
});

describe('a run sheet written as CSV', () => {
  it('is the described header, the facts before it, and a line a point', () => {
    const sheet: RunSheet = { ...twoPoints, pair: 'P-1', calibratedOn: '2026-03-02', loadCell: 'LC-1', set: 'reading' };
    expect(writeRunSheetCsv(sheet)).toBe(
      `# pair: P-1\n# calibrated on: 2026-03-02\n# load cell: LC-1\n# set: reading\n${two}`,
    );
  });

  it.each([
    'plain',
    'with, commas, and "quotes"',
    'ends,"here',
    '"all of it"',
    'semi;colons; and\ttab',
    '# hash: colon',
    '=1+1',
    'ends with a comma,',
  ])('reads back with the same note: %j', (note) => {
    const sheet = { ...runSheet(), note };
    const back = outcomeValue(readRunSheet(writeRunSheetCsv(sheet)));
    expect(back).toEqual({ ...sheet, note: note.replaceAll(/\s+/g, ' ').replace(/,+$/, '') });
  });

  it('puts a note of several lines on one, so that it cannot pass for points', () => {
    const sheet = { ...runSheet(), note: 'first line\n1,up,99,9999\r\n# pair: P-9' };
    const back = outcomeValue(readRunSheet(writeRunSheetCsv(sheet)));
    expect(back).toEqual({ ...sheet, note: 'first line 1,up,99,9999 # pair: P-9' });
  });
});

describe('a cell of CSV output', () => {
  it.each([
    ['=1+1', "'=1+1"],
    ['=HYPERLINK("x")', `"'=HYPERLINK(""x"")"`],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@sum', "'@sum"],
    ['\t=1', "'\t=1"],
    ['\r=1', `"'\r=1"`],
  ])('is made inert where a spreadsheet would run it: %j', (value, written) => {
    expect(csvCell(value)).toBe(written);
  });

  it.each([
    [null, ''],
    ['', ''],
    [-5, '-5'],
    [0, '0'],
    ['P-1', 'P-1'],
    ['a,b', '"a,b"'],
    ['a"b', '"a""b"'],
    ['a\nb', '"a\nb"'],
  ])('is otherwise what it says, quoted where it must be: %j', (value, written) => {
    expect(csvCell(value)).toBe(written);
  });
});
