import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { dueAnswer } from '../../src/contract/due.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { type ReadingsAnswer, readingsAnswer } from '../../src/contract/readings-table.ts';
import { expectDigits } from '../expect-digits.ts';
import { type CommandResult, runCommand, temporaryFolder } from './run-command.ts';

let folder: string;
let environment: Record<string, string>;
let sheet: string;
let ready: string;
beforeAll(async () => {
  folder = temporaryFolder();
  environment = { JACKLEDGER_SAMPLE_LEDGER: join(folder, 'sample.ledger') };
  // Asking to write lays the sample plant out in its file once, so that each command after it only reads.
  const laidOut = await run(
    'lookup',
    'P-999',
    '--force',
    '1 kip',
    '--release-by',
    'F. Foreman',
    '--reason',
    'laying out',
  );
  if (!existsSync(environment.JACKLEDGER_SAMPLE_LEDGER ?? '')) throw new Error(`No sample plant: ${laidOut.errors}`);
  sheet = join(folder, 'sheet.csv');
  // Reading = 145 psi per kip + the number of the cycle; the mean line is 145 F + 2.
  const points = [1, 2, 3].flatMap((run) =>
    [5, 10, 15, 20, 25, 30].map((force) => `${run},up,${force},${145 * force + run}`),
  );
  writeFileSync(sheet, `run,direction,force (kip),reading (psi)\n${points.join('\n')}\n`);
  ready = await pairWith('ready');
});

const run = (...args: string[]): Promise<CommandResult> => runCommand(args, environment);
const table = (subject: string, ...args: string[]): Promise<CommandResult> =>
  run('lookup', subject, '--table', ...args);

async function pairWith(standing: string): Promise<string> {
  const { pairs } = dueAnswer.parse((await run('due', '--standing', standing, '--json')).json());
  const tag = pairs[0]?.tag;
  if (tag === undefined) throw new Error(`The sample plant has no pair that is ${standing}.`);
  return tag;
}

async function jsonTable(subject: string, ...args: string[]): Promise<ReadingsAnswer> {
  const answer = await table(subject, ...args, '--json');
  expect(answer.exitCode).toBe(0);
  return readingsAnswer.parse(answer.json());
}

