// Where the device keeps what it holds of the plant, so that a cold start without network answers.
// When it is written is decided in snapshot-keeper.ts.

import { openDB } from 'idb';
import { z } from 'zod';
import { plantSnapshot } from '../../contract/plant-snapshot.ts';

/** What a device holds of the plant, and what it knows of time. */
export const heldSnapshot = z.object({
  snapshot: plantSnapshot,
  times: z.object({ saidAt: z.string(), heardAt: z.string(), latestSeenAt: z.string() }),
});
export type HeldSnapshot = z.infer<typeof heldSnapshot>;

export interface SnapshotStore {
  /** Null where nothing is held, or nothing this version can read. */
  read(): Promise<HeldSnapshot | null>;
  write(held: HeldSnapshot): Promise<void>;
  remove(): Promise<void>;
}

const tableName = 'snapshots';
/** One plant to a device: the address it is opened from is the plant's. */
const key = 'plant';

/** Opens what this device keeps. Rejects where the browser keeps nothing (some private windows). */
export async function openSnapshotStore(): Promise<SnapshotStore> {
  // A database of its own: a new version of it never waits for a window that holds the drafts open.
  const database = await openDB('jackledger-snapshot', 1, {
    upgrade(fresh) {
      fresh.createObjectStore(tableName);
    },
  });
  return {
    async read() {
      const read = heldSnapshot.safeParse(await database.get(tableName, key));
      return read.success ? read.data : null;
    },
    async write(held) {
      await database.put(tableName, held, key);
    },
    async remove() {
      await database.delete(tableName, key);
    },
  };
}
