// Opening a ledger of 100,000 entries: verified from the first entry to the last, then replayed, in a fresh process.
// The process that does it is open-large-ledger.ts.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { openSqliteStorage } from '../../src/storage/sqlite/open-storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import {
  approval,
  holdPlaced,
  instant,
  plantBeforeCalibration,
  runRecorded,
  runSheet,
} from '../storage/plant-entries.ts';
import { type Benchmark, median } from './benchmark.ts';

const entryCount = 100_000;
const pairCount = 500;
const program = fileURLToPath(new URL('./open-large-ledger.ts', import.meta.url));

interface Opening {
  readonly entries: number;
  readonly verifySeconds: number;
  readonly totalSeconds: number;
  readonly mostMegabytes: number;
}

/** Of ten entries two are run sheets of 30 points, two their approvals, six short: holds placed and lifted. */
function entryAt(index: number): NewEntry {
  const pair = `P-${index % pairCount}`;
  const number = `CAL-${Math.floor(index / 10)}`;
  switch (index % 10) {
    case 0:
      return runRecorded(index, `${number}-A`, 'tess', pair, runSheet(10));
    case 1:
      return approval(index, `${number}-A`);
    case 5:
      return runRecorded(index, `${number}-B`, 'tess', pair, runSheet(10));
    case 6:
      return approval(index, `${number}-B`);
    default:
      return index % 2 === 0
        ? holdPlaced(index, 'Dropped from the bed.', pair)
        : { at: instant(index), actor: 'quinn', kind: 'hold-lifted/1', subject: pair, body: { reason: 'Sound.' } };
  }
}

async function makeLargeLedger(file: string): Promise<void> {
  const storage = outcomeValue(openSqliteStorage(file, { sha256, mode: 'create' }));
  const pairs = Array.from({ length: pairCount }, (_, index): NewEntry => {
    const pair = { tag: `P-${index}`, jack: `J-${index}`, gauge: `G-${index}`, formedOn: '2026-01-05' };
    return { at: instant(index), actor: 'tess', kind: 'pair-formed/1', subject: pair.tag, body: { pair } };
  });
  const opening = [...plantBeforeCalibration().filter(({ kind }) => kind !== 'pair-formed/1'), ...pairs];
  const rest = Array.from({ length: entryCount - opening.length }, (_, index) => entryAt(index));
  const all = [...opening, ...rest];
  for (let done = 0; done < all.length; done += 1000) {
    outcomeValue(await storage.ledger.append({ entries: all.slice(done, done + 1000), expectedSeq: done }));
  }
  await storage.close();
}

function openInFreshProcess(file: string): Opening {
  const said = execFileSync(process.execPath, ['--import', 'tsx', program, file], { encoding: 'utf8' });
  return JSON.parse(said) as Opening;
}

export const largeLedger: Benchmark = {
  name: 'large-ledger',
  async measure() {
    const folder = mkdtempSync(join(tmpdir(), 'jackledger-'));
    const file = join(folder, 'large.ledger');
    await makeLargeLedger(file);
    const megabytes = (statSync(file).size / 1e6).toFixed(0);
    const openings = [1, 2, 3].map(() => openInFreshProcess(file));
    rmSync(folder, { recursive: true, force: true });
    const seconds = median(openings.map(({ totalSeconds }) => totalSeconds));
    const verifySeconds = median(openings.map((opening) => opening.verifySeconds));
    const most = Math.max(...openings.map(({ mostMegabytes }) => mostMegabytes));
    const entries = openings[0]?.entries.toLocaleString('en-US');
    const what = `open, verify, replay ${entries} entries (${megabytes} MB)`;
    return [
      {
        what: `${what}: time`,
        measured: `${seconds.toFixed(2)} s (verify ${verifySeconds.toFixed(2)} s)`,
        budget: 'under 5 s',
        met: seconds < 5,
      },
      { what: `${what}: memory`, measured: `${most.toFixed(0)} MB`, budget: 'under 300 MB', met: most < 300 },
    ];
  },
};
