// Backups by the clock while a server runs: one as soon as the last is too old, the oldest beyond a number removed.

import type { Problem } from '../domain/problem.ts';
import type { BackupFiles } from '../storage/ledger-backup.ts';
import { backUp } from './back-up.ts';
import type { Plant } from './plant.ts';
import { programActor } from './program-actor.ts';

export interface BackupSchedule {
  readonly folder: string;
  readonly everyHours: number;
  /** How many backups of this ledger stay in the folder. */
  readonly keep: number;
  /** File name of the ledger. */
  readonly ledger: string;
}

const hour = 3_600_000;

/** After a backup that failed. House rule: a disk that is full or away is seldom back sooner. */
const retryMilliseconds = 600_000;

/** The longest time a timer of the runtime can wait. Source: Node.js, setTimeout. */
const longestWait = 2 ** 31 - 1;

/** Milliseconds from now until the next backup is due; 0 when it is due now. */
export function backupDueIn(plant: Plant, { everyHours }: BackupSchedule): number {
  const last = plant.state.lastBackup;
  if (last === null) return 0;
  const age = Date.parse(plant.clock()) - Date.parse(last.at);
  // The clock was set back since: nobody knows how old the backup is.
  if (age < 0) return 0;
  return Math.min(longestWait, Math.max(0, everyHours * hour - age));
}

/** Makes one backup under a name of its own and removes the oldest of this ledger beyond the number to keep. */
export async function runScheduledBackup(
  plant: Plant,
  files: BackupFiles,
  { folder, keep, ledger }: BackupSchedule,
): Promise<Problem | null> {
  const nameStart = `${ledger}.backup-`;
  const file = `${folder}/${nameStart}${plant.clock().replaceAll(/[-:.]/g, '')}`;
  const made = await backUp(plant, files, { file, ledger, actor: programActor });
  if (!made.ok) return made.problem;
  for (const old of files.list(folder, nameStart).slice(0, -keep)) files.remove(old);
  return null;
}

/** Runs backups until it is stopped; each problem is reported and the backup tried again. Answers how to stop it. */
export function scheduleBackups(
  plant: Plant,
  files: BackupFiles,
  schedule: BackupSchedule,
  report: (problem: Problem) => void,
): () => Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<void> = Promise.resolve();
  let stopped = false;
  const wait = (milliseconds: number): void => {
    if (stopped) return;
    timer = setTimeout(() => {
      running = run();
    }, milliseconds);
  };
  async function run(): Promise<void> {
    const refreshed = await plant.refresh();
    const problem = refreshed.ok
      ? backupDueIn(plant, schedule) > 0
        ? null
        : await runScheduledBackup(plant, files, schedule)
      : refreshed.problem;
    if (problem !== null) report(problem);
    wait(problem === null ? backupDueIn(plant, schedule) : Math.min(retryMilliseconds, schedule.everyHours * hour));
  }
  wait(backupDueIn(plant, schedule));
  return async () => {
    stopped = true;
    clearTimeout(timer);
    await running;
  };
}
