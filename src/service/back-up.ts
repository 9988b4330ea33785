// Making a backup of the ledger: a verified copy with its manifest, then the entry that says so.
// When one is due is in schedule-backups.ts, putting one back in restore.ts.

import { type BackupManifest, backupManifestFormat } from '../contract/backup-manifest.ts';
import type { PlantAnswer } from '../contract/plant.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import type { BackupFacts, BackupFiles } from '../storage/ledger-backup.ts';
import type { Plant } from './plant.ts';

export interface BackupRequest {
  /** Where the copy goes. */
  readonly file: string;
  /** File name of the ledger, for the manifest. */
  readonly ledger: string;
  /** Id of the one who makes it. */
  readonly actor: string;
}

const mostTries = 5;

/**
 * Makes a backup of everything up to now and notes it in the ledger, as an entry that the backup itself does not hold.
 * Problems: those of `BackupFiles.write`; where the entry cannot be written, its problem, and the backup is there.
 */
export async function backUp(
  plant: Plant,
  files: BackupFiles,
  { file, ledger, actor }: BackupRequest,
): Promise<Outcome<BackupManifest>> {
  const madeAt = plant.clock();
  const manifestOf = (facts: BackupFacts): BackupManifest => ({
    format: backupManifestFormat,
    ...facts,
    shortHead: writeShortHead(facts.head),
    madeAt,
    ledger,
  });
  const written = await files.write(file, (facts) => `${JSON.stringify(manifestOf(facts), null, 2)}\n`);
  if (!written.ok) return written;
  const noted = await note(plant, fileNameOf(file), written.value, actor);
  if (noted.ok) return succeed(manifestOf(written.value));
  const { code, message, ...rest } = noted.problem;
  return fail(code, `The backup ${file} is made and verifies, but the ledger does not say so: ${message}`, rest);
}

async function note(plant: Plant, subject: string, facts: BackupFacts, actor: string): Promise<Outcome<unknown>> {
  for (let attempt = 1; ; attempt += 1) {
    const refreshed = await plant.refresh();
    if (!refreshed.ok) return refreshed;
    const at = plant.clock();
    const appended = await plant.append([{ at, actor, kind: 'backup-made/1', subject, body: { ...facts } }], null);
    if (appended.ok || appended.problem.code !== 'ledger-conflict' || attempt >= mostTries) return appended;
  }
}

/** The last backup the ledger knows of, with its age in hours; null when there is none. */
export function lastBackupOf(plant: Plant): PlantAnswer['lastBackup'] {
  const last = plant.state.lastBackup;
  if (last === null) return null;
  const age = Date.parse(plant.clock()) - Date.parse(last.at);
  return { file: last.file, at: last.at, ageHours: Math.round(age / 360_000) / 10, seq: last.head.seq };
}

/** The last part of a path, with slashes of either kind. */
export function fileNameOf(path: string): string {
  return path.split(/[/\\]/).at(-1) ?? path;
}
