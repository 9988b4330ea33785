// How the ledger is backed up, for those who answer for it: by word and shape where the last backup is too old.

import { useQuery } from '@tanstack/react-query';
import { backupsAnswer } from '../../../contract/backup.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { get } from '../../app/http-client.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { WarningMark } from '../../controls/warning-mark.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import styles from './backup-note.module.css';

const shownTo: readonly string[] = ['quality', 'administrator', 'auditor'];

export function BackupNote() {
  const { backup } = words;
  const role = useSession().data?.person?.role;
  const isPast = useAsOfDay() !== null;
  const timeZone = usePlant().data?.timeZone;
  const isShown = role !== undefined && shownTo.includes(role) && !isPast;
  const backups = useQuery({
    queryKey: ['backups'],
    queryFn: () => get('/api/backups', backupsAnswer),
    enabled: isShown,
  });
  if (!isShown || backups.data === undefined) return null;
  const { last, isOld, limitHours, schedule } = backups.data;
  const failure = schedule?.failure ?? null;
  return (
    <section className={styles.note} data-old={isOld || failure !== null} aria-label={backup.title}>
      <p>
        {isOld || failure !== null ? <WarningMark weight="caution" /> : null}{' '}
        <strong>{last === null ? backup.none : backup.last(backup.age(last.ageHours))}</strong>{' '}
        {last === null ? null : backup.since(last.entriesSince)} {isOld ? backup.old(backup.age(limitHours)) : null}
      </p>
      {last === null ? null : (
        <p className={styles.small}>{backup.file(last.file, writeMinute(last.at, timeZone), last.shortHead)}</p>
      )}
      <p className={styles.small}>
        {schedule === null
          ? backup.noSchedule
          : backup.schedule(schedule.everyHours, schedule.keep, writeMinute(schedule.dueAt, timeZone))}
      </p>
      {failure === null ? null : (
        <p className={styles.small}>{backup.failed(writeMinute(failure.at, timeZone), failure.message)}</p>
      )}
    </section>
  );
}
