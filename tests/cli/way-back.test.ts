// Ways back in: a one-time code for a lost password, and look-ups after a clock had run ahead.

import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { runCommand, temporaryFolder } from './run-command.ts';

/** The ledger of a sample plant in a folder of its own. */
async function samplePlant(): Promise<string> {
  const folder = temporaryFolder();
  const ledger = join(folder, 'sample.ledger');
  await runCommand(['backup', join(folder, 'b')], { JACKLEDGER_SAMPLE_LEDGER: ledger });
  return ledger;
}

describe('jackledger invite', () => {
  it('gives a person a code to set a new password with, and the ledger says so', async () => {
    const ledger = await samplePlant();
    const why = ['--reason', 'The telephone with the password is lost'];
    const run = await runCommand(['invite', 'Inge.Marlowsen', '--ledger', ledger, '--json', ...why]);
    expect(run.exitCode).toBe(0);
    const { person, code } = run.json() as { person: string; code: string };
    expect(person).toBe('inge.marlowsen');
    expect(code.length).toBeGreaterThan(9);
    const storage = outcomeValue(openSqliteStorage(ledger, { sha256, mode: 'existing' }));
    const invitation = await storage.credentials.invitation(person);
    expect(invitation).not.toBeNull();
    expect(JSON.stringify(invitation)).not.toContain(code);
    const { seq } = await storage.ledger.head();
    for await (const entry of storage.ledger.readEntries(seq - 1)) {
      expect(entry).toMatchObject({ kind: 'person-changed/1', subject: person });
      expect(JSON.stringify(entry.body)).toContain('telephone');
    }
    await storage.close();
  });

  it.each([
    [['nobody.here', '--reason', 'lost it'], 'unknown-person'],
    [['inge.marlowsen'], 'field-missing'],
    [['inge.marlowsen', '--reason', 'x'], 'field-invalid'],
    [[], 'usage'],
  ])('refuses %j with %s', async (words, code) => {
    const run = await runCommand(['invite', ...words, '--ledger', await samplePlant(), '--json']);
    expect(run.exitCode).not.toBe(0);
    expect(run.json()).toMatchObject({ problem: { code } });
  });
});

describe('jackledger set-clock-right', () => {
  const lookup = (ledger: string) => runCommand(['lookup', 'P-01', '--force', '30 kip', '--ledger', ledger, '--json']);

  it('lets look-ups go on after an entry of a day to come, which stays and verifies', async () => {
    const ledger = await samplePlant();
    const storage = outcomeValue(openSqliteStorage(ledger, { sha256, mode: 'existing' }));
    const { seq } = await storage.ledger.head();
    const body = { reason: 'written with a clock a year ahead' };
    const at = new Date(Date.now() + 365 * 86_400_000).toISOString();
    const hold = { at, actor: 'inge.marlowsen', kind: 'hold-placed/1', subject: 'P-02', body } as const;
    outcomeValue(await storage.ledger.append({ entries: [hold], expectedSeq: seq }));
    await storage.close();
    const refused = await lookup(ledger);
    expect(refused.exitCode).toBe(2);
    expect(refused.output).toContain('clock-behind-ledger');
    const set = await runCommand(['set-clock-right', '--ledger', ledger, '--reason', 'The year was wrong', '--json']);
    expect(set.json()).toMatchObject({ ahead: at });
    expect((await lookup(ledger)).exitCode).toBe(0);
    const verified = await runCommand(['verify', ledger, '--json']);
    expect(verified.json()).toMatchObject({ verified: true, entries: seq + 2 });
    const again = await runCommand(['set-clock-right', '--ledger', ledger, '--reason', 'Once more', '--json']);
    expect(again.json()).toMatchObject({ problem: { code: 'field-invalid' } });
  });
});
