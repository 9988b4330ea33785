import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { dueAnswer } from '../../src/contract/due.ts';
import { equipmentFile } from '../../src/contract/equipment-file.ts';
import { fitAnswer } from '../../src/contract/fit.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { type CommandResult, root, runCommand, temporaryFolder } from './run-command.ts';

let folder: string;
let environment: Record<string, string>;
beforeAll(async () => {
  folder = temporaryFolder();
  environment = { JACKLEDGER_SAMPLE_LEDGER: join(folder, 'sample.ledger') };
  // A command that may write lays the sample plant out in its file; this one then refuses, since the pair is unknown.
  const laidOut = await runCommand(
    ['lookup', 'P-999', '--force', '1 kip', '--release-by', 'F. Foreman', '--reason', 'laying out'],
    environment,
  );
  if (!existsSync(environment.JACKLEDGER_SAMPLE_LEDGER ?? '')) throw new Error(`No sample plant: ${laidOut.errors}`);
});

const run = (...args: string[]): Promise<CommandResult> => runCommand(args, environment);
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const header = 'run,direction,force (kip),reading (psi)\n';
const line = (slope: number) =>
  header +
  [1, 2, 3]
    .flatMap((cycle) => [5, 10, 15, 20, 25, 30].map((force) => `${cycle},up,${force},${slope * force + cycle}`))
    .join('\n');

async function pairWith(standing: string): Promise<string> {
  const { pairs } = dueAnswer.parse((await run('due', '--standing', standing, '--json')).json());
  const tag = pairs[0]?.tag;
  if (tag === undefined) throw new Error(`The sample plant has no pair that is ${standing}.`);
  return tag;
}
const target = ['--strand', '1/2 in 270', '--fraction', '0.75'];

describe('jackledger', () => {
  it('says what it can do, and what it cannot', async () => {
    const help = await run('--help');
    expect(help.exitCode).toBe(0);
    for (const command of ['fit', 'lookup', 'due', 'import', 'export', 'verify', 'serve'])
      expect(help.output).toContain(command);
    const unknown = await run('calibrate', '--json');
    expect(unknown.exitCode).toBe(1);
    expect(unknown.json()).toMatchObject({ problem: { code: 'usage', given: 'calibrate' } });
    const option = await run('due', '--soon');
    expect(option.exitCode).toBe(1);
    expect(option.errors).toContain('--soon');
  });

  it('works on the sample plant where there is no ledger, and says so on the standard error', async () => {
    const due = await run('due', '--json');
    expect(due.exitCode).toBe(0);
    expect(due.errors).toContain('sample plant');
    const standings = new Set(dueAnswer.parse(due.json()).pairs.map(({ standing }) => standing));
    for (const standing of ['ready', 'due-soon', 'overdue', 'drifting', 'on-hold', 'not-calibrated'] as const) {
      expect(standings).toContain(standing);
    }
  });
});

