import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand, temporaryFolder } from '../cli/run-command.ts';

const register = (tag: string) => JSON.stringify({ format: 'jackledger-equipment/1', pumps: [{ tag, serial: '1' }] });

describe('two processes that meet a sample plant not laid out yet', () => {
  it('lay it out once, and what either of them recorded is kept', async () => {
    const folder = temporaryFolder();
    const environment = { JACKLEDGER_SAMPLE_LEDGER: join(folder, 'sample.ledger') };
    const tags = ['HP-91', 'HP-92', 'HP-93'];
    const runs = tags.map((tag) => {
      const file = join(folder, `${tag}.json`);
      writeFileSync(file, register(tag));
      return runCommand(['import', file], environment);
    });
    for (const run of await Promise.all(runs)) expect(run.output).toContain('1 recorded');
    const out = join(folder, 'out');
    expect((await runCommand(['export', out], environment)).exitCode).toBe(0);
    for (const tag of tags) {
      const again = await runCommand(['import', join(folder, `${tag}.json`)], environment);
      expect(again.output).toContain('0 recorded, 1 known already');
    }
    expect((await runCommand(['verify'], environment)).exitCode).toBe(0);
  });
});
