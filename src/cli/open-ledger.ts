// Opens the ledger a command works on: the file named, the plant's own, or the sample plant laid out for today.
// This is the one place that names a concrete store and the machine's clock, tokens and password hashing.

import { randomBytes } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { hash, verify } from '@node-rs/argon2';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { VerifiedLedger } from '../ledger/verify.ts';
import { attachmentFolder } from '../service/export-plant.ts';
import { layOutSamplePlant, type SampleFiles, samplePassword } from '../service/lay-out-sample-plant.ts';
import { commandLineActor } from '../service/perform-action.ts';
import { openPlant, type PlantPorts } from '../service/plant.ts';
import { readExportedLedger } from '../service/rebuild-ledger.ts';
import { type RestoreReport, restore } from '../service/restore.ts';
import { verifyPlant } from '../service/verify-ledger.ts';
import { hmacSha1 } from '../storage/hmac-sha1.ts';
import type { LedgerHead } from '../storage/ledger-store.ts';
import { openMemoryStorage } from '../storage/memory/open-storage.ts';
import { sha256 } from '../storage/sha256.ts';
import { openSqliteStorage } from '../storage/sqlite/open-storage.ts';
import { putInPlace } from '../storage/sqlite/put-in-place.ts';
import { rebuildLedgerFile } from '../storage/sqlite/rebuild-ledger-file.ts';
import { stageSqliteRestore } from '../storage/sqlite/stage-restore.ts';
import { sweepLeftovers } from '../storage/sqlite/sweep-leftovers.ts';
import { type Lease, takeLease } from '../storage/sqlite/take-lease.ts';
import { sqliteBackupFiles } from '../storage/sqlite/write-backup.ts';
import type { Storage } from '../storage/storage.ts';
import type { OpenedPlant, OpenFor } from './command.ts';

export interface LedgerPlaces {
  /** The folder `calibrations/`. */
  readonly folder: string;
  /** Where the sample plant's ledger lies, when it is not to be laid out in `folder`. */
  readonly sampleLedger: string | undefined;
  readonly warn: (text: string) => void;
}

/** argon2id with 64 MiB, 3 passes, 4 lanes: the second recommended option of RFC 9106 4 (from memory). */
const hashing = { memoryCost: 65_536, timeCost: 3, parallelism: 4 } as const;

const clock = (): string => new Date().toISOString();

function portsOn(storage: Storage): PlantPorts {
  return {
    ledger: storage.ledger,
    credentials: storage.credentials,
    rows: storage.rows,
    attachments: storage.attachments,
    clock,
    sha256,
    hmacSha1,
    randomToken: () => randomBytes(32).toString('base64url'),
    passwords: { hash: (password) => hash(password, hashing), verify: (hashed, password) => verify(hashed, password) },
  };
}

/** The plant's own ledger, where there is one and the sample plant was not asked for by its place. */
function defaultLedger(places: LedgerPlaces, ledger: string | undefined): string | undefined {
  if (ledger !== undefined || places.sampleLedger !== undefined) return ledger;
  const own = join(places.folder, 'plant.ledger');
  return existsSync(own) ? own : undefined;
}

export async function openLedger(
  places: LedgerPlaces,
  ledger: string | undefined,
  purpose: OpenFor,
): Promise<Outcome<OpenedPlant>> {
  const file = defaultLedger(places, ledger);
  if (file === undefined) return openSamplePlant(places, purpose);
  const storage = openSqliteStorage(file, { sha256, mode: purpose === 'create' ? 'create' : 'existing' });
  return storage.ok ? opened(storage.value, file, null) : storage;
}

async function opened(storage: Storage, file: string | null, password: string | null): Promise<Outcome<OpenedPlant>> {
  const plant = await openPlant(portsOn(storage));
  if (!plant.ok) {
    await storage.close();
    return plant;
  }
  const isSample = plant.value.state.plant?.sample ?? false;
  let lease: Lease | undefined;
  return succeed({
    plant: plant.value,
    file,
    samplePassword: isSample ? (password ?? samplePassword) : null,
    backups: file === null ? null : sqliteBackupFiles(file, { sha256 }),
    holdForServer() {
      if (file === null) return succeed(undefined);
      const taken = takeLease(file, `the server of process ${process.pid}, since ${clock()}`);
      if (!taken.ok) return taken;
      lease = taken.value;
      sweepLeftovers(dirname(file), new Date(clock()));
      return succeed(undefined);
    },
    async close() {
      await storage.close();
      lease?.release();
    },
  });
}

