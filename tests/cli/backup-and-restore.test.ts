// The restore drill, as the person at the keyboard does it, and everything a backup or a restore refuses.

import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, linkSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { backupManifest } from '../../src/contract/backup-manifest.ts';
import { writeShortHead } from '../../src/ledger/short-head.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { root, runCommand, temporaryFolder } from './run-command.ts';

interface Head {
  readonly seq: number;
  readonly hash: string;
}

/** Registers pumps, each an entry of its own. */
async function addPumps(folder: string, ledger: string, tags: readonly string[]): Promise<Head> {
  const file = join(folder, `${tags[0]}.json`);
  writeFileSync(
    file,
    JSON.stringify({ format: 'jackledger-equipment/1', pumps: tags.map((tag) => ({ tag, serial: '1' })) }),
  );
  const run = await runCommand(['import', file, '--ledger', ledger, '--json']);
  expect(run.exitCode).toBe(0);
  return (run.json() as { head: Head }).head;
}

async function headOf(ledger: string): Promise<Head> {
  const run = await runCommand(['verify', ledger, '--json']);
  expect(run.errors).toBe('');
  return (run.json() as { head: Head }).head;
}

/** The register and the sheets of a ledger, as its export writes them. */
async function stateOf(folder: string, ledger: string): Promise<string> {
  const out = join(folder, `export-${readdirSync(folder).length}`);
  expect((await runCommand(['export', out, '--ledger', ledger])).exitCode).toBe(0);
  return readFileSync(join(out, 'equipment.json'), 'utf8');
}

async function served(ledger: string, ...options: string[]): Promise<{ child: ChildProcess; output: string }> {
  const words = ['serve', '--ledger', ledger, '--port', '0', '--json', ...options];
  const child = spawn(process.execPath, [join(root, 'src/cli/jackledger.mjs'), ...words], { cwd: root });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const output = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (said.includes('}')) resolve(said);
    });
    child.once('exit', (code) => reject(new Error(`The server ended (${code}).`)));
  });
  return { child, output };
}

const ended = (child: ChildProcess) => new Promise((resolve) => child.once('exit', resolve));

describe('the restore drill', () => {
  it('brings back the state of the backup after the ledger is destroyed', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    const before = await addPumps(folder, ledger, ['HP-1', 'HP-2']);
    const made = await runCommand(['backup', backup, '--ledger', ledger, '--json']);
    expect(made.exitCode).toBe(0);
    expect(made.json()).toMatchObject({ head: before });
    const state = await stateOf(folder, ledger);
    await addPumps(folder, ledger, ['HP-3']);
    for (const ending of ['', '-wal', '-shm']) rmSync(`${ledger}${ending}`, { force: true });

    const restored = await runCommand(['restore', backup, '--ledger', ledger, '--json']);
    expect(restored.json()).toMatchObject({ from: before, givenUp: null, entriesGivenUp: 0, kept: null });
    expect((await headOf(ledger)).seq).toBe(before.seq + 1);
    expect(await stateOf(folder, ledger)).toBe(state);
    await addPumps(folder, ledger, ['HP-3']);
  });

  it('needs no force where the only thing newer is that the backup was made', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    const before = await addPumps(folder, ledger, ['HP-1']);
    await runCommand(['backup', backup, '--ledger', ledger]);
    await runCommand(['backup', join(folder, 'another.backup'), '--ledger', ledger]);
    const restored = await runCommand(['restore', backup, '--ledger', ledger, '--json']);
    expect(restored.exitCode).toBe(0);
    expect(restored.json()).toMatchObject({ from: before, givenUp: null, entriesGivenUp: 0 });
    expect(existsSync((restored.json() as { kept: string }).kept)).toBe(true);
  });

  it('voids invitations and codes that were open when the backup was made', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    await addPumps(folder, ledger, ['HP-1']);
    const storage = outcomeValue(openSqliteStorage(ledger, { sha256, mode: 'existing' }));
    const expiresAt = '2999-01-01T00:00:00.000Z';
    const pass = { device: 'd', codeHash: 'c', codeExpiresAt: expiresAt, tokenHash: 't' };
    outcomeValue(
      await storage.credentials.change([
        { change: 'set-password', person: 'p', hash: 'h' },
        { change: 'set-invitation', invitation: { person: 'p', codeHash: 'c', expiresAt } },
        { change: 'set-device-pass', pass },
      ]),
    );
    await storage.close();
    await runCommand(['backup', backup, '--ledger', ledger]);
    expect((await runCommand(['restore', backup, '--ledger', ledger])).exitCode).toBe(0);
    const { credentials, close } = outcomeValue(openSqliteStorage(ledger, { sha256, mode: 'existing' }));
    expect(await credentials.invitation('p')).toBeNull();
    expect(await credentials.devicePass('d')).toEqual({ ...pass, codeHash: null });
    expect(await credentials.passwordHash('p')).toBe('h');
    await close();
  });

  it('goes on after a ledger that is destroyed beyond reading, which is kept', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    await addPumps(folder, ledger, ['HP-1']);
    await runCommand(['backup', backup, '--ledger', ledger]);
    writeFileSync(ledger, 'sand');
    const refused = await runCommand(['restore', backup, '--ledger', ledger, '--json']);
    expect(refused.exitCode).toBe(2);
    expect(refused.json()).toMatchObject({ problem: { code: 'restore-loses-entries' } });
    expect(readFileSync(ledger, 'utf8')).toBe('sand');
    const why = ['--force', '--reason', 'The disk broke.'];
    const restored = await runCommand(['restore', backup, '--ledger', ledger, '--json', ...why]);
    const { kept } = restored.json() as { kept: string };
    expect(readFileSync(kept, 'utf8')).toBe('sand');
    expect((await headOf(ledger)).seq).toBe(2);
  });
});

