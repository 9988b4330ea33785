// The technician's page: the drafts on this device, or one of them.

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation, useParams, useSearch } from 'wouter';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { onDevice } from '../../app/queries/forget-answers.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import { words } from '../../words/desk-words.ts';
import { freshDraft, readDraft } from './calibration-draft.ts';
import { DraftList, draftAddress } from './draft-list.tsx';
import { RunSheetEditor } from './run-sheet-editor.tsx';
import { unkeptDraft, useDraftStore } from './use-draft-store.ts';

export function CalibratePage() {
  const { draft } = useParams<{ draft?: string }>();
  const search = useSearch();
  const store = useDraftStore();
  if (draft === undefined) return <DraftList pair={new URLSearchParams(search).get('pair') ?? ''} />;
  if (draft === unkeptDraft || store.isError) return <UnkeptEditor />;
  if (store.data === undefined) return <WaitingNote text={words.calibrate.loading} />;
  return <DraftAtAddress key={draft} store={store.data} id={draft} />;
}

/**
 * A draft that is split off goes on in the same editor, with its undo steps and the focus where it was. Its new id stands
 * behind the address it was opened at: at another path the page would start anew, with the focus at its top.
 */
function DraftAtAddress({ store, id }: { readonly store: DraftStore; readonly id: string }) {
  const [, navigate] = useLocation();
  const shown = new URLSearchParams(useSearch()).get('copy') ?? id;
  const [first] = useState(shown);
  const onSplit = (next: string) => navigate(`${draftAddress(id)}?copy=${encodeURIComponent(next)}`, { replace: true });
  return <StoredEditor store={store} id={shown} first={first} onSplit={onSplit} />;
}

const nothing = () => undefined;

function UnkeptEditor() {
  const [started] = useState(() => freshDraft(newIdempotencyKey()));
  return (
    <RunSheetEditor store={null} id={unkeptDraft} readAt={null} isCopy={false} started={started} onSplit={nothing} />
  );
}

interface StoredEditorProps {
  readonly store: DraftStore;
  /** The draft as it is kept now. */
  readonly id: string;
  /** The one it was opened as. */
  readonly first: string;
  readonly onSplit: (id: string) => void;
}

function StoredEditor({ store, id, first, onSplit }: StoredEditorProps) {
  // Read once when the page opens: from then on the page itself knows the draft best.
  const stored = useQuery({
    queryKey: [onDevice, 'draft', first],
    queryFn: () => store.find(first),
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
  const { changedAt, isCopy = false } = stored.data;
  return (
    <RunSheetEditor store={store} id={id} readAt={changedAt} isCopy={isCopy} started={started} onSplit={onSplit} />
  );
}
