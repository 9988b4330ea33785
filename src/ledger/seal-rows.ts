// From what a service hands over to rows with their sequence numbers and hashes: the writer's side of the chain.
// What the hash is made of is in hash-chain.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { NewEntry } from './entry.ts';
import { type Sha256, sealRow } from './hash-chain.ts';
import type { StoredRow } from './stored-row.ts';

/**
 * Answers new entries as rows that follow a head, in order.
 * Problem: `field-invalid` where a text or a number cannot be kept as JSON (half a surrogate pair, NaN, infinity).
 */
export function sealRows(
  newEntries: readonly NewEntry[],
  head: { readonly seq: number; readonly hash: string },
  sha256: Sha256,
): Outcome<readonly StoredRow[]> {
  const rows: StoredRow[] = [];
  let previousHash = head.hash;
  for (const { at, actor, kind, subject, body } of newEntries) {
    try {
      const row = sealRow({ seq: head.seq + 1 + rows.length, at, actor, kind, subject, body }, previousHash, sha256);
      rows.push(row);
      previousHash = row.hash;
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('field-invalid', `The entry ${kind} for "${subject}" cannot be kept: ${reason}.`, {
        where: 'body',
        needed: 'finite numbers and complete Unicode text',
      });
    }
  }
  return succeed(rows);
}
