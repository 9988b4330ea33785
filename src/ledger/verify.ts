// The independent reader: is the ledger, row by row as it is stored, exactly what was once written?
// It shares the byte format (canonical-bytes.ts, hash-chain.ts, review-hash.ts) with the writer and nothing else; it
// trusts no row. What an approval signs is checked in verify-approvals.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { canonicalBytesAround, canonicalText } from './canonical-bytes.ts';
import { entryKinds } from './entry.ts';
import { chainHash, genesisHash, type Sha256 } from './hash-chain.ts';
import { filesNamedBy } from './named-files.ts';
import type { StoredRow } from './stored-row.ts';
import { readApprovals } from './verify-approvals.ts';

export interface VerifiedLedger {
  readonly entries: number;
  /** Of them approvals, each by another than the enterer, and of what the ledger holds where it says what was signed. */
  readonly approvals: number;
  /** Files that entries name, each found with the content it had; null where no files were there to look at. */
  readonly files: number | null;
  readonly head: { readonly seq: number; readonly hash: string };
  /** What is odd yet proves nothing: the clock of the server went backwards. */
  readonly notes: readonly { readonly seq: number; readonly message: string }[];
  /** The entry of the number asked for; null when none was asked for, or the ledger ends before it. */
  readonly found: { readonly seq: number; readonly at: string; readonly hash: string } | null;
}

/**
 * Answers whether every row stands where it was written and as it was written: numbers without gaps from 1, previous
 * hash, canonical body, hash, known kind; no approval by the one who entered the run, nor of anything else than the run
 * sheet, curve, rules and certificate the ledger holds. Entries cut off at the end, or a chain made anew from some entry
 * on, cannot be seen in the rows: `find` is the number of an entry whose hash was written down elsewhere. `readFile`
 * gives the content of an attached file as it is stored: each file an entry names must be there and hash to its name.
 * Problem: `ledger-broken` naming the first bad entry and why; also when the store fails while it is read.
 */
export async function verifyLedger(
  rows: AsyncIterable<StoredRow> | Iterable<StoredRow>,
  sha256: Sha256,
  find: number | null = null,
  readFile: ReadFile | null = null,
): Promise<Outcome<VerifiedLedger>> {
  let head: VerifiedLedger['head'] = { seq: 0, hash: genesisHash };
  let found: VerifiedLedger['found'] = null;
  let lastAt = Number.NEGATIVE_INFINITY;
  const notes: { readonly seq: number; readonly message: string }[] = [];
  const approvals = readApprovals(sha256);
  let approvalsRead = 0;
  const files = new Set<string>();
  try {
    for await (const row of rows) {
      const misplaced = faultOfPlace(row, head);
      if (misplaced !== undefined) return broken(head.seq + 1, misplaced);
      const content = readContent(row, sha256);
      const named = readFile === null ? [] : filesNamedBy(row.kind, content.body);
      const why =
        content.fault ?? approvals.faultOf(row, content.body) ?? (await faultOfFiles(named, files, readFile, sha256));
      if (why !== undefined) return broken(row.seq, why);
      if (row.kind.startsWith('calibration-approved/')) approvalsRead += 1;
      const at = Date.parse(row.at);
      if (Number.isNaN(at)) notes.push({ seq: row.seq, message: `"${row.at}" is not a time.` });
      else if (at < lastAt) notes.push({ seq: row.seq, message: `The time ${row.at} lies before an entry above it.` });
      else lastAt = at;
      head = { seq: row.seq, hash: row.hash };
      if (row.seq === find) found = { ...head, at: row.at };
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return broken(head.seq + 1, `it cannot be read (${reason})`);
  }
  return succeed({
    entries: head.seq,
    approvals: approvalsRead,
    files: readFile === null ? null : files.size,
    head,
    notes,
    found,
  });
}

/** Content of an attached file by its SHA-256, as it is stored; null where there is none. */
export type ReadFile = (sha256: string) => Promise<Uint8Array | null>;

/** What is wrong with the files an entry names; those found sound are remembered in `sound`. */
async function faultOfFiles(
  named: readonly string[],
  sound: Set<string>,
  readFile: ReadFile | null,
  sha256: Sha256,
): Promise<string | undefined> {
  for (const name of named) {
    if (readFile === null || sound.has(name)) continue;
    const content = await readFile(name);
    if (content === null) return `the file ${name} it names is not there`;
    if (sha256(content) !== name) return `the file ${name} it names was altered`;
    sound.add(name);
  }
  return undefined;
}

function faultOfPlace(row: StoredRow, head: VerifiedLedger['head']): string | undefined {
  if (row.seq !== head.seq + 1) return `entry ${row.seq} stands in its place`;
  if (row.previousHash !== head.hash) return 'its previous hash is not the hash of the entry before it';
  return undefined;
}

/** What is wrong with what one row says, its place in the chain aside; undefined when nothing is. */
export function faultOfContent(row: StoredRow, sha256: Sha256): string | undefined {
  return readContent(row, sha256).fault;
}

function readContent(row: StoredRow, sha256: Sha256): { readonly fault?: string; readonly body?: unknown } {
  if (!(entryKinds as readonly string[]).includes(row.kind)) return { fault: `its kind "${row.kind}" is not known` };
  let body: unknown;
  try {
    body = JSON.parse(row.body);
    if (canonicalText(body) !== row.body) return { fault: 'its body is not in the form it was written in' };
  } catch {
    return { fault: 'its body is not JSON' };
  }
  const hash = chainHash(row.previousHash, canonicalBytesAround(row, row.body), sha256);
  return hash === row.hash ? { body } : { fault: 'its hash is not the hash of what it says' };
}

function broken(seq: number, why: string): Outcome<never> {
  return fail('ledger-broken', `Entry ${seq} does not verify: ${why}.`, { where: `entry ${seq}` });
}
