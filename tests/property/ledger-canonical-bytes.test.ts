// The bytes that are hashed: the same from the whole entry as from its parts, and whatever order members were written in.

import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalBytes, canonicalText } from '../../src/ledger/canonical-bytes.ts';
import type { EntryContent } from '../../src/ledger/entry.ts';
import { ledgerHistory } from './ledger-history.ts';

/** The same value with the members of every object in the opposite order. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, member]) => [name, reversed(member)]),
  );
}

const contents = ledgerHistory(10).map((history) =>
  history.map((entry, index): EntryContent => ({ ...entry, seq: index + 1 })),
);

describe('canonicalBytes', () => {
  it('put together around the body are those of the whole entry', () => {
    fc.assert(
      fc.property(contents, (entries) => {
        for (const entry of entries) {
          expect(Buffer.from(canonicalBytes(entry)).toString('utf8')).toBe(canonicalize(entry));
        }
      }),
    );
  });

  it('do not depend on the order of members', () => {
    fc.assert(
      fc.property(contents, (entries) => {
        for (const entry of entries) {
          expect(canonicalBytes(reversed(entry) as EntryContent)).toEqual(canonicalBytes(entry));
        }
      }),
    );
  });
});

describe('canonicalText', () => {
  const json = fc.jsonValue({ stringUnit: 'binary', maxDepth: 4 });

  it('means what was written', () => {
    fc.assert(
      fc.property(json, (value) => {
        expect(JSON.parse(canonicalText(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('of what was read back is the same text', () => {
    fc.assert(
      fc.property(json, (value) => {
        const text = canonicalText(value);
        expect(canonicalText(JSON.parse(text))).toBe(text);
      }),
    );
  });
});