describe('jackledger backup', () => {
  it('writes a file for its owner alone, a manifest that is true of it, and an entry it does not hold itself', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    const before = await addPumps(folder, ledger, ['HP-1']);
    expect((await runCommand(['backup', backup, '--ledger', ledger])).exitCode).toBe(0);
    const manifest = backupManifest.parse(JSON.parse(readFileSync(`${backup}.json`, 'utf8')));
    const bytes = readFileSync(backup);
    expect(manifest).toMatchObject({
      head: before,
      shortHead: writeShortHead(before),
      bytes: bytes.length,
      sha256: createHash('sha256').update(bytes).digest('hex'),
      ledger: 'plant.ledger',
    });
    for (const file of [backup, `${backup}.json`]) expect((statSync(file).mode & 0o777).toString(8)).toBe('600');
    expect(await headOf(backup)).toEqual(before);
    expect((await headOf(ledger)).seq).toBe(before.seq + 1);
    expect(readdirSync(folder).filter((name) => name.startsWith('.new-'))).toEqual([]);
  });

  it('never writes over a file, and says where it cannot write', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const head = await addPumps(folder, ledger, ['HP-1']);
    const taken = join(folder, 'taken');
    writeFileSync(taken, 'mine');
    writeFileSync(join(folder, 'other.json'), 'mine too');
    for (const target of [taken, join(folder, 'other'), ledger]) {
      const refused = await runCommand(['backup', target, '--ledger', ledger, '--json']);
      expect(refused.exitCode).toBe(1);
      expect(refused.json()).toMatchObject({ problem: { code: 'file-exists' } });
    }
    expect(readFileSync(taken, 'utf8')).toBe('mine');
    const nowhere = await runCommand(['backup', join(folder, 'missing', 'b'), '--ledger', ledger, '--json']);
    expect(nowhere.json()).toMatchObject({ problem: { code: 'file-not-found' } });
    expect(await headOf(ledger)).toEqual(head);
  });
});