describe('jackledger lookup', () => {
  it('exits 0 with a reading for a pair that is ready', async () => {
    const lookup = await run('lookup', await pairWith('ready'), ...target, '--json');
    expect(lookup.exitCode).toBe(0);
    expect(lookupAnswer.parse(lookup.json()).readingToSet?.value).toBeGreaterThan(0);
  });

  it('exits 2 without a number where it refuses', async () => {
    for (const standing of ['on-hold', 'not-calibrated']) {
      const lookup = await run('lookup', await pairWith(standing), ...target, '--json');
      expect(lookup.exitCode).toBe(2);
      expect(lookupAnswer.parse(lookup.json())).toMatchObject({
        outcome: 'refused',
        reading: null,
        readingToSet: null,
      });
    }
    const beyond = await run('lookup', await pairWith('ready'), '--force', '1 kip', '--json');
    expect(beyond.exitCode).toBe(2);
  });

  it('exits 3 for an overdue pair until a named person releases it, which the ledger keeps', async () => {
    const tag = await pairWith('overdue');
    const stopped = await run('lookup', tag, ...target, '--json');
    expect(stopped.exitCode).toBe(3);
    expect(lookupAnswer.parse(stopped.json())).toMatchObject({ outcome: 'withheld', readingToSet: null });
    const noReason = await run('lookup', tag, ...target, '--release-by', 'F. Foreman');
    expect(noReason.exitCode).toBe(1);
    const released = await run(
      'lookup',
      tag,
      ...target,
      '--release-by',
      'F. Foreman',
      '--reason',
      'the bed is half stressed',
      '--json',
    );
    expect(released.exitCode).toBe(0);
    expect(lookupAnswer.parse(released.json()).readingToSet?.value).toBeGreaterThan(0);
    const exported = join(folder, 'after-release');
    expect((await run('export', exported)).exitCode).toBe(0);
    expect(readFileSync(join(exported, 'ledger.jsonl'), 'utf8')).toContain('the bed is half stressed');
  });

  it('exits 4 for a caution only with --strict', async () => {
    const tag = await pairWith('drifting');
    expect((await run('lookup', tag, ...target)).exitCode).toBe(0);
    expect((await run('lookup', tag, ...target, '--strict')).exitCode).toBe(4);
  });

  it('computes from a bare sheet, with what acceptance finds as warnings', async () => {
    const sheet = file(
      'two-cycles.csv',
      `${header}${[1, 2].flatMap((cycle) => [5, 10, 15, 20, 25].map((force) => `${cycle},up,${force},${145 * force + cycle}`)).join('\n')}`,
    );
    const lookup = await run('lookup', sheet, '--force', '12 kip', '--json');
    expect(lookup.exitCode).toBe(0);
    const answer = lookupAnswer.parse(lookup.json());
    expect(answer).toMatchObject({ standing: null, dueDate: null, pair: null, outcome: 'given' });
    expect(answer.warnings.map(({ code }) => code)).toContain('acceptance-failed');
    expect((await run('lookup', sheet, '--force', '26 kip')).exitCode).toBe(2);
  });

  it.each([
    [['--force', '3 ton'], 'unit-ambiguous'],
    [['--force', '31,000 lbf'], 'ambiguous-number'],
    [['--force', '1e400 kip'], 'number-out-of-range'],
    [['--strand', '5/8 in 270', '--fraction', '0.75'], 'unknown-strand'],
    [['--force', '31 kip', '--on', '2026-02-30'], 'field-invalid'],
    [['--force', '31 kip', '--degree', '2'], 'usage'],
    [[], 'field-missing'],
  ])('exits 1 for %j', async (words, code) => {
    const lookup = await run('lookup', await pairWith('ready'), ...words, '--json');
    expect(lookup.exitCode).toBe(1);
    expect(lookup.json()).toMatchObject({ problem: { code } });
  });

  it('does not guess where a file has the name of a pair', async () => {
    const tag = await pairWith('ready');
    const shadow = join(root, tag);
    writeFileSync(shadow, line(145));
    try {
      const lookup = await run('lookup', tag, '--force', '12 kip', '--json');
      expect(lookup.exitCode).toBe(1);
      expect(lookup.json()).toMatchObject({ problem: { code: 'usage', given: tag } });
      expect((await run('lookup', `./${tag}`, '--force', '12 kip')).exitCode).toBe(0);
    } finally {
      rmSync(shadow);
    }
  });

  it('exits 1 for a pair nobody knows', async () => {
    expect((await run('lookup', 'P-999', '--force', '31 kip', '--json')).json()).toMatchObject({
      problem: { code: 'unknown-pair' },
    });
  });
});

