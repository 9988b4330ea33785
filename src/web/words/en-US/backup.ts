// Texts about the backups of the ledger.

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

export const backup = {
  title: 'Backup of the ledger',
  none: 'There is no backup of the ledger yet.',
  last: (age: string) => `Last good backup of the ledger: ${age} old.`,
  age: (hours: number) => {
    if (hours < 1) return 'less than an hour';
    if (hours < 48) return Math.round(hours) === 1 ? '1 hour' : `${Math.round(hours)} hours`;
    return days(Math.round(hours / 24));
  },
  since: (entries: number) => {
    if (entries === 0) return 'Nothing was written since.';
    return entries === 1 ? '1 entry was written since.' : `${entries} entries were written since.`;
  },
  old: (limit: string) => `There should be one no older than ${limit}.`,
  file: (file: string, when: string, head: string) => `${file}, made ${when}, head ${head}`,
  schedule: (every: number, keep: number, due: string) =>
    `The server makes one every ${every === 1 ? 'hour' : `${every} hours`} and keeps ${keep}. The next is due ${due}.`,
  noSchedule: 'The server makes none by itself: start it with --backup-to, or run the backup command.',
  failed: (when: string, message: string) => `The last try, ${when}, failed: ${message}`,
} as const;