describe('jackledger restore', () => {
  it('refuses to give entries up, and with a reason gives them up in writing', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    const before = await addPumps(folder, ledger, ['HP-1']);
    await runCommand(['backup', backup, '--ledger', ledger]);
    const newest = await addPumps(folder, ledger, ['HP-2', 'HP-3']);
    const refused = await runCommand(['restore', backup, '--ledger', ledger, '--json']);
    expect(refused.exitCode).toBe(2);
    expect(refused.json()).toMatchObject({ problem: { code: 'restore-loses-entries', given: '2 entries' } });
    for (const head of [before, newest]) expect(refused.errors).toContain(writeShortHead(head));
    expect(await headOf(ledger)).toEqual(newest);
    const silent = await runCommand(['restore', backup, '--ledger', ledger, '--force', '--json']);
    expect(silent.json()).toMatchObject({ problem: { code: 'field-missing', where: '--reason' } });

    const why = ['--force', '--reason', 'Entered on the wrong plant.'];
    const forced = await runCommand(['restore', backup, '--ledger', ledger, '--json', ...why]);
    expect(forced.exitCode).toBe(0);
    expect(forced.json()).toMatchObject({ from: before, givenUp: newest, entriesGivenUp: 2 });
    const { kept } = forced.json() as { kept: string };
    expect(basename(kept)).toMatch(/^plant\.ledger\.replaced-\d{8}T\d{9}Z$/);
    expect(await headOf(kept)).toEqual(newest);
    const out = join(folder, 'out');
    await runCommand(['export', out, '--ledger', ledger]);
    const last = readFileSync(join(out, 'ledger.jsonl'), 'utf8').trim().split('\n').at(-1) ?? '';
    const { kind, body } = JSON.parse(last) as { kind: string; body: string };
    expect(kind).toBe('restored/1');
    expect(JSON.parse(body)).toEqual({ from: before, givenUp: newest, reason: 'Entered on the wrong plant.' });
  });

  it('refuses a backup with one byte changed, with or without its manifest', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    const backup = join(folder, 'plant.backup');
    await addPumps(folder, ledger, ['HP-1']);
    await runCommand(['backup', backup, '--ledger', ledger]);
    const bytes = readFileSync(backup);
    bytes.writeUInt8(bytes.readUInt8(bytes.indexOf('HP-1')) ^ 1, bytes.indexOf('HP-1'));
    writeFileSync(backup, bytes);
    const target = join(folder, 'other.ledger');
    const refused = await runCommand(['restore', backup, '--ledger', target, '--json']);
    expect(refused.exitCode).toBe(2);
    expect(refused.json()).toMatchObject({ problem: { code: 'backup-altered' } });
    rmSync(`${backup}.json`);
    const bare = await runCommand(['restore', backup, '--ledger', target, '--json']);
    expect(bare.json()).toMatchObject({ problem: { code: 'ledger-broken', where: 'entry 1' } });
    expect(existsSync(target)).toBe(false);
    expect(readdirSync(folder).filter((name) => name.startsWith('.restore-'))).toEqual([]);
  });
});

