// The independent reader: is the ledger, row by row as it is stored, exactly what was once written?
// It shares the byte format (canonical-bytes.ts, hash-chain.ts) with the writer and nothing else; it trusts no row.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { canonicalBytesAround, canonicalText } from './canonical-bytes.ts';
import { entryKinds } from './entry.ts';
import { chainHash, genesisHash, type Sha256 } from './hash-chain.ts';
import type { StoredRow } from './stored-row.ts';

export interface VerifiedLedger {
  readonly entries: number;
  readonly head: { readonly seq: number; readonly hash: string };
  /** What is odd yet proves nothing: the clock of the server went backwards. */
  readonly notes: readonly { readonly seq: number; readonly message: string }[];
}

/**
 * Answers whether every row stands where it was written and as it was written: numbers without gaps from 1, previous
 * hash, canonical body, hash, known kind, and no approval by the one who entered the run. Entries cut off at the end,
 * or a chain made anew from some entry on, cannot be seen in the rows: compare the head with one written down elsewhere.
 * Problem: `ledger-broken` naming the first bad entry and why; also when the store fails while it is read.
 */
export async function verifyLedger(
  rows: AsyncIterable<StoredRow> | Iterable<StoredRow>,
  sha256: Sha256,
): Promise<Outcome<VerifiedLedger>> {
  let head: VerifiedLedger['head'] = { seq: 0, hash: genesisHash };
  let lastAt = Number.NEGATIVE_INFINITY;
  const notes: { readonly seq: number; readonly message: string }[] = [];
  const enteredBy = new Map<string, string>();
  try {
    for await (const row of rows) {
      const why = faultOfPlace(row, head) ?? faultOfContent(row, sha256) ?? faultOfApproval(row, enteredBy);
      if (why !== undefined) return broken(head.seq + 1, why);
      const at = Date.parse(row.at);
      if (Number.isNaN(at)) notes.push({ seq: row.seq, message: `"${row.at}" is not a time.` });
      else if (at < lastAt) notes.push({ seq: row.seq, message: `The time ${row.at} lies before an entry above it.` });
      else lastAt = at;
      if (row.kind.startsWith('run-recorded/')) enteredBy.set(row.subject, row.actor);
      head = { seq: row.seq, hash: row.hash };
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return broken(head.seq + 1, `it cannot be read (${reason})`);
  }
  return succeed({ entries: head.seq, head, notes });
}

function faultOfPlace(row: StoredRow, head: VerifiedLedger['head']): string | undefined {
  if (row.seq !== head.seq + 1) return `entry ${row.seq} stands in its place`;
  if (row.previousHash !== head.hash) return 'its previous hash is not the hash of the entry before it';
  return undefined;
}

/** What is wrong with what one row says, its place in the chain aside; undefined when nothing is. */
export function faultOfContent(row: StoredRow, sha256: Sha256): string | undefined {
  if (!(entryKinds as readonly string[]).includes(row.kind)) return `its kind "${row.kind}" is not known`;
  try {
    if (canonicalText(JSON.parse(row.body)) !== row.body) return 'its body is not in the form it was written in';
  } catch {
    return 'its body is not JSON';
  }
  const hash = chainHash(row.previousHash, canonicalBytesAround(row, row.body), sha256);
  return hash === row.hash ? undefined : 'its hash is not the hash of what it says';
}

function faultOfApproval(row: StoredRow, enteredBy: ReadonlyMap<string, string>): string | undefined {
  if (!row.kind.startsWith('calibration-approved/')) return undefined;
  if (enteredBy.get(row.subject) !== row.actor) return undefined;
  return `"${row.actor}" approves calibration "${row.subject}" and also entered it`;
}

function broken(seq: number, why: string): Outcome<never> {
  return fail('ledger-broken', `Entry ${seq} does not verify: ${why}.`, { where: `entry ${seq}` });
}