describe('jackledger fit', () => {
  it('fits either way round', async () => {
    const sheet = file('line.csv', line(145));
    const forward = await run('fit', sheet, '--degree', '1', '--json');
    expect(forward.json()).toMatchObject({ curve: { response: 'reading', degree: 1 } });
    const inverse = await run('fit', sheet, '--degree', '1', '--set', 'reading', '--json');
    expect(inverse.json()).toMatchObject({ curve: { response: 'force', degree: 1 } });
  });

  it.each([
    ['no file', undefined, 'file-not-found'],
    ['a file that is no run sheet', 'Dear Sir or Madam', 'sheet-not-readable'],
    ['an empty file', '', 'sheet-not-readable'],
    ['JSON that is no run sheet', '{"hello": 1}', 'field-missing'],
    ['broken JSON', '{"units":', 'sheet-not-readable'],
    ['JSON nested without end', `{"units":${'['.repeat(20_000)}${']'.repeat(20_000)}}`, 'field-invalid'],
    [
      'a field spelled otherwise',
      '{"Set":"reading","units":{"force":"kip","reading":"psi"},"cycles":[{"points":[]}]}',
      'field-invalid',
    ],
    ['a run numbered as a remark', `${header}1,up,5,700\n#3,up,10,1400\n`, 'sheet-not-readable'],
    ['a unit in milli', 'run,direction,force (mN),reading (psi)\n1,up,5,700\n', 'unit-ambiguous'],
    ['a bare ton', 'run,direction,force (ton),reading (psi)\n1,up,5,700\n', 'unit-ambiguous'],
    ['a missing unit', 'run,direction,force,reading (psi)\n1,up,5,700\n', 'unit-missing'],
    ['an unknown unit', 'run,direction,force (kip),reading (furlong)\n1,up,5,700\n', 'unit-unknown'],
    ['a decimal comma', `${header}1,up,5,"700,5"\n`, 'ambiguous-number'],
    ['text in a number', `${header}1,up,5,7OO\n`, 'not-a-number'],
    ['a negative reading', `${header}1,up,5,-700\n`, 'number-out-of-range'],
    ['a number too large', `${header}1,up,5,1e400\n`, 'number-out-of-range'],
    ['NaN', `${header}1,up,NaN,700\n`, 'not-a-number'],
    ['a sideways direction', `${header}1,across,5,700\n`, 'field-invalid'],
    ['two points', `${header}1,up,5,700\n1,up,10,1400\n`, 'too-few-points'],
    ['equal levels', `${header}1,up,5,700\n2,up,5,701\n3,up,5,702\n4,up,5,703\n`, 'equal-levels'],
    ['a falling curve', `${header}1,up,5,900\n1,up,10,700\n1,up,15,500\n1,up,20,300\n`, 'curve-not-increasing'],
  ])('exits 1 for %s', async (name, text, code) => {
    const path = text === undefined ? join(folder, 'nowhere.csv') : file(`${name.replaceAll(' ', '-')}.csv`, text);
    const fit = await run('fit', path, '--json');
    expect(fit.exitCode).toBe(1);
    expect(fit.json()).toMatchObject({ problem: { code } });
    expect(fit.errors).toContain(code);
  });

  it('exits 1 for a file of 50 MB without reading it', async () => {
    const fit = await run('fit', file('large.csv', 'x'.repeat(50_000_000)), '--json');
    expect(fit.exitCode).toBe(1);
    expect(fit.json()).toMatchObject({ problem: { code: 'body-too-large' } });
  });

  it('judges by a shipped profile when asked, and by the plant without', async () => {
    const sheet = file('line.csv', line(145));
    const machine = await run('fit', sheet, '--rules', 'testing-machine-class-2', '--json');
    expect(machine.json()).toMatchObject({ rules: { name: 'testing-machine-class-2' } });
    const rules = (answer: typeof machine) => fitAnswer.parse(answer.json()).acceptance.map(({ rule }) => rule);
    expect(rules(machine)).toContain('reversibility');
    expect(rules(await run('fit', sheet, '--json'))).not.toContain('reversibility');
    const unknown = await run('fit', sheet, '--rules', 'the-old-ones', '--json');
    expect(unknown.exitCode).toBe(1);
    expect(unknown.json()).toMatchObject({
      problem: { code: 'field-invalid', where: '--rules', given: 'the-old-ones' },
    });
  });

  it('reports what was judged by what, and every figure under its unit', async () => {
    const sheet = 'calibrations/sample-plant/run-sheets/P-01_2026-04-14.csv';
    const report = (await run('fit', sheet)).output;
    for (const part of [
      /^Verdict: CONDITIONAL PASS$/m,
      /^Jack +J-01, nominal piston area 7.22 in2$/m,
      /^Load cell +LC-1, capacity 50 kip, certificate Q26-0109, traceable to /m,
      /^a1 +142\.3636364 +0\.096 +psi\/kip$/m,
      /^Residual standard deviation s = 7\.556 psi, 28 degrees of freedom/m,
      /^Lack of fit F = 2\.295 with 8 and 20 degrees of freedom, p = 0\.063/m,
      /^ +25 +3566\.67 +3 +3550\.00 +3575\.00 +3575\.00 +3567\.42 +0\.971$/m,
      /^Held: class 1 from 40 to 50 kip; /m,
      /^force, kip +u load cell certificate +u gauge resolution +u scatter and fit +u /m,
      /do not replace the project specification/,
    ]) {
      expect(report).toMatch(part);
    }
    for (const text of report.split('\n')) expect(text).not.toMatch(/NaN|undefined|Infinity|null/);
  });

  it('says of a bare sheet what is not in its figures', async () => {
    const report = (await run('fit', file('line.csv', line(145)))).output;
    expect(report).toContain('Load cell      not known: its uncertainty is not in the figures below');
    expect(report).toContain('Calibrated on  day not given');
    expect(report).toContain('Gauge          not known; readings written to steps of');
  });

  it('refuses a degree it does not fit', async () => {
    expect((await run('fit', file('line.csv', line(145)), '--degree', '4', '--json')).json()).toMatchObject({
      problem: { code: 'degree-not-supported', given: '4' },
    });
  });
});