describe('a server', () => {
  it('has its ledger to itself until it ends, killed or not, while commands work beside it', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    await addPumps(folder, ledger, ['HP-1']);
    const { child } = await served(ledger);
    const second = await runCommand(['serve', '--ledger', ledger, '--port', '0', '--json']);
    expect(second.exitCode).toBe(2);
    expect(second.json()).toMatchObject({ problem: { code: 'ledger-locked' } });
    expect(second.errors).toContain(`process ${child.pid}`);
    const backup = join(folder, 'plant.backup');
    expect((await runCommand(['backup', backup, '--ledger', ledger])).exitCode).toBe(0);
    const restore = await runCommand(['restore', backup, '--ledger', ledger, '--force', '--reason', 'x', '--json']);
    expect(restore.json()).toMatchObject({ problem: { code: 'ledger-locked' } });
    await addPumps(folder, ledger, ['HP-2']);
    child.kill('SIGKILL');
    await ended(child);
    const { child: next } = await served(ledger);
    next.kill('SIGTERM');
    expect(await ended(next)).toBe(0);
    expect(existsSync(`${ledger}.held-by`)).toBe(false);
    await headOf(ledger);
  });

  it('is refused a ledger that has a second name on the disk', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    await addPumps(folder, ledger, ['HP-1']);
    linkSync(ledger, join(folder, 'second-name'));
    const refused = await runCommand(['serve', '--ledger', ledger, '--port', '0', '--json']);
    expect(refused.exitCode).toBe(2);
    expect(refused.json()).toMatchObject({ problem: { code: 'ledger-locked', given: '2 names' } });
    rmSync(join(folder, 'second-name'));
    const { child } = await served(ledger);
    child.kill('SIGTERM');
    expect(await ended(child)).toBe(0);
  });

  it('makes backups by the clock and keeps as many as it was told', async () => {
    const folder = temporaryFolder();
    const backups = temporaryFolder();
    const ledger = join(folder, 'plant.ledger');
    await addPumps(folder, ledger, ['HP-1']);
    const { child } = await served(ledger, '--backup-to', backups, '--backup-every', '0.001', '--backup-keep', '2');
    const names = () => readdirSync(backups).filter((name) => /^plant\.ledger\.backup-\d{8}T\d{9}Z$/.test(name));
    const seen = new Set<string>();
    for (let wait = 0; wait < 300 && seen.size < 4; wait += 1) {
      for (const name of names()) seen.add(name);
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    child.kill('SIGTERM');
    expect(await ended(child)).toBe(0);
    expect(seen.size).toBeGreaterThanOrEqual(4);
    expect(names()).toHaveLength(2);
    for (const name of names()) await headOf(join(backups, name));
  });

  it.each([
    [['--backup-every', '4']],
    [['--backup-to', 'x', '--backup-every', 'daily']],
    [['--backup-to', 'x', '--backup-every', '0']],
    [['--backup-to', 'x', '--backup-keep', '0']],
  ])('refuses %j', async (words) => {
    const refused = await runCommand(['serve', ...words, '--json']);
    expect(refused.exitCode).toBe(1);
    expect(refused.json()).toMatchObject({ problem: { code: 'usage' } });
  });
});

describe('jackledger import --rebuild', () => {
  it('makes a ledger with the same head and state from an export, and refuses an altered one', async () => {
    const folder = temporaryFolder();
    const ledger = join(folder, 'sample.ledger');
    const environment = { JACKLEDGER_SAMPLE_LEDGER: ledger };
    await runCommand(['backup', join(folder, 'b'), '--json'], environment);
    const head = await headOf(ledger);
    expect(head.seq).toBeGreaterThan(50);
    const out = join(folder, 'out');
    await runCommand(['export', out, '--ledger', ledger]);
    const rebuilt = join(folder, 'rebuilt.ledger');
    const run = await runCommand(['import', out, '--rebuild', '--ledger', rebuilt, '--json']);
    expect(run.json()).toEqual({ ledger: rebuilt, head });
    expect(await headOf(rebuilt)).toEqual(head);
    const again = join(folder, 'again');
    await runCommand(['export', again, '--ledger', rebuilt]);
    for (const name of ['equipment.json', 'ledger.jsonl', 'due.csv']) {
      expect(readFileSync(join(again, name), 'utf8')).toBe(readFileSync(join(out, name), 'utf8'));
    }
    const over = await runCommand(['import', out, '--rebuild', '--ledger', rebuilt, '--json']);
    expect(over.json()).toMatchObject({ problem: { code: 'file-exists' } });

    const lines = readFileSync(join(out, 'ledger.jsonl'), 'utf8').split('\n');
    const refusals = [
      [lines.with(4, lines[4]?.replace('"at":"2', '"at":"3') ?? ''), 'ledger-broken', 'entry 5'],
      [lines.toSpliced(6, 1), 'ledger-broken', 'entry 7'],
      [lines.with(2, '{"seq":'), 'sheet-not-readable', 'ledger.jsonl, line 3'],
      [[...lines.slice(0, -2), ''], 'ledger-broken', 'head.json'],
    ] as const;
    for (const [altered, code, where] of refusals) {
      writeFileSync(join(out, 'ledger.jsonl'), altered.join('\n'));
      const target = join(folder, 'third.ledger');
      const refused = await runCommand(['import', out, '--rebuild', '--ledger', target, '--json']);
      expect(refused.json()).toMatchObject({ problem: { code, where } });
      expect(existsSync(target)).toBe(false);
    }
  });
});
