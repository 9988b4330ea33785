import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { runCommand, temporaryFolder } from '../cli/run-command.ts';

const target = ['--strand', '0.6 in 270', '--fraction', '0.75'];

describe('a ledger altered behind the program', () => {
  it('gives no number any more, and verify names the entry', async () => {
    const ledger = join(temporaryFolder(), 'sample.ledger');
    const environment = { JACKLEDGER_SAMPLE_LEDGER: ledger };
    const release = ['--release-by', 'F. Foreman', '--reason', 'laying the plant out'];
    await runCommand(['lookup', 'P-999', '--force', '1 kip', ...release], environment);
    expect((await runCommand(['lookup', 'P-01', ...target, '--ledger', ledger])).exitCode).toBe(0);

    const database = new Database(ledger);
    const triggers = database
      .prepare<[], { name: string; sql: string }>("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")
      .all();
    for (const { name } of triggers) database.exec(`DROP TRIGGER ${name}`);
    const { seq } = database
      .prepare<[], { seq: number }>(
        "SELECT max(seq) AS seq FROM entry WHERE kind = 'run-recorded/3' AND body LIKE '%\"P-01\"%'",
      )
      .get() ?? { seq: 0 };
    const changed = database
      .prepare(`UPDATE entry SET body = replace(body, '"reading":7', '"reading":8') WHERE seq = ?`)
      .run(seq);
    expect(changed.changes).toBe(1);
    for (const { sql } of triggers) database.exec(sql);
    database.close();

    const lookup = await runCommand(['lookup', 'P-01', ...target, '--ledger', ledger, '--json']);
    expect(lookup.exitCode).toBe(2);
    expect(lookup.json()).toMatchObject({ problem: { code: 'ledger-broken' } });
    const verified = await runCommand(['verify', ledger, '--json']);
    expect(verified.exitCode).toBe(2);
    expect(verified.json()).toMatchObject({ problem: { code: 'ledger-broken', where: `entry ${seq}` } });
  });
});
