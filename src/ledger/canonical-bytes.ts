// The bytes of an entry that are hashed: its JSON after RFC 8785 (JSON Canonicalization Scheme), in UTF-8.
// How these bytes and the previous hash become a hash is in hash-chain.ts.

import canonicalize from 'canonicalize';
import type { EntryContent } from './entry.ts';

/**
 * Answers a JSON value as RFC 8785 text: no white space, members sorted by UTF-16 code units, numbers as ECMAScript
 * prints them, strings with the shortest escapes. Members that are undefined are left out, as in JSON.
 * Throws on what JSON cannot hold: NaN, infinity, half a surrogate pair, a circular reference, undefined itself.
 */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new Error('undefined has no canonical form.');
  return text;
}

/**
 * Answers the bytes of an entry that are hashed: UTF-8 of the RFC 8785 text of exactly the six members
 * {"actor","at","body","kind","seq","subject"}. Whatever else the object carries (its hashes) is left out.
 */
export function canonicalBytes(content: EntryContent): Uint8Array {
  return canonicalBytesAround(content, canonicalText(content.body));
}

/** What stands around the body of an entry; `kind` may be any text, as a stored row may hold anything. */
export interface EntryFields {
  readonly seq: number;
  readonly at: string;
  readonly actor: string;
  readonly kind: string;
  readonly subject: string;
}

/**
 * The same bytes from a body that is RFC 8785 text already, so that a long run sheet is written out once for the table
 * and for the hash. The members stand in the order RFC 8785 sorts these six names into.
 */
export function canonicalBytesAround({ seq, at, actor, kind, subject }: EntryFields, bodyText: string): Uint8Array {
  const text = [
    `{"actor":${canonicalText(actor)}`,
    `"at":${canonicalText(at)}`,
    `"body":${bodyText}`,
    `"kind":${canonicalText(kind)}`,
    `"seq":${canonicalText(seq)}`,
    `"subject":${canonicalText(subject)}}`,
  ].join(',');
  return new TextEncoder().encode(text);
}
