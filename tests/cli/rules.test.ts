import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ruleProfileAnswer } from '../../src/contract/rule-profile.ts';
import { rulesAnswer } from '../../src/contract/rules.ts';
import { runCommand, temporaryFolder } from './run-command.ts';

const environment = { JACKLEDGER_SAMPLE_LEDGER: join(temporaryFolder(), 'sample.ledger') };
const run = (...args: string[]) => runCommand(args, environment);

describe('jackledger rules', () => {
  it('prints every limit in force with its unit, how it is known and its source, and what else there is', async () => {
    const rules = await run('rules');
    expect(rules.exitCode).toBe(0);
    expect(rules.output).toMatch(/^In force: 12 months, 2 %, 3 cycles\nSet by /);
    expect(rules.output).toMatch(/stays valid for +12 months +from memory +PCI MNL-116\n/);
    expect(rules.output).toMatch(/falling and rising series +not judged/);
    expect(rules.output).toContain('engineer decide');
    expect(rules.output).toMatch(/testing-machine-class-3 +ISO 7500-1 class 3/);
    expect(rulesAnswer.parse((await run('rules', '--json')).json()).inForce.intervalMonths.value).toBe(12);
  });

  it('prints a profile that comes with the program', async () => {
    const shipped = await run('rules', '--shipped', 'six-months-first-use');
    expect(shipped.exitCode).toBe(0);
    expect(shipped.output).toMatch(/before its first use by at most +30 days +read +UFGS 02490/);
    const json = await run('rules', '--shipped', 'testing-machine-class-2', '--json');
    expect(ruleProfileAnswer.parse(json.json())).toMatchObject({ repeatabilityPercent: { value: 2 } });
  });

  it('exits 1 for a profile it does not have, an unknown option, and two answers at once', async () => {
    const unknown = await run('rules', '--shipped', 'strictest', '--json');
    expect(unknown.exitCode).toBe(1);
    expect(unknown.json()).toMatchObject({
      problem: { code: 'field-invalid', where: '--shipped', given: 'strictest' },
    });
    for (const words of [['--strict'], ['six-months-first-use'], ['--shipped', 'x', '--ledger', 'y']]) {
      const refused = await run('rules', ...words);
      expect(refused.exitCode).toBe(1);
      expect(refused.errors).toContain('[usage]');
    }
    const missing = await run('rules', '--ledger', 'no-such.ledger');
    expect(missing.exitCode).toBe(1);
    expect(missing.errors).toContain('[file-not-found]');
  });
});
