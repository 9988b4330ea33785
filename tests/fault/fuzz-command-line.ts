// The command line with words it never expected: a documented exit code, JSON where it was asked for, never a fault.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { main } from '../../src/cli/main.ts';
import { readRunSheet } from '../../src/contract/read-run-sheet.ts';
import { hostileValues } from './hostile-values.ts';

export interface CommandLineFigures {
  commands: number;
  accepted: number;
  refused: number;
  readonly faults: string[];
}

const options: Readonly<Record<string, readonly string[]>> = {
  '--force': ['31 kip', '100 kN', '1 kip', '31', '31 ton', '31,000 lbf'],
  '--reading': ['4300 psi', '4300'],
  '--strand': ['0.6 in 270', '0.6'],
  '--fraction': ['0.75', '75 %', '1.2'],
  '--on': ['2026-06-01', '2026-02-30'],
  '--within': ['60d', '0', '-1d'],
  '--degree': ['1', '2', '3', 'auto', '4'],
  '--set': ['force', 'reading', 'both'],
  '--standing': ['ready', 'lost'],
  '--reason': ['because'],
  '--release-by': ['F. Foreman'],
  '--shipped': ['six-months-first-use'],
  '--head': ['1-0000-0000-0000-0000'],
  '--strict': [],
  '--rebuild': [],
};

/** Commands that end by themselves and write nowhere but into the folder given. */
function wordsIn(folder: string): fc.Arbitrary<readonly string[]> {
  const hostile = fc.constantFrom(
    ...hostileValues.filter((value) => typeof value === 'string'),
    '--',
    '-x',
    '--no-such',
  );
  const option: fc.Arbitrary<readonly string[]> = fc
    .constantFrom(...Object.entries(options))
    .chain(([name, values]): fc.Arbitrary<readonly string[]> => {
      if (values.length === 0) return fc.constant([name]);
      const value = fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...values) }, hostile);
      return value.map((word) => [name, word]);
    });
  const sheetFile = join(folder, 'sheet.csv');
  const sound = fc.constantFrom<readonly string[]>(
    ['fit', sheetFile],
    ['lookup', 'P-01', '--force', '31 kip'],
    ['lookup', 'P-01', '--force', '100 kN'],
    ['lookup', sheetFile, '--force', '20 kip'],
    ['lookup', sheetFile, '--reading', '3000 psi'],
    ['due'],
    ['rules'],
    ['verify'],
    ['import', sheetFile],
    ['drift', 'P-01'],
    ['lookup', join(folder, 'none'), '--force', '1 kip'],
  );
  // Half of the commands as they are, or with an option more; the others with something no person would type.
  return fc
    .record({
      sound,
      more: fc.array(option, { maxLength: 2 }),
      odd: fc.option(fc.record({ at: fc.nat(6), word: hostile }), { freq: 1 }),
    })
    .map(({ sound: words, more, odd }) => {
      const all = [...words, ...more.flat()];
      if (odd !== null) all[1 + (odd.at % all.length)] = odd.word;
      return [...all, '--json'];
    });
}

const sheet = `run,direction,force (kip),reading (psi)\n${[1, 2, 3]
  .flatMap((run) => [10, 15, 20, 25, 30, 35].map((force) => `${run},up,${force},${force * 150 + run}`))
  .join('\n')}\n`;

/** Runs so many commands in this process, on a sample plant of their own. */
export async function fuzzCommandLine(commands: number, seed: number): Promise<CommandLineFigures> {
  const figures: CommandLineFigures = { commands: 0, accepted: 0, refused: 0, faults: [] };
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-words-'));
  if (!readRunSheet(sheet).ok) throw new Error('The sheet of this test is none.');
  writeFileSync(join(folder, 'sheet.csv'), sheet);
  const before = process.env.JACKLEDGER_SAMPLE_LEDGER;
  process.env.JACKLEDGER_SAMPLE_LEDGER = join(folder, 'sample.ledger');
  try {
    await run(['lookup', 'P-999', '--force', '1 kip', '--release-by', 'x', '--reason', 'laying out']);
    for (const words of fc.sample(wordsIn(folder), { numRuns: commands, seed })) {
      const { exitCode, output } = await run(words);
      figures.commands += 1;
      const note = (what: string) =>
        figures.faults.push(`${what}: ${JSON.stringify(words)} -> ${output.slice(0, 400)}`);
      if (exitCode === 0 || exitCode === 4) figures.accepted += 1;
      else figures.refused += 1;
      if (![0, 1, 2, 3, 4].includes(exitCode)) note(`exit code ${exitCode}`);
      if (output.includes('internal-error')) note('a fault');
      const answer = readJson(output);
      if (answer === undefined) note('not JSON');
      const asked = words[words.lastIndexOf('--force') + 1] ?? '';
      if (words[0] === 'lookup' && exitCode === 0 && words.includes('--force') && !isOf(answer, asked)) {
        note('answers another force');
      }
    }
    return figures;
  } finally {
    if (before === undefined) delete process.env.JACKLEDGER_SAMPLE_LEDGER;
    else process.env.JACKLEDGER_SAMPLE_LEDGER = before;
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Whether a look-up is of the number and the unit that were asked for. */
function isOf(answer: unknown, asked: string): boolean {
  const { force } = answer as { force?: { value: number; unit: string } };
  return force !== undefined && `${force.value} ${force.unit}` === asked.trim();
}

function readJson(output: string): unknown {
  try {
    return JSON.parse(output) as unknown;
  } catch {
    return undefined;
  }
}

async function run(words: readonly string[]): Promise<{ readonly exitCode: number; readonly output: string }> {
  const { write } = process.stdout;
  const { write: warn } = process.stderr;
  let output = '';
  process.stdout.write = (chunk: string | Uint8Array) => {
    output += String(chunk);
    return true;
  };
  process.stderr.write = () => true;
  try {
    return { exitCode: await main(words), output };
  } finally {
    process.stdout.write = write;
    process.stderr.write = warn;
  }
}
