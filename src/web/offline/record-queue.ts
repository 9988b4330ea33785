// Stressing records that wait on this device to be written into the ledger. Sending them is record-sender.ts.

import { openDB } from 'idb';
import { z } from 'zod';
import { markRecords } from './records-lie-here.ts';

/** A record as it waits, whole: it is never changed, only sent, rejected or taken back to be mended. */
export const queuedRecord = z.object({
  /** The idempotency key it is sent with, for ever the same. */
  id: z.string(),
  savedAt: z.string(),
  bed: z.string(),
  on: z.string(),
  pair: z.string(),
  pulls: z.number(),
  /** As POST /api/stressing-records takes it. */
  body: z.unknown(),
  /** The draft it was made from, to be mended where the server rejects it. */
  draft: z.unknown(),
  state: z.enum(['waiting', 'rejected', 'recorded']),
  /** Why the server rejected it. */
  why: z.object({ code: z.string(), detail: z.string(), needed: z.string().optional() }).optional(),
  /** The number it has in the ledger. */
  number: z.string().optional(),
});
export type QueuedRecord = z.infer<typeof queuedRecord>;

export interface RecordQueue {
  /** The one that was saved first comes first. */
  list(): Promise<readonly QueuedRecord[]>;
  put(record: QueuedRecord): Promise<void>;
  remove(id: string): Promise<void>;
}

const tableName = 'records';

/** Opens the queue of this device. Rejects where the browser keeps nothing. */
export async function openRecordQueue(storage: Pick<Storage, 'setItem' | 'removeItem'>): Promise<RecordQueue> {
  const database = await openDB('jackledger-records', 1, {
    upgrade(fresh) {
      fresh.createObjectStore(tableName, { keyPath: 'id' });
    },
  });
  return {
    async list() {
      const read: unknown[] = await database.getAll(tableName);
      return read
        .flatMap((one) => {
          const record = queuedRecord.safeParse(one);
          return record.success ? [record.data] : [];
        })
        .sort((a, b) => a.savedAt.localeCompare(b.savedAt));
    },
    async put(record) {
      markRecords(storage, true);
      await database.put(tableName, record);
    },
    async remove(id) {
      await database.delete(tableName, id);
      if ((await database.count(tableName)) === 0) markRecords(storage, false);
    },
  };
}