describe('jackledger import, export, verify', () => {
  it('exports a plant that import makes again from its files', async () => {
    const out = join(folder, 'exported');
    expect((await run('export', out, '--json')).exitCode).toBe(0);
    const register = equipmentFile.parse(JSON.parse(readFileSync(join(out, 'equipment.json'), 'utf8')));
    expect(register.pairs.length).toBeGreaterThan(10);
    expect((await run('export', out)).exitCode).toBe(1);
    const again = join(folder, 'again.ledger');
    const imported = await run('import', join(out, 'equipment.json'), '--ledger', again);
    expect(imported.exitCode).toBe(0);
    expect(imported.output).toContain('0 refused');
  });

  it('writes the head of what it exported, which verify finds again on paper', async () => {
    const [out, ledger] = [join(folder, 'with-head'), join(folder, 'kept.ledger')];
    const sheet = file(
      'kept.json',
      JSON.stringify({ format: 'jackledger-equipment/1', pumps: [{ tag: 'PU-1', serial: '7' }] }),
    );
    await run('import', sheet, '--ledger', ledger);
    expect((await run('export', out, '--ledger', ledger)).exitCode).toBe(0);
    const { seq, hash, shortHead } = JSON.parse(readFileSync(join(out, 'head.json'), 'utf8'));
    const verified = await run('verify', ledger, '--json');
    expect(verified.json()).toMatchObject({ verified: true, head: { seq, hash }, shortHead });

    const found = await run('verify', ledger, '--head', shortHead.toUpperCase().replaceAll('-', ' '));
    expect(found.exitCode).toBe(0);
    expect(found.output).toMatch(new RegExp(`^entry ${seq} of .*Z is in this ledger$`, 'm'));
    expect((await run('verify', ledger, '--head', `${seq} ${hash}`)).exitCode).toBe(0);

    const cut = await run('verify', ledger, '--head', shortHead.replace(/^\d+/, '99'), '--json');
    expect(cut.exitCode).toBe(2);
    expect(cut.json()).toMatchObject({ problem: { code: 'head-not-found', given: shortHead } });
    const other = await run(
      'verify',
      ledger,
      '--head',
      shortHead.replace(/.$/, (digit: string) => (digit === '0' ? '1' : '0')),
    );
    expect(other.exitCode).toBe(2);
    expect(other.errors).toContain(shortHead);
    const none = await run('verify', ledger, '--head', hash, '--json');
    expect(none.exitCode).toBe(1);
    expect(none.json()).toMatchObject({ problem: { code: 'field-invalid', where: '--head' } });
  });

  it('names the fate of every file and stores nothing of a bad one', async () => {
    const ledger = join(folder, 'bad.ledger');
    const bare = file('bare.csv', line(145));
    const first = await run('import', bare, '--ledger', ledger, '--json');
    expect(first.exitCode).toBe(1);
    expect(first.json()).toMatchObject({
      fates: [{ fate: 'refused', problem: { code: 'field-missing', where: 'pair' } }],
      head: { seq: 0 },
    });
    const unknown = await run(
      'import',
      bare,
      '--pair',
      'P-1',
      '--on',
      '2026-01-01',
      '--load-cell',
      'LC-1',
      '--ledger',
      ledger,
      '--json',
    );
    expect(unknown.json()).toMatchObject({ fates: [{ problem: { code: 'unknown-pair' } }], head: { seq: 0 } });
    expect((await run('import', join(folder, 'none'), '--ledger', ledger)).exitCode).toBe(1);
  });

  it('refuses a file that is not a ledger, and one that is not there', async () => {
    const text = file('text.ledger', 'not a ledger at all, just some words in a file');
    const refused = await run('verify', text, '--json');
    expect(refused.exitCode).toBe(1);
    expect(refused.json()).toMatchObject({ problem: { code: 'ledger-not-readable' } });
    const missing = join(folder, 'missing.ledger');
    expect((await run('due', '--ledger', missing, '--json')).json()).toMatchObject({
      problem: { code: 'file-not-found' },
    });
    expect(existsSync(missing)).toBe(false);
  });
});
