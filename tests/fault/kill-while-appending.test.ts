// A process killed in the middle of appending loses nothing it acknowledged and leaves no action half done.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from '../storage/collect.ts';
import { temporaryFolder } from '../storage/temporary-folder.ts';
import { seededRandom } from './seeded-random.ts';

const program = fileURLToPath(new URL('./append-until-killed.ts', import.meta.url));
const rounds = 20;

/** Lets the program append for a while, kills it, and answers the last sequence number it acknowledged. */
async function appendThenKill(file: string, acknowledgements: number, milliseconds: number): Promise<number> {
  const child = spawn(process.execPath, ['--import', 'tsx', program, file], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  let complaint = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    complaint += text;
  });
  const enough = new Promise<void>((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      if (said.split('\n').length > acknowledgements) resolve();
    });
    child.once('exit', (code) => reject(new Error(`The program ended by itself (${String(code)}): ${complaint}`)));
  });
  await enough;
  await delay(milliseconds);
  const closed = once(child, 'close');
  child.kill('SIGKILL');
  expect((await closed)[1]).toBe('SIGKILL');
  // What it wrote before it died is complete lines, save perhaps the last.
  return Number(said.slice(0, said.lastIndexOf('\n')).split('\n').at(-1));
}

it(`keeps every acknowledged action whole through ${rounds} kills`, async () => {
  const file = join(temporaryFolder(), 'plant.ledger');
  const random = seededRandom(20260105);
  let stored = 0;
  for (let round = 0; round < rounds; round += 1) {
    const acknowledged = await appendThenKill(file, 1 + random(40), random(8));
    const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'existing' }));
    const entries = await collect(storage.ledger.readEntries(0));
    const inFlight = 1 + (acknowledged % 3);
    expect(acknowledged).toBeGreaterThan(stored);
    stored = (await storage.ledger.head()).seq;
    expect([acknowledged, acknowledged + inFlight]).toContain(stored);
    expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: stored }, (_, index) => index + 1));
    expect(entries.at(-1)?.body).toMatchObject({ reason: expect.stringMatching(/^part (\d) of \1$/) });
    expect(await verifyLedger(storage.rows.readStoredRows(0), sha256)).toMatchObject({ ok: true });
    // The answer to a retry is there exactly when the action is.
    const key = `action after ${acknowledged}`;
    expect(await storage.ledger.rememberedAnswer({ key, requestHash: key })).toEqual({
      ok: true,
      value: stored === acknowledged ? null : String(stored),
    });
    await storage.close();
  }
}, 120_000);