/** A sample plant is laid out anew each day, so that its dates lie around today; what a person entered stays in its file. */
async function openSamplePlant(places: LedgerPlaces, purpose: OpenFor): Promise<Outcome<OpenedPlant>> {
  places.warn(
    'No ledger of a plant here: this is the sample plant (invented data). Name your own with --ledger FILE.\n',
  );
  const file = places.sampleLedger ?? join(places.folder, `sample-plant-${clock().slice(0, 10)}.ledger`);
  if (existsSync(file)) {
    const storage = openSqliteStorage(file, { sha256, mode: 'existing' });
    return storage.ok ? opened(storage.value, file, samplePassword) : storage;
  }
  if (purpose === 'read') {
    const storage = openMemoryStorage({ sha256 });
    const laidOut = await layOutSamplePlant(portsOn(storage), readSampleFiles(places.folder));
    return laidOut.ok ? opened(storage, null, samplePassword) : laidOut;
  }
  const draft = `${file}.${process.pid}`;
  const storage = openSqliteStorage(draft, { sha256, mode: 'create' });
  if (!storage.ok) return storage;
  const laidOut = await layOutSamplePlant(portsOn(storage.value), readSampleFiles(places.folder));
  await storage.value.close();
  if (!laidOut.ok) {
    rmSync(draft, { force: true });
    return laidOut;
  }
  // Where another process laid it out first, its file stays, with whatever was entered there.
  putInPlace(draft, file);
  rmSync(draft, { force: true });
  const reopened = openSqliteStorage(file, { sha256, mode: 'existing' });
  return reopened.ok ? opened(reopened.value, file, samplePassword) : reopened;
}

function readSampleFiles(folder: string): SampleFiles {
  const sample = join(folder, 'sample-plant');
  const sheets = join(sample, 'run-sheets');
  return {
    plant: readFileSync(join(sample, 'plant.json'), 'utf8'),
    runSheets: readdirSync(sheets)
      .sort()
      .map((name) => ({ name, text: readFileSync(join(sheets, name), 'utf8') })),
  };
}

/** Verifies a ledger without replaying it, so that one that cannot be replayed is still read to its first bad entry. */
export async function verifyLedgerFile(
  places: LedgerPlaces,
  ledger: string | undefined,
  find: number | null,
): Promise<Outcome<VerifiedLedger>> {
  const file = defaultLedger(places, ledger);
  if (file === undefined) {
    const sample = await openSamplePlant(places, 'read');
    if (!sample.ok) return sample;
    const { plant, close } = sample.value;
    const verified = await verifyPlant(plant, find);
    await close();
    return verified;
  }
  const storage = openSqliteStorage(file, { sha256, mode: 'read-only' });
  if (!storage.ok) return storage;
  const verified = await verifyPlant({ ...storage.value, sha256 }, find);
  await storage.value.close();
  return verified;
}

export interface WhyRestore {
  /** Why entries may be given up; null gives up none. */
  readonly force: string | null;
  /** Why the backup is put back, where nothing is given up. */
  readonly reason: string;
  readonly userName: string;
}

/** Puts a backup in the place of the ledger, held against servers and commands alike. Problems: those of `restore`. */
export async function restoreLedger(
  places: LedgerPlaces,
  backup: string,
  ledger: string | undefined,
  { force, reason, userName }: WhyRestore,
): Promise<Outcome<RestoreReport & { readonly file: string }>> {
  const file = ledger ?? join(places.folder, 'plant.ledger');
  const lease = takeLease(file, `a restore of process ${process.pid}, since ${clock()}`);
  if (!lease.ok) return lease;
  try {
    const staged = await stageSqliteRestore(backup, file, { sha256 });
    if (!staged.ok) return staged;
    const actor = commandLineActor(userName).id;
    const restored = await restore(staged.value, { backup, actor, clock, sha256, force, reason });
    return restored.ok ? succeed({ ...restored.value, file }) : restored;
  } finally {
    lease.value.release();
  }
}

/** Makes a new ledger of the entries in an exported folder. Problems: those of `readExportedLedger` and of writing. */
export async function rebuildLedger(folder: string, ledger: string): Promise<Outcome<LedgerHead>> {
  const exported = join(folder, 'ledger.jsonl');
  if (!existsSync(exported)) {
    return fail('file-not-found', `There is no file ${exported}.`, { where: folder, given: exported });
  }
  const files = join(folder, attachmentFolder);
  const names = existsSync(files) ? readdirSync(files) : [];
  const headFile = join(folder, 'head.json');
  const texts = {
    entries: readFileSync(exported, 'utf8'),
    head: existsSync(headFile) ? readFileSync(headFile, 'utf8') : null,
  };
  const read = await readExportedLedger(texts, sha256, async (name) => {
    const file = names.find((each) => each.startsWith(`${name}.`));
    return file === undefined ? null : readFileSync(join(files, file));
  });
  if (!read.ok) return read;
  const rebuilt = rebuildLedgerFile(ledger, read.value.rows, read.value.attachments);
  return rebuilt.ok ? succeed(read.value.head) : rebuilt;
}
