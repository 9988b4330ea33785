// The technician's page: the drafts on this device, or one of them.

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useParams, useSearch } from 'wouter';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { onDevice } from '../../app/queries/forget-answers.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import { words } from '../../words/desk-words.ts';
import { freshDraft, readDraft } from './calibration-draft.ts';
import { DraftList } from './draft-list.tsx';
import { RunSheetEditor } from './run-sheet-editor.tsx';
import { unkeptDraft, useDraftStore } from './use-draft-store.ts';

export function CalibratePage() {
  const { draft } = useParams<{ draft?: string }>();
  const search = useSearch();
  const store = useDraftStore();
  if (draft === undefined) return <DraftList pair={new URLSearchParams(search).get('pair') ?? ''} />;
  if (draft === unkeptDraft || store.isError) return <UnkeptEditor />;
  if (store.data === undefined) return <WaitingNote text={words.calibrate.loading} />;
  return <StoredEditor key={draft} store={store.data} id={draft} />;
}

function UnkeptEditor() {
  const [started] = useState(() => freshDraft(newIdempotencyKey()));
  return <RunSheetEditor store={null} id={unkeptDraft} readAt={null} started={started} />;
}

function StoredEditor({ store, id }: { readonly store: DraftStore; readonly id: string }) {
  // Read once when the page opens: from then on the page itself knows the draft best.
  const stored = useQuery({
    queryKey: [onDevice, 'draft', id],
    queryFn: () => store.find(id),
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
    refetchOnWindowFocus: false,
    refetchOnReconnect: false,
  });
  if (stored.isPending) return <WaitingNote text={words.calibrate.loading} />;
  const started = readDraft(stored.data?.content);
  if (stored.data === null || stored.data === undefined || started === null) {
    return (
      <>
        <PageHeading title={words.calibrate.title} />
        <p>
          {words.calibrate.draftGone} <Link href="/calibrate">{words.calibrate.allDrafts}</Link>
        </p>
      </>
    );
  }
  return <RunSheetEditor store={store} id={id} readAt={stored.data.changedAt} started={started} />;
}
