// Keeps the draft on the device while it is typed, and leaves last words when the page goes out of sight.

import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { newIdempotencyKey } from '../app/http-client.ts';
import type { DraftStore, StoredDraft } from './draft-store.ts';
import { createDraftWriter, type DraftWriter } from './draft-writer.ts';

export type Keeping = 'kept' | 'refused' | 'changed-elsewhere';

interface KeptDraft {
  readonly keeping: Keeping;
  /** Resolves when the draft as it is now is on the device. */
  readonly flush: () => Promise<void>;
  /** Takes the draft from the device and keeps it no longer. */
  readonly discard: () => Promise<void>;
}

interface KeptDraftOptions<T> {
  /** Null where the browser keeps nothing. */
  readonly store: DraftStore | null;
  readonly id: string;
  /** When the draft was last changed as it was read from the device. */
  readonly readAt: string | null;
  /** Whether it was split off from another window's draft before. */
  readonly isCopy: boolean;
  readonly draft: T;
  /** Told the id under which the draft goes on when another window wrote in the one it had. */
  readonly onSplit: (id: string) => void;
}

export function useKeptDraft<T>(options: KeptDraftOptions<T>): KeptDraft {
  const { store, id, readAt, isCopy, draft, onSplit } = options;
  const [keeping, setKeeping] = useState<Keeping>(store === null ? 'refused' : 'kept');
  const [writerName] = useState(newIdempotencyKey);
  const place = useRef({ id, seen: readAt, isCopy });
  const tellSplit = useRef(onSplit);
  useLayoutEffect(() => {
    tellSplit.current = onSplit;
  });
  const writer = useRef<DraftWriter<T> | null>(null);
  const first = useRef(draft);

  useEffect(() => {
    if (store === null) return;
    const recordOf = (content: T): StoredDraft => ({
      id: place.current.id,
      writer: writerName,
      changedAt: new Date().toISOString(),
      content,
      ...(place.current.isCopy ? { isCopy: true } : {}),
    });
    const created = createDraftWriter<T>({
      onFailure: () => setKeeping('refused'),
      write: async (content) => {
        const record = recordOf(content);
        const outcome = await store.save(record, place.current.seen);
        if (outcome === 'changed-elsewhere') {
          // Two windows typed in one draft: neither loses anything, this one goes on under an id of its own.
          place.current = { id: newIdempotencyKey(), seen: null, isCopy: true };
          await store.save({ ...record, id: place.current.id, isCopy: true }, null);
          tellSplit.current(place.current.id);
        }
        place.current.seen = record.changedAt;
        setKeeping((before) =>
          outcome === 'changed-elsewhere' || before === 'changed-elsewhere' ? 'changed-elsewhere' : 'kept',
        );
      },
    });
    writer.current = created;
    const leave = () => {
      const content = created.unwritten();
      if (content !== null) store.leave({ draft: recordOf(content), seen: place.current.seen });
    };
    const leaveWhenHidden = () => {
      if (document.visibilityState === 'hidden') leave();
    };
    document.addEventListener('visibilitychange', leaveWhenHidden);
    window.addEventListener('pagehide', leave);
    return () => {
      document.removeEventListener('visibilitychange', leaveWhenHidden);
      window.removeEventListener('pagehide', leave);
    };
  }, [store, writerName]);

  useEffect(() => {
    if (draft === first.current || writer.current === null) return;
    first.current = draft;
    writer.current.change(draft);
  }, [draft]);

  const flush = useCallback(async () => writer.current?.flush(), []);
  const discard = useCallback(async () => {
    await writer.current?.stop();
    await store?.remove(place.current.id);
  }, [store]);

  return { keeping, flush, discard };
}