describe('jackledger lookup --table', () => {
  it('answers the calibrated range of a sheet as JSON, without a pair, a standing or a due day', async () => {
    const answer = await jsonTable(sheet, '--step', '5 kip');
    expect(answer).toMatchObject({
      outcome: 'given',
      unit: 'kip',
      readingUnit: 'psi',
      pair: null,
      calibration: null,
      standing: null,
      dueDate: null,
      lowest: { because: 'calibrated-range' },
      highest: { because: 'calibrated-range' },
    });
    expect(answer.rows.map(({ force }) => force)).toEqual([5, 10, 15, 20, 25, 30]);
    for (const { force, reading, readingToSet } of answer.rows) {
      expectDigits(reading, {
        certified: 145 * force + 2,
        digits: 11,
        because:
          'the mean of the three cycles lies on a line; a least-squares fit of exact integers in double arithmetic',
      });
      expect(readingToSet).toBe(145 * force + 2);
    }
  });

  it('answers each row of a pair as the single look-up does', async () => {
    const answer = await jsonTable(ready);
    expect(answer.pair?.tag).toBe(ready);
    expect(answer.rows.length).toBeGreaterThan(10);
    const row = answer.rows[Math.floor(answer.rows.length / 2)];
    const single = lookupAnswer.parse(
      (await run('lookup', ready, '--force', `${row?.force} ${answer.unit}`, '--json')).json(),
    );
    expect(row).toMatchObject({
      reading: single.reading?.value,
      readingToSet: single.readingToSet?.value,
      forceAtReadingToSet: single.forceAtReadingToSet?.value,
      roundingError: single.roundingError?.value,
      expandedUncertainty: single.uncertainty?.expanded,
    });
  });

  it('writes the units into the heads, right aligned, and says why it begins and ends', async () => {
    const { exitCode, output } = await table(sheet, '--from', '10 kip', '--to', '40 kip', '--step', '5 kip');
    expect(exitCode).toBe(0);
    const lines = output.split('\n');
    expect(lines[0]).toContain('Readings to set with');
    const head = lines.findIndex((text) => text.includes('force, kip'));
    for (const title of ['set to, psi', 'force at that, kip', 'error, kip', 'error, %', 'U, kip', 'unrounded, psi']) {
      expect(lines[head]).toContain(title);
    }
    const rows = lines.slice(head + 1, head + 6);
    expect(rows.map((text) => text.trim().split(/\s+/).slice(0, 2))).toEqual([
      ['10', '1452'],
      ['15', '2177'],
      ['20', '2902'],
      ['25', '3627'],
      ['30', '4352'],
    ]);
    const end = (lines[head]?.indexOf('set to, psi') ?? Number.NaN) + 'set to, psi'.length;
    for (const text of rows) expect(text.slice(0, end)).toMatch(/\d$/);
    expect(output).toContain('Begins at 10 kip: as asked.');
    expect(output).toContain('Ends at 30 kip: the calibrated range ends there; nothing is extrapolated.');
    expect(output).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  it('explains every sign at a row of a pair, and what the pair rests on', async () => {
    const { output } = await table(ready);
    const { rowWarnings, calibration } = await jsonTable(ready);
    expect(rowWarnings.length).toBeGreaterThan(0);
    for (const { message } of rowWarnings) expect(output).toContain(message);
    expect(output).toContain(`Rests on               ${calibration?.number}`);
    expect(output).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  it('writes CSV with the numbers of the JSON, unrounded, and the head of the ledger as a comment', async () => {
    const csv = await table(ready, '--csv');
    expect(csv.exitCode).toBe(0);
    const { rows, unit, readingUnit, ledgerHead } = await jsonTable(ready);
    const [head, ...lines] = csv.output.trimEnd().split('\n');
    expect(lines.pop()).toBe(`# ledger head: ${ledgerHead}`);
    expect(head).toBe(
      `force (${unit}),reading to set (${readingUnit}),force at reading to set (${unit}),rounding error (${unit}),` +
        `rounding error (%),expanded uncertainty (${unit}),unrounded reading (${readingUnit}),warnings`,
    );
    expect(lines).toHaveLength(rows.length);
    for (const [place, row] of rows.entries()) {
      const cells = lines[place]?.split(',') ?? [];
      expect(cells.slice(0, 7).map(Number)).toEqual([
        row.force,
        row.readingToSet,
        row.forceAtReadingToSet,
        row.roundingError,
        row.roundingErrorPercent,
        row.expandedUncertainty,
        row.reading,
      ]);
      expect(cells[7]).toBe(row.warnings.join(' '));
    }
  });

  it('takes the unit once for plain numbers', async () => {
    const plain = await jsonTable(sheet, '--from', '50', '--to', '100', '--step', '25', '--unit', 'kN');
    expect(plain.unit).toBe('kN');
    expect(plain.rows.map(({ force }) => force)).toEqual([50, 75, 100]);
    expect(plain.rows).toEqual((await jsonTable(sheet, '--from', '50 kN', '--to', '100 kN', '--step', '25 kN')).rows);
  });
});

describe('the exit code of jackledger lookup --table', () => {
  it('is 2 where it refuses, in every way of writing, without a row', async () => {
    const notCalibrated = await pairWith('not-calibrated');
    for (const subject of [await pairWith('on-hold'), notCalibrated]) {
      const refused = await table(subject, '--json');
      expect(refused.exitCode).toBe(2);
      expect(readingsAnswer.parse(refused.json())).toMatchObject({ outcome: 'refused', rows: [], doNotExceed: null });
    }
    for (const way of [[], ['--csv']]) {
      const refused = await table(notCalibrated, ...way);
      expect(refused.exitCode).toBe(2);
      expect(refused.output).toContain('REFUSED');
      expect(refused.output).not.toContain('set to');
      expect(refused.output).not.toContain('reading to set (');
    }
    const beyond = await table(sheet, '--from', '31 kip', '--json');
    expect(beyond.exitCode).toBe(2);
    expect(readingsAnswer.parse(beyond.json()).warnings[0]?.code).toBe('outside-calibrated-range');
  });

  it('is 3 where a stop withholds it, and no table is ever released', async () => {
    const overdue = await pairWith('overdue');
    const stopped = await table(overdue, '--json');
    expect(stopped.exitCode).toBe(3);
    expect(readingsAnswer.parse(stopped.json())).toMatchObject({ outcome: 'withheld', rows: [], doNotExceed: null });
    const text = await table(overdue);
    expect(text.exitCode).toBe(3);
    expect(text.output).toContain('STOP');
    expect(text.output).toContain('A table is never released');
  });

  it('is 4 with --strict for a caution of the pair', async () => {
    const drifting = await pairWith('drifting');
    expect((await table(drifting)).exitCode).toBe(0);
    expect((await table(drifting, '--strict')).exitCode).toBe(4);
  });

  it('is 4 with --strict for a caution at a single row, and 0 where no row has one', async () => {
    const { rows, rowWarnings, warnings, unit } = await jsonTable(ready);
    expect(warnings.map(({ weight }) => weight)).not.toContain('caution');
    const cautions = rowWarnings.flatMap(({ code, weight }) => (weight === 'caution' ? [code] : []));
    expect(cautions).not.toEqual([]);
    const quiet = rows.filter((row) => !row.warnings.some((code) => cautions.includes(code))).map(({ force }) => force);
    const [first, second] = quiet;
    expect((await table(ready, '--strict')).exitCode).toBe(4);
    const range = ['--from', `${first} ${unit}`, '--to', `${second} ${unit}`];
    expect((await table(ready, ...range, '--strict')).exitCode).toBe(0);
  });

  it.each([
    [['--force', '10 kip'], 'usage', '--force'],
    [['--reading', '2000 psi'], 'usage', '--reading'],
    [['--strand', '1/2 in 270', '--fraction', '0.75'], 'usage', '--strand'],
    [['--preload', '5 kip'], 'usage', '--preload'],
    [['--release-by', 'F. Foreman', '--reason', 'the bed is half stressed'], 'usage', '--release-by'],
    [['--csv'], 'usage', '--csv'],
    [['--from', '10'], 'unit-missing', 'from'],
    [['--from', '10 ton'], 'unit-ambiguous', 'from'],
    [['--from', '30 kip', '--to', '20 kip'], 'field-invalid', 'from'],
    [['--unit', 'furlong'], 'unit-unknown', 'unit'],
    [['--step', '0 kip'], 'number-out-of-range', 'step'],
    [['--step', '0.001 kip'], 'number-out-of-range', 'step'],
    [['--temperature', 'hot'], 'not-a-number', 'temperature'],
    [['--on', '2026-02-30'], 'field-invalid', 'on'],
  ])('is 1 for %j', async (words, code, where) => {
    const answer = await table(sheet, ...words, '--json');
    expect(answer.exitCode).toBe(1);
    expect(answer.json()).toMatchObject({ problem: { code, where } });
  });

  it.each([['--from', '10 kip'], ['--to', '20 kip'], ['--step', '2 kip'], ['--unit', 'kip'], ['--csv']])(
    'is 1 for %s %s without --table',
    async (...words) => {
      const answer = await run('lookup', sheet, '--force', '10 kip', ...words, '--json');
      expect(answer.exitCode).toBe(1);
      expect(answer.json()).toMatchObject({ problem: { code: 'usage', where: words[0] } });
    },
  );

  it('is 1 for a fit option with a pair, and for a pair nobody knows', async () => {
    const fitOption = await table(ready, '--degree', '2', '--json');
    expect(fitOption.exitCode).toBe(1);
    expect(fitOption.json()).toMatchObject({ problem: { code: 'usage', where: '--degree' } });
    expect((await table(sheet, '--degree', '2')).exitCode).toBe(0);
    const unknown = await table('P-999', '--json');
    expect(unknown.exitCode).toBe(1);
    expect(unknown.json()).toMatchObject({ problem: { code: 'unknown-pair', given: 'P-999' } });
  });
});

describe('jackledger lookup --temperature', () => {
  /** A pair that may be used and whose calibration says how warm it was, with its table at 50 C. */
  async function tableWithTemperature(): Promise<ReadingsAnswer> {
    const { pairs } = dueAnswer.parse((await run('due', '--standing', 'ready', '--json')).json());
    for (const { tag } of pairs) {
      const answer = await jsonTable(tag, '--temperature', '50 C');
      if (!answer.warnings.some(({ code }) => code === 'temperature-not-counted')) return answer;
    }
    throw new Error('No pair of the sample plant that is ready was calibrated at a known temperature.');
  }

  it('shows the contribution and raises the uncertainty, in one look-up and in a table', async () => {
    const { pair, rows, unit } = await tableWithTemperature();
    const tag = pair?.tag ?? '';
    const row = rows[Math.floor(rows.length / 2)];
    const target = ['--force', `${row?.force} ${unit}`];
    const hot = lookupAnswer.parse((await run('lookup', tag, ...target, '--temperature', '122 F', '--json')).json());
    expect(hot.uncertainty?.contributions.map(({ source }) => source)).toContain('temperature');
    expect(row?.expandedUncertainty).toBe(hot.uncertainty?.expanded);
    const without = lookupAnswer.parse((await run('lookup', tag, ...target, '--json')).json());
    expect(without.uncertainty?.contributions.map(({ source }) => source)).not.toContain('temperature');
    expect(hot.uncertainty?.expanded).toBeGreaterThan(without.uncertainty?.expanded ?? Number.NaN);
    const contributionLine = /^ {2}temperature +B, rectangular/m;
    expect((await run('lookup', tag, ...target, '--temperature', '50 C')).output).toMatch(contributionLine);
    expect((await run('lookup', tag, ...target)).output).not.toMatch(contributionLine);
  });

  it('says in a note why it is not counted with a bare sheet, exit code 0 even with --strict', async () => {
    const answer = await run('lookup', sheet, '--force', '12 kip', '--temperature', '95 F', '--strict');
    expect(answer.exitCode).toBe(0);
    expect(answer.output).toContain('Note: The gauge is not known, so the 35 C at work are not in the uncertainty.');
  });

  it.each([
    ['hot', 'not-a-number'],
    ['35 R', 'unit-unknown'],
    ['300 C', 'number-out-of-range'],
  ])('exits 1 for "%s"', async (text, code) => {
    const answer = await run('lookup', sheet, '--force', '12 kip', '--temperature', text, '--json');
    expect(answer.exitCode).toBe(1);
    expect(answer.json()).toMatchObject({ problem: { code, where: 'temperature' } });
  });
});
