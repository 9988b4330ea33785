// A disk that is full: the action is refused in words, what was acknowledged stays, and work goes on once there is room.

import { closeSync, existsSync, openSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteLedgerStore } from '../../src/storage/sqlite/ledger-store.ts';
import { openDatabase } from '../../src/storage/sqlite/open-database.ts';
import { root, runCommand } from '../cli/run-command.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { holdPlaced, runRecorded } from '../storage/plant-entries.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';
import { mayMount, spawnWithMounts } from './in-mount-namespace.ts';

it('refuses an action on a full disk as a whole, and takes it once there is room', async () => {
  const file = join(temporaryFolder(), 'plant.ledger');
  const database = outcomeValue(openDatabase(file, { mode: 'create' }));
  const ledger = openSqliteLedgerStore(database, { sha256 });
  const verified = () => verifyLedger(ledger.readStoredRows(0), sha256);
  // SQLite says the same as on a full disk when a file may not grow beyond so many pages.
  const pages = Number(database.pragma('page_count', { simple: true }));
  database.pragma(`max_page_count = ${pages + 12}`);
  const append = async (seq: number) => {
    const key = `action after ${seq}`;
    const entries = [holdPlaced(seq, 'before the run'), runRecorded(seq, `CAL-${seq}`)];
    const idempotency = { key, requestHash: key, answer: () => '"stored"' };
    return ledger.append({ entries, expectedSeq: seq, idempotency });
  };

  let acknowledged = 0;
  let last = await append(0);
  while (last.ok && acknowledged < 1000) {
    acknowledged += 2;
    last = await append(acknowledged);
  }
  expect(acknowledged).toBeGreaterThan(2);
  expect(last).toMatchObject({ ok: false, problem: { code: 'ledger-write-failed', given: 'SQLITE_FULL' } });
  expect(last.ok ? '' : last.problem.message).toContain('The disk is full; nothing was stored.');

  expect(await ledger.head()).toMatchObject({ seq: acknowledged });
  expect(await collect(ledger.readEntries(0))).toHaveLength(acknowledged);
  expect(await verified()).toMatchObject({ ok: true, value: { entries: acknowledged } });
  const key = `action after ${acknowledged}`;
  expect(await ledger.rememberedAnswer({ key, requestHash: key })).toEqual({ ok: true, value: null });

  database.pragma('max_page_count = 1000000');
  expect(await append(acknowledged)).toMatchObject({ ok: true });
  expect(await verified()).toMatchObject({ ok: true, value: { entries: acknowledged + 2 } });
  await ledger.close();
});

/** A server of the sample plant on a disk of its own, 16 MB large, and the way to that disk from outside. */
async function serverOnSmallDisk() {
  const folder = temporaryFolder();
  const ledger = join(temporaryFolder(), 'sample.ledger');
  await runCommand(['backup', join(temporaryFolder(), 'b')], { JACKLEDGER_SAMPLE_LEDGER: ledger });
  const script = 'mount -t tmpfs -o size=16m tmpfs "$1"; cp "$2" "$1/plant.ledger"; cd "$1"; shift 2; exec "$@"';
  const program = [process.execPath, join(root, 'src/cli/jackledger.mjs'), 'serve', '--ledger', 'plant.ledger'];
  const child = spawnWithMounts(script, [folder, ledger, ...program, '--port', '0', '--json']);
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    child.stdout.on('data', (chunk) => {
      said += chunk;
      if (said.includes('}')) resolve((JSON.parse(said) as { address: string }).address);
    });
    child.once('exit', (code) => reject(new Error(`The server ended (${code}).`)));
  });
  return { address, disk: `/proc/${child.pid}/root${folder}` };
}

it.skipIf(!mayMount)(
  'a server on a full disk goes on with look-ups, refuses to write in words, and writes again',
  async () => {
    const { address, disk } = await serverOnSmallDisk();
    const ask = (path: string, cookie = '', body?: unknown) =>
      fetch(`${address}${path}`, {
        headers: { cookie, ...(body === undefined ? {} : { 'content-type': 'application/json' }) },
        ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
      });
    const { people, samplePassword } = (await (await ask('/api/people')).json()) as {
      people: readonly { id: string; role: string }[];
      samplePassword: string;
    };
    const person = people.find(({ role }) => role === 'technician')?.id;
    const session = await ask('/api/session', '', { person, password: samplePassword });
    const cookie = session.headers.get('set-cookie')?.split(';')[0] ?? '';
    const register = (tag: string) => ask('/api/pumps', cookie, { tag, serial: '1' });
    const lookUp = async (force: string) => {
      const answer = await ask(`/api/pairs/P-01/lookup?force=${encodeURIComponent(force)}`, cookie);
      return { status: answer.status, outcome: ((await answer.json()) as { outcome?: string }).outcome };
    };
    expect(await lookUp('30 kip')).toEqual({ status: 200, outcome: 'given' });
    expect((await register('HP-90')).status).toBe(201);

    expect(existsSync(join(disk, 'plant.ledger'))).toBe(true);
    const filler = join(disk, 'filler');
    fillDisk(filler);
    let registered = 90;
    let refused = await register('HP-91');
    // What was free in the log is used up first.
    while (refused.status === 201 && registered < 400) {
      registered += 1;
      refused = await register(`HP-${registered + 1}`);
    }
    expect(refused.status).toBe(503);
    expect(await refused.json()).toMatchObject({ code: 'ledger-write-failed', given: 'SQLITE_FULL' });
    for (const force of ['20 kip', '25 kip', '30 kip']) expect((await lookUp(force)).status).toBe(200);
    expect((await ask('/api/due')).status).toBe(200);
    expect(await (await ask('/api/ledger/verification')).json()).toMatchObject({ verified: true });

    rmSync(filler);
    expect((await register(`HP-${registered + 1}`)).status).toBe(201);
    expect(await (await ask('/api/ledger/verification')).json()).toMatchObject({ verified: true });
  },
);

/** Writes until nothing fits any more. */
function fillDisk(file: string): void {
  const handle = openSync(file, 'w');
  try {
    for (const size of [65_536, 4096]) {
      try {
        for (;;) writeSync(handle, Buffer.alloc(size));
      } catch (error) {
        if (!(error instanceof Error && 'code' in error && error.code === 'ENOSPC')) throw error;
      }
    }
  } finally {
    closeSync(handle);
  }
}
