// What falls due: pairs without a valid calibration first, then by day or by standing.

import { useQuery } from '@tanstack/react-query';
import { useLocation, useSearch } from 'wouter';
import { dueAnswer } from '../../../contract/due.ts';
import { withDay } from '../../app/as-of-day.ts';
import { get } from '../../app/http-client.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import { BackupNote } from './backup-note.tsx';
import { DueChoice } from './due-choice.tsx';
import { pageAddress, readFilter, serverQuery } from './due-filter.ts';
import { groupDue } from './due-groups.ts';
import { DueLine } from './due-line.tsx';
import { NothingDue } from './nothing-due.tsx';
import styles from './whats-due-page.module.css';

export function WhatsDuePage() {
  const { whatsDue } = words;
  const [, navigate] = useLocation();
  const filter = readFilter(useSearch());
  const query = serverQuery(filter);
  const due = useQuery({
    queryKey: ['due', query],
    queryFn: () => get(`/api/due${query}`, dueAnswer),
    placeholderData: (before) => before,
  });
  return (
    <>
      <PageHeading title={whatsDue.title}>
        <a href={withDay(`/api/due.csv${query}`)} download="whats-due.csv" className={styles.csv}>
          {whatsDue.csv}
        </a>
      </PageHeading>
      <DueChoice
        key={filter.within}
        filter={filter}
        choose={(chosen) => navigate(pageAddress(chosen), { replace: true })}
      />
      {due.isPending ? <WaitingNote /> : null}
      {due.isError ? <ProblemNote error={due.error} onRetry={() => void due.refetch()} /> : null}
      {due.data === undefined ? null : (
        <div className={styles.due} aria-busy={due.isPlaceholderData}>
          <p className={styles.counted} role="status">
            {whatsDue.asOf(due.data.asOf)}: {whatsDue.counted(due.data.pairs.length, due.data.within)}
          </p>
          {due.data.pairs.length === 0 ? <NothingDue within={due.data.within} /> : null}
          {groupDue(due.data.pairs, filter.by).map((group) => (
            <section key={group.title} className={styles.group} aria-label={group.title}>
              <h2>
                {group.title} <span className={styles.number}>{group.pairs.length}</span>
              </h2>
              <ul>
                {group.pairs.map((pair) => (
                  <DueLine key={pair.tag} pair={pair} />
                ))}
              </ul>
            </section>
          ))}
        </div>
      )}
      <BackupNote />
    </>
  );
}
