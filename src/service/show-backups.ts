// The last good backup as quality sees it, whether it is too old, and how the server's schedule stands.
// Making one is in back-up.ts, when one is due in schedule-backups.ts.

import type { BackupsAnswer } from '../contract/backup.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import type { Plant } from './plant.ts';
import type { BackupSchedule } from './schedule-backups.ts';

/** What the one who runs the schedule tells those who show it. */
export interface BackupWatch {
  readonly schedule: Pick<BackupSchedule, 'everyHours' | 'keep'>;
  /** The last try, where it failed. */
  failure: { readonly at: string; readonly message: string } | null;
}

const hour = 3_600_000;

/** A week of entries is the most a plant can write down anew from its papers. House rule; a schedule sets its own. */
const limitHoursUnscheduled = 7 * 24;

/** With a schedule, two turns may pass: one that failed is tried again before anybody needs to worry. House rule. */
const turnsAllowed = 2;

/** Answers the last backup with its age, the entries since, and the schedule; null where the server keeps none. */
export function showBackups(plant: Plant, watch: BackupWatch | null): BackupsAnswer {
  const { lastBackup, head } = plant.state;
  const now = Date.parse(plant.clock());
  const limitHours = watch === null ? limitHoursUnscheduled : turnsAllowed * watch.schedule.everyHours;
  // The entry that notes a backup stands after those the backup holds, and is nothing that would be lost.
  const entriesSince = lastBackup === null ? head.seq : Math.max(0, head.seq - lastBackup.head.seq - 1);
  const age = lastBackup === null ? 0 : now - Date.parse(lastBackup.at);
  const lastFailed = watch?.failure ?? null;
  return {
    last:
      lastBackup === null
        ? null
        : {
            file: lastBackup.file,
            at: lastBackup.at,
            by: lastBackup.by,
            ageHours: Math.round(age / 360_000) / 10,
            head: lastBackup.head,
            shortHead: writeShortHead(lastBackup.head),
            bytes: lastBackup.bytes,
            entriesSince,
          },
    limitHours,
    isOld: lastBackup === null ? head.seq > 0 : age > limitHours * hour && entriesSince > 0,
    schedule:
      watch === null
        ? null
        : {
            everyHours: watch.schedule.everyHours,
            keep: watch.schedule.keep,
            dueAt: new Date(
              lastBackup === null ? now : Date.parse(lastBackup.at) + watch.schedule.everyHours * hour,
            ).toISOString(),
            failure: lastBackup !== null && lastFailed !== null && lastFailed.at <= lastBackup.at ? null : lastFailed,
          },
  };
}
