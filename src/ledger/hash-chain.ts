// The chain: each entry carries the hash of the one before it, so that nothing can be changed, dropped or put in between.
// The canonical bytes are in canonical-bytes.ts, the independent reader of the chain in verify.ts.

import { canonicalBytesAround, canonicalText } from './canonical-bytes.ts';
import type { AnyLedgerEntry, EntryContent } from './entry.ts';
import { entryOfRow, type StoredRow } from './stored-row.ts';

/** SHA-256 of some bytes as 64 lower-case hexadecimal digits. Handed in, so that the ledger stays free of a platform. */
export type Sha256 = (bytes: Uint8Array) => string;

/** What stands as the previous hash of the first entry. */
export const genesisHash = '0'.repeat(64);

/**
 * Answers the hash of an entry from its canonical bytes. The bytes hashed, in this order and nothing between them:
 * 1. the previous hash as 32 raw bytes (not its hexadecimal digits; 32 zero bytes before the first entry),
 * 2. the UTF-8 bytes of the RFC 8785 text of {"actor","at","body","kind","seq","subject"} (see canonical-bytes.ts).
 * Throws on a previous hash that is not 64 lower-case hexadecimal digits.
 */
export function chainHash(previousHash: string, canonicalBytes: Uint8Array, sha256: Sha256): string {
  if (!/^[0-9a-f]{64}$/.test(previousHash)) {
    throw new Error(`"${previousHash}" is not a hash of 64 lower-case hexadecimal digits.`);
  }
  const bytes = new Uint8Array(32 + canonicalBytes.length);
  for (let index = 0; index < 32; index += 1) {
    bytes[index] = Number.parseInt(previousHash.slice(2 * index, 2 * index + 2), 16);
  }
  bytes.set(canonicalBytes, 32);
  return sha256(bytes);
}

/** Answers the row to store for an entry: body as canonical text, previous hash, hash. Throws on content JSON cannot hold. */
export function sealRow(content: EntryContent, previousHash: string, sha256: Sha256): StoredRow {
  const { seq, at, actor, kind, subject } = content;
  const body = canonicalText(content.body);
  const hash = chainHash(previousHash, canonicalBytesAround(content, body), sha256);
  return { seq, at, actor, kind, subject, body, previousHash, hash };
}

/** Answers the entry as it will be read back from its row: without undefined members, zero without a sign. */
export function sealEntry(content: EntryContent, previousHash: string, sha256: Sha256): AnyLedgerEntry {
  return entryOfRow(sealRow(content, previousHash, sha256));
}
