// In doubt: every calibration that rests on something found bad, and what was cleared.

import { useQuery } from '@tanstack/react-query';
import { doubtListAnswer } from '../../../contract/doubt.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { get } from '../../app/http-client.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { DoubtItem } from '../../controls/doubt-item.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './in-doubt-page.module.css';

export function InDoubtPage() {
  const { doubt } = words;
  const list = useQuery({ queryKey: ['doubts'], queryFn: () => get('/api/doubts', doubtListAnswer) });
  const person = useSession().data?.person ?? null;
  const open = list.data?.doubts.filter(({ cleared }) => cleared === null) ?? [];
  const cleared = list.data?.doubts.filter((item) => item.cleared !== null) ?? [];
  const isPast = useAsOfDay() !== null;
  const mayClear = isPast || (person !== null && mayDo(person.role, 'clear-doubt'));
  return (
    <>
      <PageHeading title={doubt.title} />
      <p className={styles.lead}>{doubt.lead}</p>
      {list.isPending ? <WaitingNote /> : null}
      {list.isError ? <ProblemNote error={list.error} onRetry={() => void list.refetch()} /> : null}
      {list.data === undefined ? null : (
        <div className={styles.page}>
          <section aria-labelledby="open-title">
            <h2 id="open-title">
              {doubt.openTitle} <span className={styles.number}>{open.length}</span>
            </h2>
            {open.length === 0 ? <p>{doubt.noneOpen}</p> : null}
            {open.length > 0 && !mayClear ? <p className={styles.lead}>{doubt.mayNot}</p> : null}
            <ul className={styles.list}>
              {open.map((item) => (
                <DoubtItem key={`${item.calibration} ${item.name}`} item={item} />
              ))}
            </ul>
          </section>
          <section aria-labelledby="cleared-title">
            <h2 id="cleared-title">
              {doubt.clearedTitle} <span className={styles.number}>{cleared.length}</span>
            </h2>
            {cleared.length === 0 ? <p>{doubt.noneCleared}</p> : null}
            <ul className={styles.list}>
              {cleared.map((item) => (
                <DoubtItem key={`${item.calibration} ${item.name}`} item={item} />
              ))}
            </ul>
          </section>
        </div>
      )}
    </>
  );
}
