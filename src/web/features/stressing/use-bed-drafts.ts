// The beds that are being recorded on this device: opening where they are kept, listing them, starting one, throwing one away.

import { useQuery, useQueryClient } from '@tanstack/react-query';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { onDevice } from '../../app/queries/forget-answers.ts';
import { bedDrafts, type DraftStore, openDraftStore } from '../../offline/draft-store.ts';
import { type BedDraft, type BedStart, freshBed, readBedDraft } from './bed-draft.ts';

/** Where a bed is typed that the browser refuses to keep. */
export const unkeptBed = 'unkept';

const listKey = [onDevice, 'beds'] as const;
const forEver = { staleTime: Number.POSITIVE_INFINITY, gcTime: Number.POSITIVE_INFINITY };

/** Opened once; `isError` where the browser keeps nothing. */
export function useBedStore() {
  return useQuery({
    queryKey: [onDevice, 'bed-store'],
    queryFn: () => openDraftStore(window.localStorage, newIdempotencyKey, bedDrafts),
    ...forEver,
    structuralSharing: false,
    retry: false,
  });
}

export interface ListedBed {
  readonly id: string;
  readonly changedAt: string;
  readonly isCopy: boolean;
  readonly draft: BedDraft;
}

export function useBedList(store: DraftStore | undefined) {
  return useQuery({
    queryKey: listKey,
    enabled: store !== undefined,
    queryFn: async (): Promise<readonly ListedBed[]> =>
      ((await store?.list()) ?? []).flatMap(({ id, changedAt, content, isCopy = false }): ListedBed[] => {
        const draft = readBedDraft(content);
        return draft === null ? [] : [{ id, changedAt, isCopy, draft }];
      }),
  });
}

/** Keeps a bed under an id of its own and answers the id; its record will be sent with a key of its own. */
export async function keepNewBed(store: DraftStore, bed: BedDraft): Promise<string> {
  const id = newIdempotencyKey();
  await store.save({ id, writer: id, changedAt: new Date().toISOString(), content: bed }, null);
  return id;
}

export const startBed = (start: BedStart): BedDraft => freshBed(newIdempotencyKey(), start);

export function useThrowAwayBed(store: DraftStore | undefined): (id: string) => Promise<void> {
  const client = useQueryClient();
  return async (id) => {
    await store?.remove(id);
    await client.invalidateQueries({ queryKey: listKey });
  };
}

export const bedAddress = (id: string): string => `/stressing/bed/${encodeURIComponent(id)}`;
