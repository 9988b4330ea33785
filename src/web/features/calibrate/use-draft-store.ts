// The drafts of this device: opening them, listing them, starting and throwing one away.

import { useQuery, useQueryClient } from '@tanstack/react-query';
import { newIdempotencyKey } from '../../app/http-client.ts';
import { onDevice } from '../../app/queries/forget-answers.ts';
import { calibrationDrafts, type DraftStore, openDraftStore, type StoredDraft } from '../../offline/draft-store.ts';
import { type CalibrationDraft, readDraft } from './calibration-draft.ts';

/** Where a draft is typed that the browser refuses to keep. */
export const unkeptDraft = 'unkept';

/** Opened once; `isError` where the browser keeps nothing. */
export function useDraftStore() {
  return useQuery({
    queryKey: [onDevice, 'draft-store'],
    queryFn: () => openDraftStore(window.localStorage, newIdempotencyKey, calibrationDrafts),
    staleTime: Number.POSITIVE_INFINITY,
    gcTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
    retry: false,
  });
}

export interface ListedDraft {
  readonly id: string;
  readonly changedAt: string;
  readonly isCopy: boolean;
  readonly draft: CalibrationDraft;
}

const listKey = [onDevice, 'drafts'] as const;

export function useDraftList(store: DraftStore | undefined) {
  return useQuery({
    queryKey: listKey,
    enabled: store !== undefined,
    queryFn: async (): Promise<readonly ListedDraft[]> => ((await store?.list()) ?? []).flatMap(listedDraft),
  });
}

function listedDraft({ id, changedAt, content, isCopy = false }: StoredDraft): readonly ListedDraft[] {
  const draft = readDraft(content);
  return draft === null ? [] : [{ id, changedAt, isCopy, draft }];
}

/** Saves a draft under an id of its own and answers the id. */
export async function keepNewDraft(store: DraftStore, draft: CalibrationDraft): Promise<string> {
  const id = newIdempotencyKey();
  await store.save({ id, writer: id, changedAt: new Date().toISOString(), content: draft }, null);
  return id;
}

export function useThrowAway(store: DraftStore | undefined): (id: string) => Promise<void> {
  const client = useQueryClient();
  return async (id) => {
    await store?.remove(id);
    await client.invalidateQueries({ queryKey: listKey });
  };
}
