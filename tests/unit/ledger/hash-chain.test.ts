import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { EntryContent } from '../../../src/ledger/entry.ts';
import { chainHash, genesisHash, sealEntry, sealRow } from '../../../src/ledger/hash-chain.ts';
import { sha256 } from '../../../src/storage/sha256.ts';

const content: EntryContent<'hold-placed/1'> = {
  seq: 1,
  at: '2026-01-05T14:00:00.000Z',
  actor: 'quinn',
  kind: 'hold-placed/1',
  subject: 'P-01',
  body: { reason: 'Cañón' },
};
const text =
  '{"actor":"quinn","at":"2026-01-05T14:00:00.000Z","body":{"reason":"Cañón"},"kind":"hold-placed/1","seq":1,"subject":"P-01"}';

/** The hash built by hand from its parts, as another program would. */
function hashByHand(previousHash: string, canonical: string): string {
  return createHash('sha256').update(Buffer.from(previousHash, 'hex')).update(canonical, 'utf8').digest('hex');
}

describe('sealEntry', () => {
  it('hashes 32 zero bytes and the canonical text for the first entry', () => {
    const entry = sealEntry(content, genesisHash, sha256);
    expect(entry.previousHash).toBe('0'.repeat(64));
    expect(entry.hash).toBe(hashByHand('0'.repeat(64), text));
  });

  it('never changes: this entry has this hash for ever', () => {
    // Computed once with another program: (head -c 32 /dev/zero; printf '%s' TEXT) | sha256sum
    expect(sealEntry(content, genesisHash, sha256).hash).toBe(
      '47515ed36a8691b74383339b87b5f6d449b15374db0e46369739b8a460d48116',
    );
  });

  it('hashes the raw bytes of the previous hash, so that another one gives another hash', () => {
    const previousHash = `0f${'1e'.repeat(31)}`;
    const entry = sealEntry(content, previousHash, sha256);
    expect(entry.hash).toBe(hashByHand(previousHash, text));
    expect(entry.hash).not.toBe(sealEntry(content, genesisHash, sha256).hash);
  });

  it.each([
    ['seq', { ...content, seq: 2 }],
    ['at', { ...content, at: '2026-01-05T14:00:00.001Z' }],
    ['actor', { ...content, actor: 'Quinn' }],
    ['kind', { ...content, kind: 'hold-lifted/1' as const }],
    ['subject', { ...content, subject: 'P-02' }],
    ['body', { ...content, body: { reason: 'Cañón ' } }],
  ])('gives another hash for another %s', (_member, changed) => {
    expect(sealEntry(changed, genesisHash, sha256).hash).not.toBe(sealEntry(content, genesisHash, sha256).hash);
  });

  it('does not depend on the order in which members were written', () => {
    const { seq, at, actor, kind, subject, body } = content;
    const reordered = { subject, seq, kind, body, at, actor };
    expect(sealEntry(reordered, genesisHash, sha256)).toEqual(sealEntry(content, genesisHash, sha256));
  });
});

describe('sealRow', () => {
  it('keeps the body as the text that was hashed', () => {
    expect(sealRow(content, genesisHash, sha256).body).toBe('{"reason":"Cañón"}');
  });
});

describe('chainHash', () => {
  it.each(['', 'ab', 'g'.repeat(64), 'A'.repeat(64), '0'.repeat(63), '0'.repeat(66)])(
    'refuses "%s" as a previous hash',
    (previousHash) => {
      expect(() => chainHash(previousHash, new Uint8Array(), sha256)).toThrow('not a hash');
    },
  );
});
