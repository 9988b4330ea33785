// A ledger on a file system that may only be read: everything that reads works, everything that writes says why not.

import { copyFileSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { samplePassword } from '../../src/service/lay-out-sample-plant.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { root, runCommand, temporaryFolder } from '../cli/run-command.ts';
import { outcomeValue } from '../outcome-value.ts';
import { mayMount, runWithMounts, type ScriptResult, spawnWithMounts } from './in-mount-namespace.ts';

const readOnlyMount = 'mount --bind "$1" "$1"; mount -o remount,ro,bind "$1"; shift; exec "$@"';
const command = join(root, 'src/cli/jackledger.mjs');

/** Runs a command of the command line while the folder of the ledger is mounted for reading only. */
function runReadOnly(folder: string, args: readonly string[]): Promise<ScriptResult> {
  return runWithMounts(readOnlyMount, [folder, process.execPath, command, ...args]);
}

async function samplePlantIn(folder: string): Promise<string> {
  const ledger = join(folder, 'sample.ledger');
  const backup = join(temporaryFolder(), 'b');
  await runCommand(['backup', backup], { JACKLEDGER_SAMPLE_LEDGER: ledger });
  return ledger;
}

describe.skipIf(!mayMount)('a ledger in a folder that may only be read', () => {
  it('is verified, looked up, listed and exported', async () => {
    const folder = temporaryFolder();
    const ledger = await samplePlantIn(folder);
    const out = join(temporaryFolder(), 'out');
    const commands = [
      ['verify', ledger],
      ['lookup', 'P-01', '--strand', '0.6 in 270', '--fraction', '0.75', '--ledger', ledger],
      ['due', '--ledger', ledger],
      ['export', out, '--ledger', ledger],
    ];
    for (const words of commands) {
      const expected = words[0] === 'export' ? null : await runCommand(words);
      const run = await runReadOnly(folder, words);
      expect(run.errors).toBe('');
      expect(run.exitCode).toBe(0);
      if (expected !== null) expect(run.output).toBe(expected.output);
    }
    expect(existsSync(join(out, 'ledger.jsonl'))).toBe(true);
    expect(readdirSync(folder)).toEqual(['sample.ledger']);
  });

  it('is read with the log beside it, as a killed program leaves one', async () => {
    const folder = temporaryFolder();
    const original = await samplePlantIn(folder);
    const storage = outcomeValue(openSqliteStorage(original, { sha256, mode: 'existing' }));
    const { seq } = await storage.ledger.head();
    const body = { reason: 'in the log alone' };
    const entry = { at: new Date().toISOString(), actor: 'x', kind: 'hold-placed/1', subject: 'P-01', body } as const;
    outcomeValue(await storage.ledger.append({ entries: [entry], expectedSeq: seq }));
    const left = join(folder, 'left');
    mkdirSync(left);
    for (const ending of ['', '-wal']) copyFileSync(`${original}${ending}`, join(left, `plant.ledger${ending}`));
    await storage.close();
    const run = await runReadOnly(left, ['verify', join(left, 'plant.ledger'), '--json']);
    expect(JSON.parse(run.output)).toMatchObject({ verified: true, entries: seq + 1 });
  });

  it('is served to those who look up, and says that nothing can be entered', async () => {
    const folder = temporaryFolder();
    const ledger = await samplePlantIn(folder);
    const words = ['serve', '--ledger', ledger, '--port', '0', '--json'];
    const server = spawnWithMounts(readOnlyMount, [folder, process.execPath, command, ...words]);
    let errors = '';
    server.stderr.on('data', (chunk) => {
      errors += chunk;
    });
    const said = await new Promise<string>((done, failed) => {
      server.stdout.once('data', (chunk) => done(String(chunk)));
      server.once('exit', (code) => failed(new Error(`The server ended (${code}): ${errors}`)));
    });
    const { address } = JSON.parse(said) as { address: string };
    const lookup = await fetch(`${address}/api/pairs/P-01/lookup?force=30%20kip`);
    expect(lookup.status).toBe(200);
    expect(await lookup.json()).toMatchObject({ outcome: 'given', pair: { tag: 'P-01' } });
    expect(errors).toContain('Nothing can be entered; look-ups go on.');
    const refused = await fetch(`${address}/api/session`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ person: 'inge.marlowsen', password: samplePassword }),
    });
    expect(await refused.json()).toMatchObject({ code: 'ledger-write-failed' });
    const ended = new Promise((done) => server.once('exit', done));
    server.kill('SIGTERM');
    await ended;
  });

  it('takes nothing in, and says so', async () => {
    const folder = temporaryFolder();
    const ledger = await samplePlantIn(folder);
    const register = join(temporaryFolder(), 'pumps.json');
    writeFileSync(
      register,
      JSON.stringify({ format: 'jackledger-equipment/1', pumps: [{ tag: 'HP-9', serial: '1' }] }),
    );
    const imported = await runReadOnly(folder, ['import', register, '--ledger', ledger, '--json']);
    expect(imported.exitCode).toBe(2);
    expect(JSON.parse(imported.output)).toMatchObject({
      fates: [{ fate: 'refused', problem: { code: 'ledger-write-failed' } }],
    });
    for (const words of [
      ['backup', join(folder, 'b'), '--ledger', ledger, '--json'],
      ['import', register, '--ledger', join(folder, 'new.ledger'), '--json'],
    ]) {
      const refused = await runReadOnly(folder, words);
      expect(refused.exitCode).toBe(2);
      expect(JSON.parse(refused.output)).toMatchObject({ problem: { code: 'ledger-write-failed' } });
    }
  });
});
