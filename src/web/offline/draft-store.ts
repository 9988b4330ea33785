// Drafts kept on the device, so that neither a reload nor a crash loses what was typed.
// When they are written is decided in draft-writer.ts; what a draft holds is the business of the page that writes it.

import { type IDBPDatabase, openDB } from 'idb';
import { findLastWords, forgetLastWords, type LastWords, leaveLastWords } from './last-words.ts';

/** `content` is the draft itself; `writer` is the window that wrote it last. */
export interface StoredDraft {
  readonly id: string;
  readonly writer: string;
  readonly changedAt: string;
  readonly content: unknown;
  /** Split off from a draft that another window went on writing. */
  readonly isCopy?: boolean;
}

export type SaveOutcome = 'saved' | 'changed-elsewhere';

export interface DraftStore {
  /** Newest change first. */
  list(): Promise<readonly StoredDraft[]>;
  find(id: string): Promise<StoredDraft | null>;
  /**
   * Writes a draft unless another window wrote it since this one last saw it.
   * `seen` is the `changedAt` this window read or wrote last, null for a new draft.
   */
  save(draft: StoredDraft, seen: string | null): Promise<SaveOutcome>;
  /** The same at once, for a page that is going away; taken up when drafts are opened next. */
  leave(words: LastWords): void;
  remove(id: string): Promise<void>;
}

/** A kind of draft: the database it has to itself, and the name its last words are left under. */
export interface DraftPlace {
  readonly database: string;
  readonly lastWords: string;
}

export const calibrationDrafts: DraftPlace = { database: 'jackledger', lastWords: 'jackledger-last-words ' };
export const bedDrafts: DraftPlace = { database: 'jackledger-beds', lastWords: 'jackledger-bed-last-words ' };

const tableName = 'drafts';

/** Opens the drafts of this device. Rejects where the browser keeps nothing (some private windows). */
export async function openDraftStore(
  storage: Storage,
  newId: () => string,
  { database: name, lastWords }: DraftPlace,
): Promise<DraftStore> {
  const database = await openDB(name, 1, {
    upgrade(fresh) {
      fresh.createObjectStore(tableName, { keyPath: 'id' });
    },
  });
  const store = storeOn(database, storage, lastWords);
  for (const words of findLastWords(storage, lastWords)) {
    await takeUp(store, words, newId);
    forgetLastWords(storage, lastWords, words.draft.id);
  }
  return store;
}

/** Last words older than what the same window wrote say nothing new; those another window overtook become a draft of their own. */
async function takeUp(store: DraftStore, { draft, seen }: LastWords, newId: () => string): Promise<void> {
  const stored = await store.find(draft.id);
  if (stored?.writer === draft.writer && stored.changedAt >= draft.changedAt) return;
  const outcome = await store.save(draft, seen);
  if (outcome === 'changed-elsewhere') await store.save({ ...draft, id: newId(), isCopy: true }, null);
}

function storeOn(database: IDBPDatabase, storage: Storage, lastWords: string): DraftStore {
  return {
    async list() {
      const drafts: StoredDraft[] = await database.getAll(tableName);
      return drafts.sort((one, other) => other.changedAt.localeCompare(one.changedAt));
    },
    async find(id) {
      const draft: StoredDraft | undefined = await database.get(tableName, id);
      return draft ?? null;
    },
    async save(draft, seen) {
      const transaction = database.transaction(tableName, 'readwrite');
      const stored: StoredDraft | undefined = await transaction.store.get(draft.id);
      if (stored !== undefined && stored.writer !== draft.writer && stored.changedAt !== seen) {
        await transaction.done;
        return 'changed-elsewhere';
      }
      await transaction.store.put(draft);
      await transaction.done;
      return 'saved';
    },
    leave(words) {
      leaveLastWords(storage, lastWords, words);
    },
    async remove(id) {
      forgetLastWords(storage, lastWords, id);
      await database.delete(tableName, id);
    },
  };
}
