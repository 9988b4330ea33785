// Kills a process in the middle of appending, again and again, and holds what the file has against what was acknowledged.
// A few hundred kills are a test (kill-while-appending.test.ts); kill-many.ts does thousands.

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { PlantState } from '../../src/ledger/plant-state.ts';
import { createReplay } from '../../src/ledger/replay.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { stateDigests } from '../state-digests.ts';
import { collect } from '../storage/collect.ts';
import { seededRandom } from './seeded-random.ts';

export interface KillFigures {
  readonly kills: number;
  /** Entries acknowledged, over all ledgers. */
  readonly acknowledged: number;
  readonly stored: number;
  /** Kills after which the action in flight was stored as a whole, though nobody heard of it. */
  readonly inFlightStored: number;
  /** What went wrong, in words; the reason for all of this. */
  readonly faults: readonly string[];
}

/** A ledger is given up after so many kills, so that reading it whole after each of them stays short. */
const killsPerLedger = 50;

/** Kills so many times; the same seed kills at about the same moments. */
export async function runKills(kills: number, seed: number): Promise<KillFigures> {
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-kills-'));
  const figures = { kills: 0, acknowledged: 0, stored: 0, inFlightStored: 0, faults: [] as string[] };
  try {
    const program = await buildProgram(folder);
    const random = seededRandom(seed);
    for (let first = 0; first < kills; first += killsPerLedger) {
      const file = join(folder, `plant-${first}.ledger`);
      const { state, apply } = createReplay();
      for (let round = 0; round < Math.min(killsPerLedger, kills - first); round += 1) {
        const acknowledged = await appendThenKill(program, file, 1 + random(12), random(3000));
        const found = await examine(file, acknowledged, state.head.seq, apply, () => digestOf(state));
        figures.kills += 1;
        figures.faults.push(...found.faults.map((fault) => `kill ${figures.kills}: ${fault}`));
        if (found.stored > acknowledged) figures.inFlightStored += 1;
        if (round === Math.min(killsPerLedger, kills - first) - 1) {
          figures.acknowledged += acknowledged;
          figures.stored += found.stored;
        }
      }
    }
    return figures;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The program as plain JavaScript: it starts in a tenth of the time, so that ten times as many kills fit. */
async function buildProgram(folder: string): Promise<string> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    build: {
      ssr: join(root, 'tests/fault/append-until-killed.ts'),
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: 'append-until-killed.mjs' } },
    },
  });
  return join(folder, 'append-until-killed.mjs');
}

/** Lets the program append for a while, kills it, and answers the last sequence number it acknowledged. */
async function appendThenKill(
  program: string,
  file: string,
  acknowledgements: number,
  microseconds: number,
): Promise<number> {
  const child = spawn(process.execPath, [program, file], { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  let complaint = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    complaint += text;
  });
  await new Promise<void>((resolve, reject) => {
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      if (said.split('\n').length > acknowledgements) resolve();
    });
    child.once('exit', (code) => reject(new Error(`The program ended by itself (${String(code)}): ${complaint}`)));
  });
  const until = performance.now() + microseconds / 1000;
  while (performance.now() < until);
  const closed = once(child, 'close');
  child.kill('SIGKILL');
  if ((await closed)[1] !== 'SIGKILL') throw new Error(`The program was not killed: ${complaint}`);
  // What it wrote before it died is complete lines, save perhaps the last.
  return Number(said.slice(0, said.lastIndexOf('\n')).split('\n').at(-1));
}

const digestOf = (state: PlantState): string => JSON.stringify(stateDigests(state));

async function examine(
  file: string,
  acknowledged: number,
  before: number,
  apply: ReturnType<typeof createReplay>['apply'],
  digest: () => string,
): Promise<{ readonly stored: number; readonly faults: readonly string[] }> {
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'existing' }));
  const faults: string[] = [];
  const entries = await collect(storage.ledger.readEntries(0));
  const stored = (await storage.ledger.head()).seq;
  const inFlight = 1 + (acknowledged % 3);
  if (acknowledged <= before) faults.push(`nothing was acknowledged after entry ${before}`);
  if (stored !== acknowledged && stored !== acknowledged + inFlight) {
    faults.push(`${acknowledged} acknowledged, ${inFlight} in flight, ${stored} stored`);
  }
  if (entries.length !== stored || entries.some(({ seq }, index) => seq !== index + 1)) faults.push('a gap');
  const last = entries.at(-1);
  const reason = last?.kind === 'hold-placed/1' ? last.body.reason : '';
  if (!/^part (\d) of \1$/.test(reason)) faults.push(`an action half stored: ${reason}`);
  const verified = await verifyLedger(storage.rows.readStoredRows(0), sha256);
  if (!verified.ok) faults.push(verified.problem.message);
  // The answer to a retry is there exactly when the action is.
  const key = `action after ${acknowledged}`;
  const answer = outcomeValue(await storage.ledger.rememberedAnswer({ key, requestHash: key }));
  if (answer !== (stored === acknowledged ? null : String(stored))) faults.push(`a retry is answered ${answer}`);
  // Grown entry by entry through all kills, and replayed from the start: the same plant.
  for (const entry of entries.slice(before)) apply(entry);
  const fresh = createReplay();
  for (const entry of entries) fresh.apply(entry);
  if (digestOf(fresh.state) !== digest()) faults.push('the replay gives another plant');
  await storage.close();
  return { stored, faults };
}
