// What was typed last when the page went away: left in the one place that is written at once, since a database may not
// finish then. The next page that opens the drafts takes it up: draft-store.ts.

import type { StoredDraft } from './draft-store.ts';

export interface LastWords {
  readonly draft: StoredDraft;
  /** `changedAt` of the draft as the window had last read or written it. */
  readonly seen: string | null;
}

/** `prefix` names the kind of draft. Nothing is left where the browser refuses; the database is then the only hope. */
export function leaveLastWords(storage: Storage, prefix: string, words: LastWords): void {
  try {
    storage.setItem(prefix + words.draft.id, JSON.stringify(words));
  } catch {
    storage.removeItem(prefix + words.draft.id);
  }
}

export function findLastWords(storage: Storage, prefix: string): readonly LastWords[] {
  const keys = Array.from({ length: storage.length }, (_, index) => storage.key(index) ?? '');
  return keys.filter((key) => key.startsWith(prefix)).flatMap((key) => readLastWords(storage.getItem(key)));
}

export function forgetLastWords(storage: Storage, prefix: string, id: string): void {
  storage.removeItem(prefix + id);
}

function readLastWords(text: string | null): readonly LastWords[] {
  try {
    const read: unknown = JSON.parse(text ?? 'null');
    return isLastWords(read) ? [read] : [];
  } catch {
    return [];
  }
}

function isLastWords(read: unknown): read is LastWords {
  if (typeof read !== 'object' || read === null || !('draft' in read) || !('seen' in read)) return false;
  const { draft, seen } = read;
  if (seen !== null && typeof seen !== 'string') return false;
  if (typeof draft !== 'object' || draft === null || !('content' in draft)) return false;
  return ['id', 'writer', 'changedAt'].every((field) => typeof Reflect.get(draft, field) === 'string');
}
