// One bed being recorded on this device, at its own address.

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link, useLocation, useParams, useSearch } from 'wouter';
import { onDevice } from '../../app/queries/forget-answers.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import type { DraftStore } from '../../offline/draft-store.ts';
import { useOnDevice } from '../../offline/use-snapshot.ts';
import { words } from '../../words/desk-words.ts';
import { type BedDraft, readBedDraft } from './bed-draft.ts';
import { BedEditor } from './bed-editor.tsx';
import { bedAddress, startBed, unkeptBed, useBedStore } from './use-bed-drafts.ts';

export function BedPage() {
  const { bed } = useParams<{ readonly bed: string }>();
  const store = useBedStore();
  if (bed === unkeptBed || store.isError) return <UnkeptBed />;
  if (store.data === undefined) return <WaitingNote />;
  return <BedAtAddress key={bed} store={store.data} id={bed} />;
}

/** A bed that is split off goes on in the same editor; its new id stands behind the address it was opened at. */
function BedAtAddress({ store, id }: { readonly store: DraftStore; readonly id: string }) {
  const [, navigate] = useLocation();
  const shown = new URLSearchParams(useSearch()).get('copy') ?? id;
  const [first] = useState(shown);
  // Read once when the page opens: from then on the page itself knows the bed best.
  const stored = useQuery({
    queryKey: [onDevice, 'bed', first],
    queryFn: () => store.find(first),
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: 0,
    refetchOnWindowFocus: false,
    refetchOnReconnect: false,
  });
  if (stored.isPending) return <WaitingNote />;
  const started = readBedDraft(stored.data?.content);
  if (stored.data === null || stored.data === undefined || started === null) {
    return (
      <>
        <PageHeading title={words.stressing.title} />
        <p>
          {words.stressing.bedGone} <Link href="/stressing">{words.stressing.allBeds}</Link>
        </p>
      </>
    );
  }
  const { changedAt, isCopy = false } = stored.data;
  const onSplit = (next: string) => navigate(`${bedAddress(id)}?copy=${encodeURIComponent(next)}`, { replace: true });
  return <WithDevice kept={{ store, id: shown, readAt: changedAt, isCopy, onSplit }} started={started} />;
}

const nothing = () => undefined;

function UnkeptBed() {
  const [started] = useState(() => startBed({}));
  return (
    <WithDevice
      kept={{ store: null, id: unkeptBed, readAt: null, isCopy: false, onSplit: nothing }}
      started={started}
    />
  );
}

export interface KeptBedPlace {
  readonly store: DraftStore | null;
  readonly id: string;
  readonly readAt: string | null;
  readonly isCopy: boolean;
  /** Told when the bed goes on under another id, since another window wrote in the one it had. */
  readonly onSplit: (id: string) => void;
}

function WithDevice({ kept, started }: { readonly kept: KeptBedPlace; readonly started: BedDraft }) {
  const [device, ask] = useOnDevice();
  if (device.kind === 'waiting') return <WaitingNote />;
  if (device.kind === 'failed') {
    return (
      <>
        <PageHeading title={words.stressing.title} />
        <ProblemNote error={device.error} onRetry={ask} />
      </>
    );
  }
  return <BedEditor kept={kept} started={started} device={device} />;
}
