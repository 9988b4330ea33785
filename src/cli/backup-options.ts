// The options of `jackledger serve` about backups by the clock: where to, how often, how many stay.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { BackupSchedule } from '../service/schedule-backups.ts';

const text = { type: 'string' } as const;
export const backupOptions = { 'backup-to': text, 'backup-every': text, 'backup-keep': text } as const;

/** House rule: at most a day's work is lost with the disk, and a month of days is kept. */
const defaults = { everyHours: 24, keep: 30 } as const;

type Values = { readonly [K in keyof typeof backupOptions]?: string | undefined };

/** Answers the schedule asked for; null when none is. Problem: `usage`. */
export function readBackupOptions(values: Values): Outcome<Omit<BackupSchedule, 'ledger'> | null> {
  const { 'backup-to': folder, 'backup-every': every, 'backup-keep': keep } = values;
  if (folder === undefined) {
    const given = every === undefined ? (keep === undefined ? null : '--backup-keep') : '--backup-every';
    if (given === null) return succeed(null);
    return fail('usage', `${given} says nothing without a folder.`, { where: given, needed: '--backup-to FOLDER' });
  }
  const everyHours = every === undefined ? defaults.everyHours : Number(every);
  if (!/^\d{1,3}(\.\d{1,3})?$/.test(every ?? '24') || everyHours <= 0) {
    return fail('usage', `"${every}" is not a number of hours.`, {
      where: '--backup-every',
      needed: 'hours above 0 and below 1000, for example 24',
      given: every ?? '',
    });
  }
  if (!/^[1-9]\d{0,3}$/.test(keep ?? '30')) {
    return fail('usage', `"${keep}" is not a number of backups.`, {
      where: '--backup-keep',
      needed: 'a whole number from 1 to 9999',
      given: keep ?? '',
    });
  }
  return succeed({ folder, everyHours, keep: keep === undefined ? defaults.keep : Number(keep) });
}
