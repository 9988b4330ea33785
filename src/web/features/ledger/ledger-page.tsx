// The ledger: its entries, newest first, and the proof that none was changed.

import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearch } from 'wouter';
import { ledgerAnswer } from '../../../contract/ledger.ts';
import { get } from '../../app/http-client.ts';
import { usePlant } from '../../app/queries/use-plant.ts';
import { Button } from '../../controls/button.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import { EntryTable } from './entry-table.tsx';
import styles from './ledger-page.module.css';
import { Verification } from './verification.tsx';

const entriesOnAPage = 50;

export function LedgerPage() {
  const plant = usePlant();
  const asked = entryAsked(useSearch());
  return (
    <>
      <PageHeading title={words.ledger.title} lead={words.ledger.lead} />
      <Verification />
      {plant.isError ? <ProblemNote error={plant.error} onRetry={() => plant.refetch()} /> : null}
      {plant.isPending ? <WaitingNote /> : null}
      {plant.data ? <Entries key={asked} head={plant.data.head.seq} asked={asked} /> : null}
    </>
  );
}

/** The entry an address leads to; null where it leads to the newest. */
function entryAsked(search: string): number | null {
  const asked = new URLSearchParams(search).get('entry') ?? '';
  return /^[1-9]\d{0,14}$/.test(asked) ? Number(asked) : null;
}

interface EntriesProps {
  readonly head: number;
  readonly asked: number | null;
}

function Entries({ head, asked }: EntriesProps) {
  const [pagesBack, setPagesBack] = useState(() =>
    asked === null || asked > head ? 0 : Math.floor((head - asked) / entriesOnAPage),
  );
  const last = Math.max(head - pagesBack * entriesOnAPage, 0);
  const after = Math.max(last - entriesOnAPage, 0);
  const page = useQuery({
    queryKey: ['ledger', after],
    queryFn: () => get(`/api/ledger?after=${after}&limit=${entriesOnAPage}`, ledgerAnswer),
    placeholderData: keepPreviousData,
  });
  if (page.isPending) return <WaitingNote />;
  if (page.isError) return <ProblemNote error={page.error} onRetry={() => page.refetch()} />;
  const entries = page.data.entries
    .filter(({ seq }) => seq > after && (pagesBack === 0 || seq <= last))
    .sort((a, b) => b.seq - a.seq);
  const count = (value: number) => formatNumber(value, { rule: 'as-typed' });
  if (entries.length === 0) return <p>{words.ledger.empty}</p>;
  return (
    <>
      <EntryTable
        entries={entries}
        marked={asked}
        caption={words.ledger.caption(
          count(entries.at(-1)?.seq ?? 0),
          count(entries[0]?.seq ?? 0),
          count(page.data.total),
        )}
      />
      <div className={styles.pages}>
        <Button disabled={pagesBack === 0} onClick={() => setPagesBack(pagesBack - 1)}>
          {words.ledger.newer}
        </Button>
        <Button disabled={after === 0} onClick={() => setPagesBack(pagesBack + 1)}>
          {words.ledger.older}
        </Button>
      </div>
    </>
  );
}
