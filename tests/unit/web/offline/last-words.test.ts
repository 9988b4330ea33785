// What a page leaves when it goes away.

import { describe, expect, it } from 'vitest';
import { findLastWords, forgetLastWords, leaveLastWords } from '../../../../src/web/offline/last-words.ts';

function storageOf(limit = Number.POSITIVE_INFINITY): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    clear: () => kept.clear(),
    getItem: (key) => kept.get(key) ?? null,
    key: (index) => [...kept.keys()][index] ?? null,
    removeItem: (key) => kept.delete(key),
    setItem: (key, value) => {
      if (value.length > limit) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, value);
    },
  };
}

const prefix = 'jackledger-last-words ';
const draft = { id: 'one', writer: 'a window', changedAt: '2026-11-25T14:00:00.000Z', content: { pair: 'P-09' } };

describe('last words', () => {
  it('are found as they were left, beside what others keep there', () => {
    const storage = storageOf();
    storage.setItem('something else', '{}');
    leaveLastWords(storage, prefix, { draft, seen: null });
    expect(findLastWords(storage, prefix)).toEqual([{ draft, seen: null }]);
  });

  it('of one draft are the newest ones', () => {
    const storage = storageOf();
    leaveLastWords(storage, prefix, { draft, seen: null });
    const newer = { ...draft, changedAt: '2026-11-25T14:00:01.000Z' };
    leaveLastWords(storage, prefix, { draft: newer, seen: draft.changedAt });
    expect(findLastWords(storage, prefix)).toEqual([{ draft: newer, seen: draft.changedAt }]);
  });

  it('are gone when they were forgotten', () => {
    const storage = storageOf();
    leaveLastWords(storage, prefix, { draft, seen: null });
    forgetLastWords(storage, prefix, 'one');
    expect(findLastWords(storage, prefix)).toEqual([]);
  });

  it('that do not fit leave nothing older behind and do not fail', () => {
    const storage = storageOf(200);
    leaveLastWords(storage, prefix, { draft, seen: null });
    leaveLastWords(storage, prefix, { draft: { ...draft, content: 'x'.repeat(300) }, seen: null });
    expect(findLastWords(storage, prefix)).toEqual([]);
  });

  it('that cannot be read are passed over', () => {
    const storage = storageOf();
    leaveLastWords(storage, prefix, { draft, seen: null });
    const key = storage.key(0) ?? '';
    for (const text of ['not JSON', 'null', '{"draft":{"id":1},"seen":null}']) {
      storage.setItem(key, text);
      expect(findLastWords(storage, prefix)).toEqual([]);
    }
  });
});
